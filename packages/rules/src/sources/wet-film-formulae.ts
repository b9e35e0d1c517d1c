import type { Source } from '../citation.ts';

export const wetFilmFormulae: Source = {
  id: 'wet-film-formulae',
  title: 'Wet and Dry Film Thickness Formulae',
  author: 'GEI International',
  url: 'http://www.geionline.com/wet-film-formulae',
  note: 'Undated page of a maker of film gauges.',
};
