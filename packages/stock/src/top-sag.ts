import { plusZero, requireFields, requireInputs, requireThat } from '@scantling/rules';
import { deflection } from './beams/deflection.ts';
import { rectangularSection } from './rules/rectangular-section.ts';

const place = { min: 0, max: 20_000 };
const limits = {
  lengthMm: { min: 1, max: 20_000 },
  leftSupportMm: place,
  rightSupportMm: place,
  widthMm: { min: 1, max: 5000 },
  depthMm: { min: 1, max: 1000 },
  modulusOfElasticityMPa: { min: 100, max: 500_000 },
  shearModulusMPa: { min: 10, max: 200_000 },
  spreadLoadNPerMm: { min: 0, max: 100 },
} as const;

/** A load that bears on one place. */
export interface PointLoad {
  /** From the left end, mm. */
  readonly atMm: number;
  /** N, 0 to 100 000. */
  readonly forceN: number;
}

/** Holes through the top, side by side across it. */
export interface HoleRow {
  /** Their centres, from the left end, mm. */
  readonly atMm: number;
  /** mm, 0 to 1000. */
  readonly diameterMm: number;
  /** 1 to 1000. */
  readonly count: number;
}

export interface TopSagInput {
  /** Of the top, end to end, mm, 1 to 20 000. */
  readonly lengthMm: number;
  /** From the left end, mm. */
  readonly leftSupportMm: number;
  /** From the left end, mm: at least 1 mm beyond the left support. */
  readonly rightSupportMm: number;
  /** Across, mm, 1 to 5000. */
  readonly widthMm: number;
  /** Thickness, mm, 1 to 1000. */
  readonly depthMm: number;
  /** Modulus of elasticity along the top, MPa, 100 to 500 000. */
  readonly modulusOfElasticityMPa: number;
  /** Shear modulus, MPa, 10 to 200 000; of wood about a sixteenth of the modulus of elasticity. */
  readonly shearModulusMPa: number;
  /** Spread over the whole length, its own weight as well, N/mm, 0 to 100. */
  readonly spreadLoadNPerMm: number;
  /** Up to 100. */
  readonly pointLoads: readonly PointLoad[];
  /** Up to 500. Each hole counts as a square of its diameter, which overstates it a little. */
  readonly holeRows: readonly HoleRow[];
}

export interface TopSag {
  /** Upwards, N; negative where the top lifts off this support unless it is held down. */
  readonly leftReactionN: number;
  /** Upwards, N; negative where the top lifts off this support unless it is held down. */
  readonly rightReactionN: number;
  /** mm, at once; negative where the end rises. */
  readonly leftEndSagMm: number;
  /** mm, at once; negative where the end rises. */
  readonly rightEndSagMm: number;
  /** Halfway between the supports, mm; negative where it rises. */
  readonly midspanSagMm: number;
  /** Where the top sags the most, from the left end, mm. */
  readonly lowestAtMm: number;
  /** How far it sags there, mm. */
  readonly lowestSagMm: number;
}

function requireTop(input: TopSagInput): void {
  requireInputs('topSag', input, limits);
  const { lengthMm, leftSupportMm, rightSupportMm, pointLoads, holeRows } = input;
  requireThat(
    'topSag',
    rightSupportMm - leftSupportMm >= 1 && rightSupportMm <= lengthMm,
    `rightSupportMm from 1 mm beyond leftSupportMm ${leftSupportMm} to lengthMm ${lengthMm}, got ${rightSupportMm}`,
  );
  const within = { min: 0, max: lengthMm };
  const requireRows = (name: string, rows: readonly object[], most: number, of: object) => {
    const fits = Array.isArray(rows) && rows.length <= most;
    requireThat('topSag', fits, `${name} to be a list of at most ${most}, got ${rows?.length}`);
    rows.forEach((row, i) => {
      requireFields('topSag', `${name}[${i}]`, row, { atMm: within, ...of });
    });
  };
  requireRows('pointLoads', pointLoads, 100, { forceN: { min: 0, max: 100_000 } });
  const hole = { diameterMm: { min: 0, max: 1000 }, count: { min: 1, max: 1000, integer: true as const } };
  requireRows('holeRows', holeRows, 500, hole);
}

/** How much of the width holes take away, at a place along the top. */
const holesAt = ({ holeRows }: TopSagInput, xMm: number): number =>
  holeRows.reduce(
    (sum, { atMm, diameterMm, count }) =>
      sum + (Math.abs(xMm - atMm) < diameterMm / 2 ? count * diameterMm : 0),
    0,
  );

/** Each place is looked at, and the lowest looked at more closely. */
function lowest(sagAt: (xMm: number) => number, places: readonly number[]): readonly [number, number] {
  let best = 0;
  const sags = places.map(sagAt);
  for (const [i, sag] of sags.entries()) if (sag > (sags[best] as number)) best = i;
  let from = places[Math.max(0, best - 1)] as number;
  let to = places[Math.min(places.length - 1, best + 1)] as number;
  while (to - from > 1e-3) {
    const third = (to - from) / 3;
    if (sagAt(from + third) < sagAt(to - third)) from += third;
    else to -= third;
  }
  const closer = (from + to) / 2;
  const at = sagAt(closer) > (sags[best] as number) ? closer : (places[best] as number);
  return [at, sagAt(at)];
}

/**
 * How far a top sags on two supports, with overhangs, loads and holes wherever they are, and what the supports carry.
 *
 * @returns Sags at once, mm, positive downwards, and reactions, N. Under loads that stay the sag grows: `longTermSag`.
 * @throws RangeError where an input is outside its limits, supports or loads lie off the top, or holes leave no wood.
 * Source: Wood Handbook (FPL-GTR-190), ch. 9: bending and shear deflection add; a beam with holes is one of variable
 * section along its length.
 * @example
 * ```ts
 * import { topSag } from '@scantling/stock';
 * const top = { lengthMm: 1800, leftSupportMm: 300, rightSupportMm: 1500, widthMm: 600, depthMm: 45, modulusOfElasticityMPa: 12_000, shearModulusMPa: 750, spreadLoadNPerMm: 0.2, holeRows: [] };
 * const { leftReactionN, midspanSagMm, lowestAtMm } = topSag({ ...top, pointLoads: [{ atMm: 900, forceN: 1000 }] });
 * [leftReactionN, midspanSagMm, lowestAtMm] // => [680, 0.7475, 900]
 * // Somebody of 100 kg sits on the end: the other support would lift off
 * topSag({ ...top, pointLoads: [{ atMm: 1800, forceN: 981 }] }).leftReactionN // => -65.25
 * ```
 */
export function topSag(input: TopSagInput): TopSag {
  requireTop(input);
  const { lengthMm, leftSupportMm, rightSupportMm, widthMm, depthMm, spreadLoadNPerMm } = input;
  const { pointLoads, holeRows } = input;
  const spanMm = rightSupportMm - leftSupportMm;
  const spreadN = spreadLoadNPerMm * lengthMm;
  const about = (xMm: number) =>
    spreadN * (lengthMm / 2 - xMm) +
    pointLoads.reduce((sum, { atMm, forceN }) => sum + forceN * (atMm - xMm), 0);
  const rightReactionN = about(leftSupportMm) / spanMm;
  const leftReactionN = -about(rightSupportMm) / spanMm;
  const upwards = [
    { atMm: leftSupportMm, forceN: leftReactionN },
    { atMm: rightSupportMm, forceN: rightReactionN },
    ...pointLoads.map(({ atMm, forceN }) => ({ atMm, forceN: -forceN })),
  ];
  const momentAt = (x: number) =>
    upwards.reduce(
      (sum, { atMm, forceN }) => sum + forceN * Math.max(0, x - atMm),
      (-spreadLoadNPerMm * x * x) / 2,
    );
  const shearAt = (x: number) =>
    upwards.reduce((sum, { atMm, forceN }) => sum + (x > atMm ? forceN : 0), -spreadLoadNPerMm * x);

  const evenly = Array.from({ length: 129 }, (_, i) => (lengthMm * i) / 128);
  const edges = holeRows.flatMap(({ atMm, diameterMm }) => [atMm - diameterMm / 2, atMm + diameterMm / 2]);
  const places = [...new Set([...evenly, ...upwards.map(({ atMm }) => atMm), ...edges])]
    .filter((x) => x >= 0 && x <= lengthMm)
    .sort((a, b) => a - b);
  const stretches = places.slice(1).map((toMm, i) => {
    const fromMm = places[i] as number;
    const middleMm = (fromMm + toMm) / 2;
    const holesMm = holesAt(input, middleMm);
    const left = `holeRows to leave wood of widthMm ${widthMm}, got ${holesMm} mm of holes at ${middleMm}`;
    requireThat('topSag', holesMm < widthMm, left);
    const { secondMomentMm4, shearAreaMm2 } = rectangularSection({ widthMm, depthMm, holesMm });
    return {
      fromMm,
      toMm,
      bending: input.modulusOfElasticityMPa * secondMomentMm4,
      shear: input.shearModulusMPa * shearAreaMm2,
    };
  });
  const sagAt = deflection(stretches, { momentAt, shearAt }, [leftSupportMm, rightSupportMm]);
  const [lowestAtMm, lowestSagMm] = lowest(sagAt, places);
  return {
    leftReactionN: plusZero(leftReactionN),
    rightReactionN: plusZero(rightReactionN),
    leftEndSagMm: plusZero(sagAt(0)),
    rightEndSagMm: plusZero(sagAt(lengthMm)),
    midspanSagMm: plusZero(sagAt((leftSupportMm + rightSupportMm) / 2)),
    lowestAtMm: plusZero(lowestAtMm),
    lowestSagMm: plusZero(lowestSagMm),
  };
}
