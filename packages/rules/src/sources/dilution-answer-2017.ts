import type { Source } from '../citation.ts';

export const dilutionAnswer2017: Source = {
  id: 'dilution-answer-2017',
  title:
    'How many milliliters of water must be added to 300 ml of 70% alcoholic solution to make a 40% alcoholic solution?',
  author: 'a tutor of chemistry',
  year: 2017,
  url: 'https://socratic.org/questions/how-many-milliliters-of-water-must-be-added-to-300-ml-of-70-alcoholic-solution-t',
  note: 'Worked answer, 6 January 2017, to a problem of the army course MD0802, Pharmaceutical Calculations.',
};
