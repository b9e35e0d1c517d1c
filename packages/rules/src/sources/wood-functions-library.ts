import type { Source } from '../citation.ts';

export const woodFunctionsLibrary: Source = {
  id: 'wood-functions-library',
  title: 'chemics: wood.py, heat capacity and thermal conductivity of wood',
  author: 'the authors of a Python library for chemical engineering',
  url: 'https://github.com/wigging/chemics',
  note: 'Undated source code, which cites the Wood Handbook (FPL-GTR-190), ch. 4, by equation.',
};
