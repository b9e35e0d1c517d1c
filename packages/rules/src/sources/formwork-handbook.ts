import type { Source } from '../citation.ts';

export const formworkHandbook: Source = {
  id: 'formwork-handbook',
  title: 'Formwork for Concrete Structures',
  author: 'R. L. Peurifoy and G. D. Oberlender',
  note: 'Undated as seen: page 81 of a later edition, with figures of the National Design Specification.',
};
