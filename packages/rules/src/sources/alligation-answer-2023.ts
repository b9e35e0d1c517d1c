import type { Source } from '../citation.ts';

export const alligationAnswer2023: Source = {
  id: 'alligation-answer-2023',
  title: 'How many mL of 50 % acid should be added to 100 % acid to get 20 mL of 70 % acid',
  author: 'J. R. S., tutor',
  year: 2023,
  url: 'https://www.wyzant.com/resources/answers/929842/how-many-ml-of-50-acid-should-be-added-to-100-acid-to-get-20-ml-of-70-acid',
  note: 'Worked answer to a student, 17 June 2023.',
};
