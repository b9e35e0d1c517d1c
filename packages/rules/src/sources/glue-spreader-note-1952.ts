import type { Source } from '../citation.ts';

export const glueSpreaderNote1952: Source = {
  id: 'glue-spreader-note-1952',
  title: 'Hand-operated portable glue spreader',
  author: 'Forest Products Laboratory',
  year: 1952,
  identifier: 'Technical Note 255',
  url: 'http://cord.distantreader.org/stacks/trust/ufl1/ufl1_ark+=13960=t6j11mz3k.txt',
};
