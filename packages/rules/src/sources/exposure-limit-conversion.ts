import type { Source } from '../citation.ts';

export const exposureLimitConversion: Source = {
  id: 'exposure-limit-conversion',
  title: 'Converting Occupational Exposure Limits from mg/m³ to ppm',
  author: 'Canadian Centre for Occupational Health and Safety',
  year: 2006,
  url: 'https://bac-lac.wayback.archive-it.org/web/20061206193736/http://ccohs.ca/oshanswers/chemicals/convert.html',
  note: 'Gives the formulas of the ACGIH booklet of threshold limit values.',
};
