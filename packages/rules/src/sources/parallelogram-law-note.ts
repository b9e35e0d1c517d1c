import type { Source } from '../citation.ts';

export const parallelogramLawNote: Source = {
  id: 'parallelogram-law-note',
  title: 'The parallelogram law',
  author: 'a mathematician’s notes',
  url: 'https://notes.mathforge.org/notes/print/parallelogram+law',
  note: 'Undated note. It derives the law from the cosine rule in the two triangles at one side.',
};
