import type { Citation } from '@scantling/rules';
import { gnuUnits, poundCutAnswer } from '@scantling/rules/sources';
import { denaturedAlcohol, productSheet, solvents } from './cautions.ts';
import { flakeLimits } from './shellac.ts';

/** What the cards of the rules on shellac have in common. */
export const shellacCard = () => ({
  cutPer: {
    kind: 'choice' as const,
    label: 'Cut counted',
    options: {
      alcohol: 'per US gallon of alcohol, flakes extra (usual)',
      solution: 'per US gallon of finished solution',
    },
  },
  flakeDensityGPerL: {
    kind: 'number' as const,
    label: 'Density of the flakes',
    unit: 'g/L' as const,
    ...flakeLimits,
    help: 'How much room they take once dissolved; 1035 to 1200 is reported, from memory.',
  },
  sources: [
    { source: poundCutAnswer, at: 'definition and ounces to a pint', confirmed: 'text', tier: 'reprint' },
    {
      source: gnuUnits,
      at: 'poundcut: pound / gallon',
      confirmed: 'text',
      tier: 'reprint',
      erratum:
        'The units database says per gallon and not of what; the trade means a gallon of alcohol, to which the flakes come on top.',
    },
  ] satisfies Citation[],
  cautions: [
    solvents,
    'Alcohol burns with a flame that is hard to see.',
    denaturedAlcohol,
    'Dissolved shellac ages and then stays soft: mix what is used up soon, and try it on an offcut.',
    productSheet,
  ],
});
