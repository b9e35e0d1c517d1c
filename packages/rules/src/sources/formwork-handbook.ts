import type { Source } from '../citation.ts';

export const formworkHandbook: Source = {
  id: 'formwork-handbook',
  title: 'Formwork for Concrete Structures',
  author: 'R. L. Peurifoy and G. D. Oberlender',
  url: 'https://www.yumpu.com/en/document/view/67499197/formwork-for-concrete-structures-by-rlpeurifoy-and-gd-by-easyengineeringnet/116',
  note: 'Undated as seen: page 81 of a later edition, with figures of the National Design Specification.',
};
