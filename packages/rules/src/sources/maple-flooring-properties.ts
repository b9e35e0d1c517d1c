import type { Source } from '../citation.ts';

export const mapleFlooringProperties: Source = {
  id: 'maple-flooring-properties',
  title: 'Physical Properties and Characteristics',
  author: 'Maple Flooring Manufacturers Association',
  url: 'https://www.maplefloor.org/en/physical-properties-and-characteristics/',
  note: 'Undated page. Its modulus of elasticity of sugar maple at 12 % is higher than that of the Wood Handbook.',
};
