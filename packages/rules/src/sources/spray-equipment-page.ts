import type { Source } from '../citation.ts';

export const sprayEquipmentPage: Source = {
  id: 'spray-equipment-page',
  title: 'Spray Equipment Transfer Efficiency',
  author: 'South Coast Air Quality Management District',
  url: 'http://www.aqmd.gov/home/permits/spray-equipment-transfer-efficiency',
  note: 'Undated page.',
};
