import type { Source } from '../citation.ts';

export const hardwoodThicknessPage: Source = {
  id: 'hardwood-thickness-page',
  title: 'Hardwood lumber: dimensions',
  author: 'editors of a site of engineering tables',
  url: 'https://www.engineeringtoolbox.com/hardwood-lumber-dimensions-chart-d_1462.html',
  note: 'Undated page with the standard thicknesses of the National Hardwood Lumber Association.',
};
