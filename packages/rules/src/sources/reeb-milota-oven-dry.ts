import type { Source } from '../citation.ts';

export const reebMilotaOvenDry: Source = {
  id: 'reeb-milota-oven-dry',
  title: 'Moisture Content by the Oven-Dry Method for Industrial Testing',
  author: 'J. Reeb and M. Milota, Oregon State University',
  note: 'Undated in the text seen, which is its beginning.',
};
