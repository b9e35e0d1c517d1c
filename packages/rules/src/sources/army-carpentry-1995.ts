import type { Source } from '../citation.ts';

export const armyCarpentry1995: Source = {
  id: 'army-carpentry-1995',
  title: 'Carpentry I, subcourse EN5155, edition A',
  author: 'United States Army Engineer School',
  year: 1995,
  url: 'https://armyengineer.tpub.com/EN5155/Figure-1-42-Screw-Covering-Material-51.htm',
};
