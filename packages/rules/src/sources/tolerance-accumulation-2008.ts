import type { Source } from '../citation.ts';

export const toleranceAccumulation2008: Source = {
  id: 'tolerance-accumulation-2008',
  title: 'Tolerance Accumulation',
  author: 'an engineering weblog',
  year: 2008,
  identifier: 'on section 2.6 of ASME Y14.5, Dimensioning and Tolerancing',
  url: 'http://www.theswgeek.com/2008/09/03/standards-wednesday-tolerance-accumulation/',
  note: 'Retells the section of the standard with a worked part of its own. The standard itself was not seen.',
};
