import type { Source } from '../citation.ts';

export const abrasiveGrainStandard: Source = {
  id: 'abrasive-grain-standard',
  title: 'Specifications for Grading of Certain Abrasive Grain on Coated Abrasive Material',
  author: 'American National Standards Institute',
  year: 1984,
  identifier: 'ANSI B74.18',
  note: 'Not seen. The sizes of the coated-abrasives makers’ grading are recalled as many pages reprint them, under this number.',
};
