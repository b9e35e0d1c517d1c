import { requireInputs } from '@scantling/rules';
import { cutIntoLayers } from './layers.ts';

const limits = {
  effectivenessPct: { min: 0, max: 99 },
  timeDays: { min: 0.5, max: 365 },
  thicknessMm: { min: 1, max: 100 },
  diffusionMm2PerDay: { min: 0.01, max: 1000 },
} as const;

const STEPS = 200;
const LAYERS = 40;
const TIGHTEST_DAYS_PER_MM = 1e6;
const HALVINGS = 50;
const UNCERTAINTY = 2;

/** A test of a finish: how much less water finished wood took up than bare wood, and of what size the wood was. */
export interface FinishResistanceInput {
  /** Moisture-excluding effectiveness: by how much finished wood took up less than bare wood, %, 0 to 99. */
  readonly effectivenessPct: number;
  /** How long both lay in the damp air, days, 0.5 to 365. */
  readonly timeDays: number;
  /** Thickness of the wood, finished on both faces, mm, 1 to 100. */
  readonly thicknessMm: number;
  /** Diffusion coefficient of that wood across the grain, mm² a day, 0.01 to 1000: see `transverseDiffusion`. */
  readonly diffusionMm2PerDay: number;
}

export interface FinishResistance {
  /** What the finish holds back, days to the millimetre: for `moistureOverTime`. */
  readonly resistanceDaysPerMm: number;
  /** As low as it may well be in another room and from another can, days to the millimetre: half. */
  readonly lowDaysPerMm: number;
  /** As high as it may well be, days to the millimetre: twice as much. */
  readonly highDaysPerMm: number;
}

/** Share of the way to new air that the mean moisture content of a piece has gone. */
function uptake(
  { timeDays, thicknessMm, diffusionMm2PerDay }: FinishResistanceInput,
  resistance: number,
): number {
  const faces = { topResistanceDaysPerMm: resistance, undersideResistanceDaysPerMm: resistance };
  const resolution = { layerCount: LAYERS, stepDays: timeDays / STEPS };
  const piece = cutIntoLayers({ thicknessMm, diffusionMm2PerDay, ...faces }, resolution, 0);
  for (let step = 0; step < STEPS; step++) piece.step(1);
  return piece.profile().meanPct;
}

/**
 * The resistance of a finish, from a published test of its moisture-excluding effectiveness: the one that makes a
 * piece of the test's size fall behind a bare piece by as much. Take the latest figure of a test that is neither near
 * 0 nor near 100 %. Figures after one and two weeks then agree within a fifth; the first day, when the water that the
 * finish itself takes up and the end grain weigh in, gives up to twice as much.
 *
 * `moistureExcludingTable` holds such figures, for ponderosa pine of about 16 mm at 27 °C, moved from 30 to 90 %
 * relative humidity: its diffusion coefficient was about 11 mm² a day by `transverseDiffusion`. A room is drier and a
 * coat thinner or thicker, so the resistance carries over within a factor of two.
 *
 * @returns The resistance of one finished face in days to the millimetre, and the ends of its range.
 * @throws RangeError where an input is outside its limits.
 * @example
 * ```ts
 * import { finishResistance, moistureExcludingTable } from '@scantling/movement';
 * const pine = { thicknessMm: 16, diffusionMm2PerDay: 11 };
 * const varnish = moistureExcludingTable.find(({ finish, coats }) => /urethane varnish/i.test(finish) && coats === 3);
 * finishResistance({ effectivenessPct: varnish.after14DaysPct, timeDays: 14, ...pine }).resistanceDaysPerMm // => 1.9
 * finishResistance({ effectivenessPct: 100, timeDays: 14, ...pine }) // throws finishResistance requires effectivenessPct between 0 and 99, got 100
 * ```
 */
export function finishResistance(input: FinishResistanceInput): FinishResistance {
  requireInputs('finishResistance', input, limits);
  // Up to the rounding of 200 steps, so that a finish without effect gets no resistance at all.
  const behind = uptake(input, 0) * (1 - input.effectivenessPct / 100) * (1 + 1e-12);
  let [low, high] = [0, TIGHTEST_DAYS_PER_MM];
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (low + high) / 2;
    if (uptake(input, middle) > behind) low = middle;
    else high = middle;
  }
  return {
    resistanceDaysPerMm: low,
    lowDaysPerMm: low / UNCERTAINTY,
    highDaysPerMm: low * UNCERTAINTY,
  };
}
