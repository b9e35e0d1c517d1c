import type { Source } from '../citation.ts';

export const clonalTeak2023: Source = {
  id: 'clonal-teak-2023',
  title:
    'Table 3: mean values and standard deviations of the physical and mechanical properties of clonal teak',
  author: 'Journal of the Korean Wood Science and Technology, the authors not named on the page seen',
  year: 2023,
  identifier: 'volume 51, issue 2, from page 109',
  url: 'https://www.woodj.org/download/download_excel?pid=wood-51-2-109&tid=T3',
  note: 'One table was seen, the article was not; the year follows from the volume.',
};
