import type { Source } from '../citation.ts';

export const structuralAnalysisLibrary: Source = {
  id: 'structural-analysis-library',
  title: 'XC: finite element analysis, verification tests of dowel-type fasteners',
  author: 'the authors of an open library for structural analysis',
  url: 'https://github.com/xcfem/xc',
  note: 'Undated source code. Its tests carry worked examples of the American Wood Council to ten digits.',
};
