import type { Source } from '../citation.ts';

export const lvlHandbook2025: Source = {
  id: 'lvl-handbook-2025',
  title: 'LVL Handbook Europe',
  author: 'Federation of the Finnish Woodworking Industries',
  year: 2025,
  url: 'https://proofer.faktor.fi/epaper/LVLHandbook_2025/149',
  note: 'It carries the spacings of Eurocode 5 for nails and screws, its columns named by the faces of laminated veneer lumber.',
};
