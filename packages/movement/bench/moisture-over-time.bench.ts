import { lup, lusolve, type Matrix, matrix } from 'mathjs';
import type { Comparison } from '../../../scripts/bench.ts';
import { moistureOverTime } from '../src/index.ts';

const top = {
  thicknessMm: 45,
  diffusionMm2PerDay: 2.5,
  topResistanceDaysPerMm: 2,
  undersideResistanceDaysPerMm: 0.1,
  startMoisturePct: 8,
};
const equilibriumMoisturePct = [6, 6, 6.5, 7, 8, 9.5, 10.5, 11, 10, 9, 7.5, 6.5];

const LAYERS = 40;
const STEP_DAYS = 1 / 8;
const layers = [...Array(LAYERS).keys()];
const edge = (i: number) => (1 - Math.cos((Math.PI * i) / LAYERS)) / 2;
const widths = layers.map((i) => top.thicknessMm * (edge(i + 1) - edge(i)));

/** How easily water passes each edge, from the top to the underside, mm a day. */
const passes = [...layers, LAYERS].map((i) => {
  const above =
    i === 0 ? top.topResistanceDaysPerMm : (widths[i - 1] as number) / (2 * top.diffusionMm2PerDay);
  const below =
    i === LAYERS ? top.undersideResistanceDaysPerMm : (widths[i] as number) / (2 * top.diffusionMm2PerDay);
  return 1 / (above + below);
}) as readonly number[];

/** The equations of one step as a matrix with all its zeros. */
const equations = matrix(
  layers.map((i) => {
    const [above, below] = [passes[i] as number, passes[i + 1] as number];
    const row = Array(LAYERS).fill(0) as number[];
    row[i] = (widths[i] as number) / STEP_DAYS + above + below;
    if (i > 0) row[i - 1] = -above;
    if (i < LAYERS - 1) row[i + 1] = -below;
    return row;
  }),
);

/** The same days by a general solver of linear equations, which factors its matrix once. */
function byGeneralSolver(days: number, outside: number): readonly number[] {
  const factored = lup(equations);
  let moistures: number[] = layers.map(() => top.startMoisturePct);
  return Array.from({ length: days }, () => {
    for (let step = 0; step < 1 / STEP_DAYS; step++) {
      const known = moistures.map((one, i) => (one * (widths[i] as number)) / STEP_DAYS);
      known[0] = (known[0] as number) + (passes[0] as number) * outside;
      known[LAYERS - 1] = (known[LAYERS - 1] as number) + (passes[LAYERS] as number) * outside;
      moistures = (lusolve(factored, known) as Matrix).toArray().flat() as number[];
    }
    return moistures.reduce((sum, one, i) => sum + (one * (widths[i] as number)) / top.thicknessMm, 0);
  });
}

const meansOf = (climate: readonly number[], runDays: number) =>
  moistureOverTime({ ...top, equilibriumMoisturePct: climate, runDays }).daily.map(({ meanPct }) => meanPct);

const comparisons: readonly Comparison[] = [
  {
    name: 'moisture over ten years of days, in 40 layers and 8 steps a day',
    ours: () => meansOf(equilibriumMoisturePct, 3650).slice(-1),
    atMostNs: 50e6,
    peers: [],
  },
  {
    name: 'a day of moisture',
    ours: () => meansOf([11], 30).slice(1),
    peers: [{ name: 'mathjs lusolve', atLeast: 40, run: () => byGeneralSolver(30, 11) }],
  },
];

export default comparisons;
