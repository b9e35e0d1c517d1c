import { batchLimits, partsLimits, solidsLimits, thinnerLimits } from './mixing.ts';

/** Inputs that the cards of several rules on mixing and thinning have in common. */
export const mixingCard = () => ({
  parts: {
    kind: 'numbers' as const,
    label: 'Parts',
    unit: '1' as const,
    ...partsLimits,
    help: 'By volume, one figure for each liquid: 3, 2, 1.',
  },
  batchMl: {
    kind: 'number' as const,
    label: 'Batch',
    unit: 'mL' as const,
    ...batchLimits,
    help: 'Volume of the whole mix.',
  },
  volumeSolidsPct: {
    kind: 'number' as const,
    label: 'Solids by volume before thinning',
    unit: '%' as const,
    ...solidsLimits,
    help: 'See the product’s data sheet. By volume, not by weight.',
  },
  thinnerPct: {
    kind: 'number' as const,
    label: 'Thinner added',
    unit: '%' as const,
    ...thinnerLimits,
    help: 'Of the volume of the finish: half and half is 100 %, 250 mL to a litre 25 %.',
  },
});
