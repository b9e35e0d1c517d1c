import { expectWithin } from '@scantling/tests-shared';
import { arg, type Complex } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { type MoistureOverTimeInput, moistureOverTime } from '../src/index.ts';
import {
  coreHeld,
  type Faces,
  meanResponse,
  placeResisted,
  root,
  uptakeHeld,
  uptakeResisted,
  weight,
} from './plane-sheet.ts';
import {
  afterStep,
  chartReadings,
  oneTermCoefficients,
  oneTermLeft,
  seriesExamples,
} from './printed-diffusion.ts';

/** What 40 layers and 8 steps a day may miss of a change of 1 in this sheet. */
const NUMERIC = 0.0012;

describe('a step change of the air, against printed answers', () => {
  test.each(seriesExamples)('worked examples: $what at $fourier', ({ what, fourier, biot, printed }) => {
    expectWithin(afterStep(fourier, biot)[what], printed, NUMERIC, 'PolyKin, transport.diffusion');
  });

  test.each(chartReadings)(
    'chart readings: $printed at $fourier',
    ({ fourier, biot, printed, tolerance }) => {
      expectWithin(afterStep(fourier, biot).meanPct, printed, tolerance, 'PolyKin, tests of transport');
    },
  );

  test.each(oneTermCoefficients)('the core late in the change, Biot number $biot', (printed) => {
    const { biot, root: first, coefficient } = printed;
    for (const fourier of [0.5, 1, 2]) {
      const left = 1 - afterStep(fourier, biot).corePct;
      expectWithin(left, oneTermLeft(printed, fourier), NUMERIC, 'one-term solution (memory)');
    }
    expectWithin(root(0, biot), first, 0.00005, 'first root (memory)');
    expectWithin(weight(0, biot), coefficient, 0.00005, 'coefficient (memory)');
  });
});

describe('a step change of the air, against the series', () => {
  const times = [0.05, 0.1, 0.2, 0.4, 0.8, 1.6];

  test('both faces held', () => {
    for (const fourier of times) {
      expectWithin(afterStep(fourier).meanPct, uptakeHeld(fourier), 0.002, 'Crank, Eq. 4.18');
      expectWithin(afterStep(fourier).corePct, coreHeld(fourier), 0.002, 'Crank, Eq. 4.17');
      expect(afterStep(fourier).topPct).toBe(1);
    }
  });

  test.each([0.05, 0.3, 1, 4, 30])('with a resistance, Biot number %f', (biot) => {
    for (const fourier of times) {
      const { meanPct, corePct, topPct, undersidePct } = afterStep(fourier, biot);
      expectWithin(meanPct, uptakeResisted(fourier, biot), 0.002, 'Crank, Eq. 4.53');
      expectWithin(corePct, placeResisted(fourier, biot, 0), 0.002, 'Crank, Eq. 4.50');
      expectWithin(topPct, placeResisted(fourier, biot, 1), 0.002, 'Crank, Eq. 4.50');
      expect(Math.abs(topPct - undersidePct)).toBeLessThan(1e-12);
    }
  });

  test.each([
    { thicknessMm: 45, diffusionMm2PerDay: 2.5, statedPct: 0.002 },
    { thicknessMm: 45, diffusionMm2PerDay: 30, statedPct: 0.005 },
    { thicknessMm: 3, diffusionMm2PerDay: 2.5, statedPct: 0.025 },
  ])('bare, no further off than stated: $thicknessMm mm, $diffusionMm2PerDay mm²/d', (sheet) => {
    const { thicknessMm, diffusionMm2PerDay, statedPct } = sheet;
    const { daily } = moistureOverTime({
      thicknessMm,
      diffusionMm2PerDay,
      topResistanceDaysPerMm: 0,
      undersideResistanceDaysPerMm: 0,
      startMoisturePct: 6,
      equilibriumMoisturePct: [12],
      runDays: 365,
    });
    const off = daily.map(({ timeDays, meanPct }) => {
      const exact = uptakeHeld((diffusionMm2PerDay * timeDays) / (thicknessMm / 2) ** 2);
      return Math.abs((meanPct - 6) / 6 - exact);
    });
    // Of the start itself the cut series lacks its tail.
    expect(off.slice(1)).toHaveLength(365);
    expect(Math.max(...off.slice(1))).toBeLessThanOrEqual(statedPct);
    expect(off[1]).toBe(Math.max(...off.slice(1)));
  });

  test('a face that lets nothing through makes a sheet of twice the thickness', () => {
    const { daily } = moistureOverTime({
      thicknessMm: 20,
      diffusionMm2PerDay: 2,
      topResistanceDaysPerMm: 0,
      undersideResistanceDaysPerMm: 1e6,
      startMoisturePct: 0,
      equilibriumMoisturePct: [1],
      runDays: 50,
    });
    expectWithin(daily[50]?.meanPct, uptakeHeld(0.25), 0.001, 'Crank, Eq. 4.18');
    expectWithin(daily[50]?.undersidePct, coreHeld(0.25), 0.001, 'Crank, Eq. 4.17');
  });
});

const YEAR = 365;
const TURN_PER_DAY = (2 * Math.PI) / YEAR;

const panels: readonly Faces[] = [
  { thicknessMm: 12, diffusionMm2PerDay: 3, topResistanceDaysPerMm: 0, undersideResistanceDaysPerMm: 0 },
  { thicknessMm: 45, diffusionMm2PerDay: 2.5, topResistanceDaysPerMm: 2, undersideResistanceDaysPerMm: 0 },
  { thicknessMm: 45, diffusionMm2PerDay: 2.5, topResistanceDaysPerMm: 2, undersideResistanceDaysPerMm: 2 },
  { thicknessMm: 45, diffusionMm2PerDay: 8, topResistanceDaysPerMm: 20, undersideResistanceDaysPerMm: 5 },
  { thicknessMm: 150, diffusionMm2PerDay: 5, topResistanceDaysPerMm: 0.1, undersideResistanceDaysPerMm: 1 },
];

/** The settled year of a climate, by the exact answer to each of its harmonics. */
function settledYear(faces: Faces, climatePct: readonly number[], harmonics: number): number[] {
  const mean = climatePct.reduce((sum, one) => sum + one, 0) / climatePct.length;
  const waves = Array.from({ length: harmonics }, (_, k) => {
    const turn = TURN_PER_DAY * (k + 1);
    const corners = climatePct.map((value, i) => ({ value, from: turn * ((i * YEAR) / climatePct.length) }));
    const width = (turn * YEAR) / climatePct.length;
    const cosine = corners.reduce(
      (sum, c) => sum + c.value * (Math.sin(c.from + width) - Math.sin(c.from)),
      0,
    );
    const sine = corners.reduce((sum, c) => sum + c.value * (Math.cos(c.from) - Math.cos(c.from + width)), 0);
    const response = meanResponse(faces, turn);
    return { turn, cosine: cosine / ((k + 1) * Math.PI), sine: sine / ((k + 1) * Math.PI), response };
  });
  return Array.from({ length: YEAR }, (_, i) =>
    waves.reduce((sum, { turn, cosine, sine, response: { re, im } }) => {
      const [c, s] = [Math.cos(turn * (i + 1)), Math.sin(turn * (i + 1))];
      return sum + cosine * (re * c - im * s) + sine * (re * s + im * c);
    }, mean),
  );
}

const lastYearOf = (input: Omit<MoistureOverTimeInput, 'startMoisturePct' | 'runDays'>) =>
  moistureOverTime({ ...input, startMoisturePct: 8, runDays: 10 * YEAR });

describe('a climate that comes every year, once the start is forgotten', () => {
  test.each(panels)('swings by as much and as late as the exact wave: $thicknessMm mm', (faces) => {
    const wave = Array.from({ length: YEAR }, (_, i) => 9 + 3 * Math.sin(TURN_PER_DAY * (i + 0.5)));
    const { daily, lastYear, swingRatio } = lastYearOf({ ...faces, equilibriumMoisturePct: wave });
    const response = meanResponse(faces, TURN_PER_DAY);
    const size = Math.hypot(response.re, response.im);
    const lagDays = -(arg(response as Complex) as unknown as number) / TURN_PER_DAY;
    const wettestOn = 9 * YEAR + YEAR / 4 + lagDays;
    expectWithin(swingRatio, size, 0.002, 'the exact wave');
    expectWithin(lastYear.wettestMoisturePct, 9 + 3 * size, 0.006, 'the exact wave');
    expectWithin(lastYear.driestMoisturePct, 9 - 3 * size, 0.006, 'the exact wave');
    expectWithin((lastYear.wettestDays - wettestOn + YEAR / 2) % YEAR, YEAR / 2, 1.5, 'its lag, in days');
    expect(daily).toHaveLength(10 * YEAR + 1);
  });

  test.each(panels)('follows twelve months day by day: $thicknessMm mm', (faces) => {
    const months = [6, 6, 6.5, 7, 8, 9.5, 10.5, 11, 10, 9, 7.5, 6.5];
    const exact = settledYear(faces, months, 400);
    const { daily } = lastYearOf({ ...faces, equilibriumMoisturePct: months });
    const off = exact.map((value, i) => Math.abs((daily[9 * YEAR + i + 1]?.meanPct ?? Number.NaN) - value));
    expect(off).toHaveLength(YEAR);
    expect(Math.max(...off)).toBeLessThan(faces.thicknessMm < 20 ? 0.04 : 0.01);
  });
});
