import type { Source } from '../citation.ts';

export const reebMilotaOvenDry: Source = {
  id: 'reeb-milota-oven-dry',
  title: 'Moisture Content by the Oven-Dry Method for Industrial Testing',
  author: 'J. Reeb and M. Milota, Oregon State University',
  url: 'https://studylib.net/doc/11323722/moisture-content-by-the-oven-dry-method-for-industrial-te',
  note: 'Undated in the text seen, which is its beginning.',
};
