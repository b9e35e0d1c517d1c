import type { Source } from '../citation.ts';

export const smallKilnManual: Source = {
  id: 'small-kiln-manual',
  title: 'Hardwood Dry Kiln Operation: A Manual for Operators of Small Dry Kilns',
  author: 'University of Kentucky Cooperative Extension Service',
  identifier: 'FOR-128',
  url: 'https://globalmicroturbine.com/search/vacuum-bagging/hardwood-dry-kiln-operation-manual-for-operators-small-dry-k-041.amp.html',
  note: 'Undated in the text seen, which is of one page; the publisher is from memory.',
};
