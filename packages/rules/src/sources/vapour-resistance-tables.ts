import type { Source } from '../citation.ts';

export const vapourResistanceTables: Source = {
  id: 'vapour-resistance-tables',
  title: 'SBi Guideline 224, Moisture in buildings: Annex A, Tables',
  author: 'Danish Building Research Institute',
  url: 'https://224-eng.pages.dev/annex-a-tables',
  note: 'Undated on the copy seen. It prints 5.5 · 10⁻⁹ where its own factors give 5.5 · 10⁹ Pa·s·m²/kg.',
};
