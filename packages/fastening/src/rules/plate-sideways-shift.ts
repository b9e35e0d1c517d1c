import { defineRule, plusZero, requireInputs, requireThat } from '@scantling/rules';
import { fasteningTabletops1987 } from '@scantling/rules/sources';
import { firmNotHard, notStructuralDesign } from '../cautions.ts';

const length = { min: 1, max: 500 };
const limits = { reachMm: length, fromSquareMm: { min: 0, max: 500 } } as const;

export interface PlateSidewaysShiftInput {
  /** Between the centres of the plate's two screws, mm, 1 to 500. */
  readonly reachMm: number;
  /** Travel across the grain from where the plate lies square to it, mm, 0 to the reach. */
  readonly fromSquareMm: number;
}

export interface PlateSidewaysShift {
  /** How far the arc draws the screw sideways, along the grain, mm. */
  readonly sidewaysMm: number;
  /** How far the plate has turned, °. */
  readonly turnDeg: number;
}

/**
 * How far a plate that turns on two screws, one in the base and one in the top, draws the screw in the top sideways: it
 * moves on a circle, while the top wants to move straight across the grain. The play of the screws in the plate has to
 * take up the difference.
 *
 * @returns The sideways shift in mm and the turn in degrees, from where the plate lies square to the travel.
 * @throws RangeError where an input is outside its limits, or the travel greater than the reach.
 * Source: plates that turn are published practice; the shift is the height of a circular arc over half its chord.
 * @example
 * ```ts
 * import { plateSidewaysShift } from '@scantling/fastening';
 * plateSidewaysShift({ reachMm: 25, fromSquareMm: 7 }) // => { sidewaysMm: 1, turnDeg: 16.26 }
 * plateSidewaysShift({ reachMm: 25, fromSquareMm: 30 }) // throws plateSidewaysShift requires fromSquareMm at most reachMm, got 30 and 25
 * ```
 */
export function plateSidewaysShift(input: PlateSidewaysShiftInput): PlateSidewaysShift {
  requireInputs('plateSidewaysShift', input, limits);
  const { reachMm, fromSquareMm } = input;
  requireThat(
    'plateSidewaysShift',
    fromSquareMm <= reachMm,
    `fromSquareMm at most reachMm, got ${fromSquareMm} and ${reachMm}`,
  );
  const alongMm = Math.sqrt((reachMm - fromSquareMm) * (reachMm + fromSquareMm));
  return {
    // Reach less `alongMm`, written so that small shifts keep their digits.
    sidewaysMm: fromSquareMm ** 2 / (reachMm + alongMm),
    turnDeg: plusZero((Math.asin(fromSquareMm / reachMm) * 180) / Math.PI),
  };
}

export const plateSidewaysShiftRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/plate-sideways-shift',
  title: 'Sideways shift of a plate that turns',
  summary:
    'How far a plate that turns on two screws draws the top sideways, because its end moves on a circle and not on a straight line.',
  basis: 'exact',
  inputs: {
    reachMm: {
      kind: 'number',
      label: 'Between the two screws',
      unit: 'mm',
      ...limits.reachMm,
      help: 'From centre to centre.',
    },
    fromSquareMm: {
      kind: 'number',
      label: 'Travel from square',
      unit: 'mm',
      ...limits.fromSquareMm,
      help: 'Across the grain, from where the plate lies along the grain.',
    },
  },
  outputs: {
    sidewaysMm: {
      label: 'Sideways shift',
      unit: 'mm',
      help: 'Along the grain; the play of both screws has to take it up.',
    },
    turnDeg: { label: 'Turn', unit: '°', help: 'The recess has to be open that far.' },
  },
  compute: plateSidewaysShift,
  formula: String.raw`s = r - \sqrt{r^2 - v^2}, \qquad \varphi = \arcsin\frac{v}{r}`,
  symbols: {
    s: 'sideways shift',
    r: 'between the two screws',
    v: 'travel from square',
    '\\varphi': 'turn',
  },
  inSymbols: (input, output) => ({
    s: output.sidewaysMm,
    r: input.reachMm,
    v: input.fromSquareMm,
    '\\varphi': output.turnDeg,
  }),
  requires: [
    {
      says: 'the plate reaches as far as the travel',
      holds: ({ fromSquareMm, reachMm }) => fromSquareMm <= reachMm,
    },
  ],
  sources: [
    {
      source: fasteningTabletops1987,
      at: 'summary: a fastener in the shape of a figure 8',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { reachMm: 25, fromSquareMm: 7 },
      expect: { sidewaysMm: '1.000', turnDeg: '16.26' },
      from: { workedByHand: '25 − √(25² − 7²) = 1.000 mm; sin(16.26°) = 0.28 and 25 × 0.28 = 7 mm' },
    },
    {
      given: { reachMm: 20, fromSquareMm: 10 },
      expect: { sidewaysMm: '2.679', turnDeg: '30.00' },
      from: { workedByHand: '20 − √(20² − 10²) = 2.679 mm; 20 × sin(30.00°) = 10 mm' },
    },
  ],
  laws: [
    { of: 'sidewaysMm', by: { fromSquareMm: 'increasing', reachMm: 'decreasing' } },
    { of: 'turnDeg', by: { fromSquareMm: 'increasing', reachMm: 'decreasing' } },
  ],
  peers: [
    {
      name: 'the radius less its cosine',
      of: 'sidewaysMm',
      compute: ({ reachMm, fromSquareMm }) => reachMm * (1 - Math.cos(Math.asin(fromSquareMm / reachMm))),
      absolute: 1e-12,
    },
  ],
  cautions: [notStructuralDesign, firmNotHard],
}));
