import type { Source } from '../citation.ts';

export const alligationAnswer2022: Source = {
  id: 'alligation-answer-2022',
  title: 'Alcohol solution problem',
  author: 'J. R. S., tutor',
  year: 2022,
  url: 'https://www.wyzant.com/resources/answers/880363/alcohol-solution-problem',
  note: 'Worked answer to a student, 7 January 2022.',
};
