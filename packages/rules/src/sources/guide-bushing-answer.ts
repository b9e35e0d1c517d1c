import type { Source } from '../citation.ts';

export const guideBushingAnswer: Source = {
  id: 'guide-bushing-answer',
  title: 'How to create a 6" hole template with a 1/4" bit and 5/16" template guide',
  author: 'a question of a woodworker and its answer',
  url: 'https://woodworking.stackexchange.com/questions/7205/how-to-create-a-6-hole-template-with-a-1-4-bit-and-5-16-template-guide/7206',
  note: 'Undated as seen. The answer quotes an article of a woodworking magazine.',
};
