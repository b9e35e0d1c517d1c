import type { Source } from '../citation.ts';

export const nioshIdlh1994: Source = {
  id: 'niosh-idlh-1994',
  title: 'Documentation for Immediately Dangerous To Life or Health Concentrations (IDLHs)',
  author: 'National Institute for Occupational Safety and Health',
  year: 1994,
  url: 'https://www.cdc.gov/niosh/idlh/intridl4.html',
  note: 'Each page lists the limits of OSHA, NIOSH and ACGIH as they stood in 1994. Limits change: ask for those in force.',
};
