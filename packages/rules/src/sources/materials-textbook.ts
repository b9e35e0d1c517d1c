import type { Source } from '../citation.ts';

export const materialsTextbook: Source = {
  id: 'materials-textbook',
  title: 'Materials Science and Engineering: An Introduction',
  author: 'W. D. Callister, D. G. Rethwisch',
  url: 'https://www.gradesaver.com/textbooks/engineering/other-engineering/materials-science-and-engineering-an-introduction/chapter-19-thermal-properties-questions-and-problems-page-800/19-8',
  note: 'Undated on the page seen, which works out problems of the textbook. Its authors are from memory.',
};
