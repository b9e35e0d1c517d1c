import type { Limits, NumberInput } from '@scantling/rules';

/** What the help of an input says of the two specific gravities, which differ by a tenth in heavy woods. */
export const airDryBasis = 'Ovendry mass, and volume at 12 % moisture content.';
export const ovendryBasis =
  'Ovendry mass, and ovendry volume: about a tenth more than at 12 % in heavy woods.';

/** Inputs that several cards have in common, as they stand there. */
export const ovendryInput = (limits: Limits): NumberInput => ({
  kind: 'number',
  label: 'Specific gravity, ovendry',
  unit: '1',
  ...limits,
  help: ovendryBasis,
});

export const airDryInput = (limits: Limits): NumberInput => ({
  kind: 'number',
  label: 'Specific gravity at 12 %',
  unit: '1',
  ...limits,
  help: airDryBasis,
});

export const shankInput = (limits: Limits): NumberInput => ({
  kind: 'number',
  label: 'Shank diameter',
  unit: 'mm',
  ...limits,
  help: 'Where there is no thread.',
});

export const threadInWoodInput = (limits: Limits, help: string): NumberInput => ({
  kind: 'number',
  label: 'Thread in the wood',
  unit: 'mm',
  ...limits,
  help,
});

export const grainChoice = () => ({
  kind: 'choice' as const,
  label: 'Screwed into',
  options: { side: 'Side grain', end: 'End grain' },
});
