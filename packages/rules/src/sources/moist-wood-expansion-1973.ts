import type { Source } from '../citation.ts';

export const moistWoodExpansion1973: Source = {
  id: 'moist-wood-expansion-1973',
  title: 'Thermal Expansion of Moist Wood',
  author: 'H. Kubler, L. Liang, L. S. Chang',
  year: 1973,
  identifier: 'Wood and Fiber 5(3)',
  url: 'https://wfs.swst.org/index.php/wfs/article/view/2182',
  note: 'Its abstract was seen; year and number are from memory.',
};
