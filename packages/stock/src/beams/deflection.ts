/** A straight stretch of a beam with one section all along. */
interface Stretch {
  readonly fromMm: number;
  readonly toMm: number;
  /** Bending stiffness E I, N·mm². */
  readonly bending: number;
  /** Shear stiffness G A′, N. */
  readonly shear: number;
}

/** Forces on a beam, as functions of the place along it. */
export interface InnerForces {
  /** Bending moment, N·mm, positive where the underside is stretched. */
  readonly momentAt: (xMm: number) => number;
  /** Shear force, N: the sum of the upward forces to the left. */
  readonly shearAt: (xMm: number) => number;
}

/** Gauss’ two points lie this far from the middle of a stretch of length 1: half of 1/√3. */
const INNER = 0.288_675_134_594_812_9;

/** Two-point Gauss quadrature: exact for cubics, and it never asks at the ends, where the shear force jumps. */
function integral(f: (x: number) => number, from: number, to: number): number {
  const middle = (from + to) / 2;
  const half = (to - from) * INNER;
  return ((f(middle - half) + f(middle + half)) * (to - from)) / 2;
}

/**
 * How far a beam sags along its length: the curvature integrated twice, and the slope from shear once, stretch by
 * stretch, then turned so that both supports stay where they are. Exact where moments are quadratic on each stretch.
 */
export function deflection(
  stretches: readonly Stretch[],
  { momentAt, shearAt }: InnerForces,
  supportsMm: readonly [number, number],
): (xMm: number) => number {
  const along = ({ fromMm, bending, shear }: Stretch, start: { sag: number; slope: number }, x: number) => ({
    sag:
      start.sag +
      start.slope * (x - fromMm) +
      integral((t) => (-(x - t) * momentAt(t)) / bending + shearAt(t) / shear, fromMm, x),
    slope: start.slope + integral((t) => -momentAt(t) / bending, fromMm, x),
  });
  const starts: { sag: number; slope: number }[] = [];
  let next = { sag: 0, slope: 0 };
  for (const stretch of stretches) {
    starts.push(next);
    next = along(stretch, next, stretch.toMm);
  }
  const loose = (x: number) => {
    const i = stretches.findIndex(({ toMm }) => x <= toMm);
    return along(stretches[i] as Stretch, starts[i] as { sag: number; slope: number }, x).sag;
  };
  const [left, right] = supportsMm;
  const atLeft = loose(left);
  const turn = (loose(right) - atLeft) / (right - left);
  return (x) => loose(x) - atLeft - turn * (x - left);
}
