import { add, type Complex, complex, divide, exp, multiply, sqrt, subtract } from 'mathjs';

// Exact answers for diffusion in a plane sheet, written from its series and not from our code: J. Crank, The
// Mathematics of Diffusion, §4.3. `fourier` is D t / a² and `biot` a / (D R), with a half the thickness.

const TERMS = 200;
const terms = Array.from({ length: TERMS }, (_, n) => n);
const total = (term: (n: number) => number) => terms.reduce((sum, n) => sum + term(n), 0);

/** Share of the way that the mean has gone, both faces held at the new value from the start. */
export const uptakeHeld = (fourier: number) =>
  1 -
  total((n) => {
    const root = (n + 0.5) * Math.PI;
    return (2 / root ** 2) * Math.exp(-(root ** 2) * fourier);
  });

/** Share of the way that the middle has gone, both faces held. */
export const coreHeld = (fourier: number) =>
  1 -
  total((n) => {
    const root = (n + 0.5) * Math.PI;
    return (2 / root) * (-1) ** n * Math.exp(-(root ** 2) * fourier);
  });

/** The n-th root of β tan β = biot, by halving the interval that holds it. */
export function root(n: number, biot: number): number {
  let [low, high] = [n * Math.PI, (n + 0.5) * Math.PI];
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + high) / 2;
    if (middle * Math.sin(middle) < biot * Math.cos(middle) === (n % 2 === 0)) low = middle;
    else high = middle;
  }
  return low;
}

/** Coefficient of the n-th term at the middle of the sheet. */
export function weight(n: number, biot: number): number {
  const beta = root(n, biot);
  return (4 * Math.sin(beta)) / (2 * beta + Math.sin(2 * beta));
}

/** Share of the way at a place from the middle (0) to a face (1), with a resistance at both faces. */
export const placeResisted = (fourier: number, biot: number, place: number) =>
  1 -
  total((n) => {
    const beta = root(n, biot);
    return weight(n, biot) * Math.cos(beta * place) * Math.exp(-(beta ** 2) * fourier);
  });

/** Share of the way that the mean has gone, with a resistance at both faces. */
export const uptakeResisted = (fourier: number, biot: number) =>
  1 -
  total((n) => {
    const beta = root(n, biot);
    return (
      ((2 * biot ** 2) / (beta ** 2 * (beta ** 2 + biot ** 2 + biot))) * Math.exp(-(beta ** 2) * fourier)
    );
  });

/** A panel with faces of their own. */
export interface Faces {
  readonly thicknessMm: number;
  readonly diffusionMm2PerDay: number;
  readonly topResistanceDaysPerMm: number;
  readonly undersideResistanceDaysPerMm: number;
}

/**
 * What becomes of a climate that swings as exp(iωt): the mean across the sheet swings with this complex factor. The
 * wave in the sheet is A exp(−κx) + B exp(−κ(L−x)) with κ² = iω/D; at each face the flow past the finish is the flow
 * into the wood.
 */
export function meanResponse(faces: Faces, omegaPerDay: number): Complex {
  const { thicknessMm, diffusionMm2PerDay: d } = faces;
  const kappa = sqrt(complex(0, omegaPerDay / d)) as Complex;
  const across = exp(multiply(kappa, -thicknessMm) as Complex) as Complex;
  const [top, underside] = [faces.topResistanceDaysPerMm, faces.undersideResistanceDaysPerMm].map((r) => {
    const slope = multiply(kappa, r * d) as Complex;
    return { out: add(1, slope) as Complex, back: multiply(across, subtract(1, slope)) as Complex };
  }) as [Side, Side];
  // A top.out + B top.back = 1, A underside.back + B underside.out = 1
  const determinant = subtract(
    multiply(top.out, underside.out),
    multiply(top.back, underside.back),
  ) as Complex;
  const both = subtract(add(top.out, underside.out), add(top.back, underside.back)) as Complex;
  const wave = multiply(divide(both, determinant), subtract(1, across)) as Complex;
  return divide(wave, multiply(kappa, thicknessMm)) as Complex;
}

interface Side {
  readonly out: Complex;
  readonly back: Complex;
}
