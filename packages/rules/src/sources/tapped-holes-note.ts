import type { Source } from '../citation.ts';

export const tappedHolesNote: Source = {
  id: 'tapped-holes-note',
  title: 'Screws: a note on tapping holes',
  author: 'a reference site for mechanical engineers',
  url: 'https://roymech.org/Useful_Tables/Screws.html',
  note: 'Undated as seen. It quotes BS 1936, undercuts and runouts for screw threads.',
};
