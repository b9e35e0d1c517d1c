import type { Source } from '../citation.ts';

export const ndsCommentary1999: Source = {
  id: 'nds-commentary-1999',
  title: 'Commentary on the National Design Specification for Wood Construction',
  author: 'American Forest & Paper Association',
  year: 1999,
  url: 'https://studylib.net/doc/12742619/part--xi--wood--screws-11.1-general',
  note: 'Seen: how part IX, lag screws, and part XI, wood screws, begin.',
};
