import { defineRule, requireInputs } from '@scantling/rules';
import { geometryPrimer2011 } from '@scantling/rules/sources';
import { fromSides } from '../geometry.ts';

/** Limits of a hole and a rectangle, wherever their clearance is asked for. */
export const clearanceLimits = {
  holeXMm: { min: -20_000, max: 20_000 },
  holeYMm: { min: -20_000, max: 20_000 },
  holeDiameterMm: { min: 0, max: 1000 },
  xMm: { min: -20_000, max: 20_000 },
  yMm: { min: -20_000, max: 20_000 },
  lengthMm: { min: 0, max: 40_000 },
  widthMm: { min: 0, max: 40_000 },
} as const;

export interface ClearanceToRectangleInput {
  /** Centre of the hole along x, mm from the datum, −20 000 to 20 000. */
  readonly holeXMm: number;
  /** Centre of the hole along y, mm from the datum, −20 000 to 20 000. */
  readonly holeYMm: number;
  /** Diameter of the hole, mm, 0 to 1000; 0 asks for the distance of its centre. */
  readonly holeDiameterMm: number;
  /** Corner of the rectangle nearest to the datum, along x, mm, −20 000 to 20 000. */
  readonly xMm: number;
  /** The same corner along y, mm, −20 000 to 20 000. */
  readonly yMm: number;
  /** Size of the rectangle along x, mm, 0 to 40 000. */
  readonly lengthMm: number;
  /** Size of the rectangle along y, mm, 0 to 40 000. */
  readonly widthMm: number;
}

export interface ClearanceToRectangle {
  /**
   * Least distance between the hole's rim and the rectangle, mm. Negative where they overlap: how far the hole
   * would have to move, the shortest way, to only touch.
   */
  readonly clearanceMm: number;
}

/**
 * How far the rim of a round hole stays from a rectangle square to the grid: a rail, a leg, a strip let in.
 *
 * @returns The clearance in mm: positive with wood between, 0 touching, negative overlapping by the shortest way out.
 * @throws RangeError where an input is outside its limits.
 * Source: closest point of a box, 3D Math Primer, section A.5; the distance to it by Pythagoras.
 * @example
 * ```ts
 * import { clearanceToRectangle } from '@scantling/grids';
 * // 30 mm to the left of the corner and 40 mm in front of it: 50 mm to the centre, 40 mm to the rim
 * clearanceToRectangle({ holeXMm: 70, holeYMm: 60, holeDiameterMm: 20, xMm: 100, yMm: 100, lengthMm: 600, widthMm: 40 }).clearanceMm // => 40
 * ```
 */
export function clearanceToRectangle(input: ClearanceToRectangleInput): ClearanceToRectangle {
  requireInputs('clearanceToRectangle', input, clearanceLimits);
  const { holeXMm, holeYMm, holeDiameterMm, xMm, yMm, lengthMm, widthMm } = input;
  const beyondX = Math.max(xMm - holeXMm, holeXMm - xMm - lengthMm);
  const beyondY = Math.max(yMm - holeYMm, holeYMm - yMm - widthMm);
  return { clearanceMm: fromSides(beyondX, beyondY) - holeDiameterMm / 2 };
}

export const clearanceToRectangleRule = /* @__PURE__ */ defineRule(() => ({
  id: 'grids/clearance-to-rectangle',
  title: 'Clearance of a hole from a rectangle',
  summary:
    'How much is left between the rim of a round hole and a rail, leg or inlay that is square to the grid; negative where they overlap.',
  basis: 'derived',
  inputs: {
    holeXMm: {
      kind: 'number',
      label: 'Hole centre along the grain',
      unit: 'mm',
      ...clearanceLimits.holeXMm,
      help: 'From the datum, the front-left corner seen from above.',
    },
    holeYMm: {
      kind: 'number',
      label: 'Hole centre across the grain',
      unit: 'mm',
      ...clearanceLimits.holeYMm,
      help: 'From the datum, towards the back.',
    },
    holeDiameterMm: { kind: 'number', label: 'Hole diameter', unit: 'mm', ...clearanceLimits.holeDiameterMm },
    xMm: {
      kind: 'number',
      label: 'Rectangle begins, along the grain',
      unit: 'mm',
      ...clearanceLimits.xMm,
      help: 'Its corner nearest to the datum.',
    },
    yMm: {
      kind: 'number',
      label: 'Rectangle begins, across the grain',
      unit: 'mm',
      ...clearanceLimits.yMm,
      help: 'Its corner nearest to the datum.',
    },
    lengthMm: { kind: 'number', label: 'Size along the grain', unit: 'mm', ...clearanceLimits.lengthMm },
    widthMm: { kind: 'number', label: 'Size across the grain', unit: 'mm', ...clearanceLimits.widthMm },
  },
  outputs: {
    clearanceMm: {
      label: 'Clearance',
      unit: 'mm',
      help: 'Negative: how far the hole would have to move, the shortest way, to only touch.',
    },
  },
  compute: clearanceToRectangle,
  formula: String.raw`\begin{aligned}
c &= \sqrt{\max(0, u)^2 + \max(0, v)^2} + \min\bigl(0, \max(u, v)\bigr) - \tfrac{d}{2} \\
u &= \max(x_R - x,\; x - x_R - L), \quad v = \max(y_R - y,\; y - y_R - W)
\end{aligned}`,
  symbols: {
    c: 'clearance',
    'x, y': 'centre of the hole',
    d: 'diameter of the hole',
    'x_R, y_R': 'corner of the rectangle nearest to the datum',
    L: 'size of the rectangle along the grain',
    W: 'size of the rectangle across the grain',
    'u, v': 'how far the centre lies beyond the rectangle, along and across the grain',
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
      given: { holeXMm: 70, holeYMm: 60, holeDiameterMm: 20, xMm: 100, yMm: 100, lengthMm: 600, widthMm: 40 },
      expect: { clearanceMm: '40.000' },
      from: {
        workedByHand:
          'to the corner 100 − 70 = 30 mm and 100 − 60 = 40 mm; √(30² + 40²) = 50; less the radius 20 / 2 = 10: 40 mm',
      },
    },
    {
      given: {
        holeXMm: 400,
        holeYMm: 152,
        holeDiameterMm: 20,
        xMm: 100,
        yMm: 100,
        lengthMm: 600,
        widthMm: 40,
      },
      expect: { clearanceMm: '2.000' },
      from: { workedByHand: 'beside the back edge at 100 + 40 = 140: 152 − 140 = 12; 12 − 10 = 2 mm' },
    },
    {
      given: {
        holeXMm: 400,
        holeYMm: 135,
        holeDiameterMm: 20,
        xMm: 100,
        yMm: 100,
        lengthMm: 600,
        widthMm: 40,
      },
      expect: { clearanceMm: '-15.000' },
      from: {
        workedByHand:
          'inside, nearest to the back edge at 140: 140 − 135 = 5 to get the centre out; and 20 / 2 = 10 for the radius; −5 − 10 = −15 mm',
      },
    },
  ],
  laws: [
    { of: 'clearanceMm', by: { holeDiameterMm: 'linear', lengthMm: 'decreasing', widthMm: 'decreasing' } },
  ],
}));
