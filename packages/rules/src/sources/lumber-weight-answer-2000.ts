import type { Source } from '../citation.ts';

export const lumberWeightAnswer2000: Source = {
  id: 'lumber-weight-answer-2000',
  title: 'Wood weight and highway transport',
  author: 'G. Wengert, answering on a forum on wood',
  year: 2000,
  url: 'https://woodweb.com/knowledge_base/Wood_weight_and_highway_transport.html',
};
