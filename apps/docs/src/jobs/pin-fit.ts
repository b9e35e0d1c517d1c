import { clearanceOfFit, type PinFit, type PinFitInput, pinFit } from '@scantling/grids';
import { defineJob, mm, type Outcome } from '../calculator/calculation.ts';
import { drawZones } from '../pin-fit/drawing.ts';
import { asking } from '../workers/ask.ts';

const ask = asking<PinFitInput, PinFit>(
  () => new Worker(new URL('../workers/pin-fit.ts', import.meta.url), { type: 'module' }),
);

const pct = (label: string, help?: string) =>
  ({ kind: 'number', label, unit: '%', min: 0, max: 20, ...(help && { help }) }) as const;

const seasons = { now: 'As bored', swollen: 'In the damp', shrunken: 'In the dry' } as const;

function slotInWords({ slot, alwaysGoesIn }: PinFit): string {
  if (alwaysGoesIn) return 'none is needed';
  if (!slot) return 'one slot would not do it';
  return `the hole of pin ${slot.index + 1}, ${slot.axis === 'x' ? 'along' : 'across'} the grain`;
}

export default defineJob({
  title: 'Pins in their holes',
  summary:
    'Whether a body with pins, a press or a sewing frame, goes into its holes as bored, in the damp and in the dry season; and the slot that would help.',
  group: 'Holes',
  rules: ['grids/clearance-of-fit'],
  fields: {
    pins: {
      kind: 'rows',
      label: 'Pins of the body',
      row: 'Pin',
      help: 'Their centres, from any point of the body.',
      minRows: 1,
      maxRows: 12,
      fields: {
        xMm: mm('Along the grain', -20_000, 20_000),
        yMm: mm('Across the grain', -20_000, 20_000),
      },
    },
    leastPinMm: mm('Thinnest pin', 0.1, 1000),
    mostPinMm: mm('Thickest pin', 0.1, 1000),
    leastHoleMm: { ...mm('Narrowest hole', 0.1, 1000), help: 'As bored.' },
    mostHoleMm: mm('Widest hole', 0.1, 1000),
    pinPositionErrorMm: { ...mm('Pins off their places by', 0, 10), help: 'At most, in any direction.' },
    holePositionErrorMm: mm('Holes off their places by', 0, 10),
    swellPct: { ...pct('Wood swells by at most'), help: 'Across the grain, after the holes are bored.' },
    shrinkPct: pct('Wood shrinks by at most'),
  },
  first: {
    pins: [
      { xMm: '0', yMm: '0' },
      { xMm: '224', yMm: '0' },
      { xMm: '224', yMm: '104' },
    ],
    ...{ leastPinMm: '15', mostPinMm: '15.1', leastHoleMm: '5/8 in', mostHoleMm: '16' },
    ...{ pinPositionErrorMm: '0.05', holePositionErrorMm: '0.1', swellPct: '1.1', shrinkPct: '0.6' },
  },
  compute(values, say) {
    const { leastPinMm, mostPinMm, leastHoleMm, mostHoleMm } = values;
    const limits = {
      ...{ holeLowerLimitMm: leastHoleMm, holeUpperLimitMm: mostHoleMm },
      ...{ shaftLowerLimitMm: leastPinMm, shaftUpperLimitMm: mostPinMm },
    };
    const clearance = clearanceOfFit(limits);
    const question: PinFitInput = {
      ...values,
      pin: { lowerLimitMm: leastPinMm, upperLimitMm: mostPinMm },
      hole: { lowerLimitMm: leastHoleMm, upperLimitMm: mostHoleMm },
    };
    const inWords = (fit: PinFit): Outcome => {
      const names = Object.keys(seasons) as (keyof typeof seasons)[];
      const fits = names.map((name) => ({ name, ...fit[name] }));
      const worst = fits.reduce((a, b) => (b.worstCase.marginMm < a.worstCase.marginMm ? b : a));
      const fails = fits.filter(({ worstCase }) => !worstCase.goesIn);
      const { slot } = fit;
      return {
        figures: [
          {
            name: 'marginMm',
            label: `Least to spare: ${seasons[worst.name].toLowerCase()}`,
            value: worst.worstCase.marginMm,
            unit: 'mm',
          },
          { name: 'slotAt', label: 'Slot that would make it go in', text: slotInWords(fit) },
          ...(slot
            ? [
                {
                  name: 'slotMm',
                  label: 'Between the centres of its round ends',
                  value: slot.lengthMm,
                  unit: 'mm' as const,
                },
              ]
            : []),
        ],
        verdict: fit.alwaysGoesIn
          ? { good: true, says: 'It goes in all year, whatever the errors are.' }
          : {
              good: false,
              says: `It may not go in: ${fails.map(({ name }) => seasons[name].toLowerCase()).join(', ')}.`,
            },
        drawing: drawZones(limits, values, clearance.leastClearanceMm, say),
        tables: [
          {
            caption: 'Over the year',
            columns: [
              { label: '' },
              { label: 'To spare, worst case', unit: 'mm' },
              { label: 'To spare, errors vary independently', unit: 'mm' },
              { label: 'Touch first' },
              { label: 'Turned by', unit: '°' },
            ],
            rows: fits.map(({ name, worstCase, rootSumSquare, limitingPins, turnDeg }) => [
              seasons[name],
              worstCase.marginMm,
              rootSumSquare.marginMm,
              limitingPins.map(({ index }) => `pin ${index + 1}`).join(', '),
              turnDeg,
            ]),
          },
        ],
        reasons: [
          'To spare: by how much every hole could be smaller in diameter. Below 0, by how much it would have to be larger.',
          'Worst case is a proof: there is a way to set the body that clears whatever the errors are. Along the grain wood is taken to keep its length.',
        ],
        steps: [
          {
            what: 'Play of one pin in one hole',
            rule: 'grids/clearance-of-fit',
            given: limits,
            gives: clearance,
          },
        ],
      };
    };
    // How pins are set is more than a page should carry: an open page asks a worker.
    if (import.meta.env.SSR) return inWords(pinFit(question));
    return { figures: [], steps: [], later: async () => inWords(await ask(question)) };
  },
});
