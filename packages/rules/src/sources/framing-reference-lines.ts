import type { Source } from '../citation.ts';

export const framingReferenceLines: Source = {
  id: 'framing-reference-lines',
  title: 'Checking Reference Lines',
  author: 'a handbook of house framing',
  url: 'http://boulderlibrary.net/framing/checking-reference.html',
  note: 'Undated page.',
};
