import { moistureOverTime } from '../src/index.ts';

// A step change of the air around a plane sheet, from 0 to 1: what others print of it. A Fourier number is D t / a²
// with a half the thickness, a Biot number a / (D R).

/** A sheet of 40 mm with 2 mm²/d takes 200 days a unit of the Fourier number. */
const sheet = { thicknessMm: 40, diffusionMm2PerDay: 2 };

/** Our answer, both faces alike; without a Biot number they resist nothing. */
export function afterStep(fourier: number, biot = Number.POSITIVE_INFINITY) {
  const resistance = 20 / (2 * biot);
  const { daily } = moistureOverTime({
    ...sheet,
    topResistanceDaysPerMm: resistance,
    undersideResistanceDaysPerMm: resistance,
    startMoisturePct: 0,
    equilibriumMoisturePct: [1],
    runDays: Math.round(200 * fourier),
  });
  const day = daily.at(-1);
  if (!day) throw new Error('there is no last day');
  return day;
}

/**
 * The documentation of a library for polymers (PolyKin, transport.diffusion, seen in full) works these examples of the
 * series in Crank, The Mathematics of Diffusion, pages 47, 48 and 60.
 */
export const seriesExamples = [
  { what: 'meanPct', fourier: 0.25, biot: Number.POSITIVE_INFINITY, printed: 0.562233541762138 },
  { what: 'meanPct', fourier: 0.125, biot: Number.POSITIVE_INFINITY, printed: 0.39892798988456807 },
  { what: 'corePct', fourier: 0.25, biot: Number.POSITIVE_INFINITY, printed: 0.3145542331096478 },
  { what: 'meanPct', fourier: 0.125, biot: 20, printed: 0.3528861780625614 },
] as const;

/** Readings of the mean from charts, with the tolerance that the library's tests state: two by Seader and Henley, p. 123. */
export const chartReadings = [
  { fourier: 0.56, biot: Number.POSITIVE_INFINITY, printed: 0.8, tolerance: 0.01 },
  { fourier: 0.2, biot: Number.POSITIVE_INFINITY, printed: 0.5, tolerance: 0.02 },
  { fourier: 4, biot: 0.5, printed: 0.8, tolerance: 0.02 },
  { fourier: 4, biot: 0.1, printed: 0.32, tolerance: 0.02 },
] as const;

/**
 * First root and coefficient of the one-term solution for a plane wall, which textbooks of heat transfer print by Biot
 * number (Incropera, Table 5.1): from memory.
 */
export const oneTermCoefficients = [
  { biot: 0.1, root: 0.3111, coefficient: 1.0161 },
  { biot: 0.5, root: 0.6533, coefficient: 1.0701 },
  { biot: 1, root: 0.8603, coefficient: 1.1191 },
  { biot: 5, root: 1.3138, coefficient: 1.2402 },
  { biot: 10, root: 1.4289, coefficient: 1.262 },
  { biot: 100, root: 1.5552, coefficient: 1.2731 },
] as const;

/** What the one-term solution leaves of the step at the core. */
export const oneTermLeft = ({ root, coefficient }: (typeof oneTermCoefficients)[number], fourier: number) =>
  coefficient * Math.exp(-(root ** 2) * fourier);
