import { defineRule, requireInputs } from '@scantling/rules';
import { geometryPrimer2011 } from '@scantling/rules/sources';
import { fromSides, type Movement, wayOf } from '../geometry.ts';
import {
  type ClearanceToRectangleInput,
  clearanceLimits,
  clearanceToRectangleRule,
} from './clearance-to-rectangle.ts';

const share = { min: 0, max: 20 } as const;
const movementLimits = {
  fixedLineYMm: { min: -20_000, max: 20_000 },
  shrinkPct: share,
  swellPct: share,
} as const;

export interface ClearanceOverSeasonsInput extends ClearanceToRectangleInput, Movement {
  /** Centre of the hole along y on building day, mm from the datum, −20 000 to 20 000. */
  readonly holeYMm: number;
}

export interface ClearanceOverSeasons {
  /** Least clearance at any time of the year, mm; negative where hole and rectangle then overlap. */
  readonly clearanceMm: number;
}

/**
 * Least clearance between a hole in a top and a rectangle of the base beneath, while the top swells and shrinks about
 * the line where it is held. The hole moves across the grain by its distance from that line times the change; along
 * the grain wood hardly moves. The hole's own change in size, the same share of its diameter, is left out.
 *
 * @returns The least clearance in mm over every state between most shrunk and most swollen.
 * @throws RangeError where an input is outside its limits.
 * Source: closest point of a box, 3D Math Primer, section A.5; the rest is derived here.
 * @example
 * ```ts
 * import { clearanceOverSeasons } from '@scantling/grids';
 * // 400 mm from the fixed line, 1 % swelling takes the hole 4 mm towards the rail
 * clearanceOverSeasons({ holeXMm: 100, holeYMm: 500, holeDiameterMm: 4, xMm: 0, yMm: 508, lengthMm: 97, widthMm: 40, fixedLineYMm: 100, shrinkPct: 0.5, swellPct: 1 }).clearanceMm // => 3
 * ```
 */
export function clearanceOverSeasons(input: ClearanceOverSeasonsInput): ClearanceOverSeasons {
  requireInputs<ClearanceToRectangleInput>('clearanceOverSeasons', input, clearanceLimits);
  requireInputs<Movement>('clearanceOverSeasons', input, movementLimits);
  const { holeXMm, holeYMm, holeDiameterMm, xMm, yMm, lengthMm, widthMm } = input;
  const { lowMm, highMm } = wayOf(holeYMm, input);
  const beyondX = Math.max(xMm - holeXMm, holeXMm - xMm - lengthMm);
  // A hole that passes the middle of the rectangle is nearest there.
  const beyondY = Math.max(yMm - highMm, lowMm - yMm - widthMm, -widthMm / 2);
  return { clearanceMm: fromSides(beyondX, beyondY) - holeDiameterMm / 2 };
}

export const clearanceOverSeasonsRule = /* @__PURE__ */ defineRule(() => ({
  id: 'grids/clearance-over-seasons',
  title: 'Clearance of a hole over the seasons',
  summary:
    'The least that is left between a hole in a solid top and a rail or leg beneath it, while the top swells and shrinks about the line where it is held.',
  basis: 'derived',
  inputs: {
    ...clearanceToRectangleRule.inputs,
    holeYMm: {
      ...clearanceToRectangleRule.inputs.holeYMm,
      help: 'From the datum, towards the back, on building day.',
    },
    fixedLineYMm: {
      kind: 'number',
      label: 'Fixed line',
      unit: 'mm',
      ...movementLimits.fixedLineYMm,
      help: 'Where the top is held to the base, from the datum across the grain.',
    },
    shrinkPct: {
      kind: 'number',
      label: 'Most shrinking',
      unit: '%',
      ...movementLimits.shrinkPct,
      help: 'Of the width on building day.',
    },
    swellPct: {
      kind: 'number',
      label: 'Most swelling',
      unit: '%',
      ...movementLimits.swellPct,
      help: 'Of the width on building day.',
    },
  },
  outputs: {
    clearanceMm: {
      label: 'Least clearance',
      unit: 'mm',
      help: 'At the worst time of the year; negative where hole and rectangle then overlap.',
    },
  },
  compute: clearanceOverSeasons,
  formula: String.raw`c = \min_{-s \le \varepsilon \le w} c_R\bigl(x,\; y + (y - y_0)\,\varepsilon\bigr)`,
  symbols: {
    c: 'least clearance',
    c_R: 'clearance of a hole from the rectangle',
    'x, y': 'centre of the hole on building day',
    y_0: 'fixed line',
    s: 'most shrinking, as a fraction',
    w: 'most swelling, as a fraction',
    '\\varepsilon': 'change of the top at some time of the year, as a fraction of its width on building day',
  },
  sources: [
    {
      source: geometryPrimer2011,
      at: 'section A.5, closest point in a box',
      confirmed: 'text',
      tier: 'reprint',
    },
  ],
  examples: [
    {
      given: {
        holeXMm: 100,
        holeYMm: 500,
        holeDiameterMm: 4,
        xMm: 0,
        yMm: 508,
        lengthMm: 97,
        widthMm: 40,
        fixedLineYMm: 100,
        shrinkPct: 0.5,
        swellPct: 1,
      },
      expect: { clearanceMm: '3.000' },
      from: {
        workedByHand:
          'swollen, the hole is at 500 + (500 − 100) × 0.01 = 504; to the corner 100 − 97 = 3 mm and 508 − 504 = 4 mm; √(3² + 4²) = 5; less the radius 4 / 2 = 2: 3 mm',
      },
    },
    {
      given: {
        holeXMm: 100,
        holeYMm: 100,
        holeDiameterMm: 20,
        xMm: 0,
        yMm: 103,
        lengthMm: 400,
        widthMm: 40,
        fixedLineYMm: 600,
        shrinkPct: 2,
        swellPct: 1,
      },
      expect: { clearanceMm: '-17.000' },
      from: {
        workedByHand:
          'shrunk, the hole is at 100 + (600 − 100) × 0.02 = 110, inside by 110 − 103 = 7 mm; the radius is 20 / 2 = 10 mm; −7 − 10 = −17 mm',
      },
    },
  ],
  laws: [
    {
      of: 'clearanceMm',
      by: {
        holeDiameterMm: 'linear',
        lengthMm: 'decreasing',
        widthMm: 'decreasing',
        shrinkPct: 'decreasing',
        swellPct: 'decreasing',
      },
    },
  ],
}));
