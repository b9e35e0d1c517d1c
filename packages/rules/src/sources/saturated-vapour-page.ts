import type { Source } from '../citation.ts';

export const saturatedVapourPage: Source = {
  id: 'saturated-vapour-page',
  title: 'Saturated vapour pressure',
  author: 'a wiki on hydrology, after the World Meteorological Organization',
  year: 2024,
  identifier:
    'on the Guide to Meteorological Instruments and Methods of Observation, WMO-No. 8, 7th edition, 2008',
  url: 'https://hydro-wiki.de/en/hydro/saturated-vapour-pressure',
  note: 'Gives the formula of the guide, which itself was not seen.',
};
