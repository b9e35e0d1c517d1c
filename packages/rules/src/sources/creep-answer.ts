import type { Source } from '../citation.ts';

export const creepAnswer: Source = {
  id: 'creep-answer',
  title: 'What is creep and how can I address it?',
  author: 'American Wood Council',
  url: 'https://awc.org/faqs/awc-standards/nds/what-is-creep-and-how-can-i-address-it',
  note: 'Undated answer; it cites section 3.5.2 of the National Design Specification and the Wood Handbook, ch. 4.',
};
