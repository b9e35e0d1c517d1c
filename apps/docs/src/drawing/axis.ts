import { type Piece, piece } from '../calculator/piece.ts';
import { type Place, short } from './sheet.ts';

/** From values to places along one direction of the sheet. */
export const along =
  (from: number, to: number, first: number, last: number) =>
  (value: number): number =>
    to === from ? (first + last) / 2 : first + ((value - from) / (to - from)) * (last - first);

/** Round values from `from` to `to`, at most so many: 1, 2 or 5 times a power of ten apart. */
export function roundSteps(from: number, to: number, most: number): number[] {
  const rough = (to - from) / most;
  if (!(rough > 0)) return [from];
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * ([1, 2, 5].find((times) => times * power >= rough) ?? 10);
  const first = Math.ceil(from / step - 1e-9);
  const count = Math.floor(to / step + 1e-9) - first + 1;
  // Steps of 0.1 would not add up.
  return Array.from({ length: count }, (_, i) => Number(((first + i) * step).toPrecision(12)) + 0);
}

/** A mark on an axis: where it is, and what is written there. */
export interface Tick {
  readonly at: number;
  readonly text: string;
}

/** An axis from left to right, its values below. */
export const axisBelow = ([x, y]: Place, width: number, ticks: readonly Tick[]): Piece =>
  piece(
    'g',
    { class: 'axis' },
    piece('path', {
      d: `M${short(x)} ${short(y)}h${short(width)}${ticks.map(({ at }) => `M${short(at)} ${short(y)}v5`).join('')}`,
    }),
    ticks.map(({ at, text }) => piece('text', { x: short(at), y: short(y + 20) }, text)),
  );

/** An axis from below upwards, its values on the left, a thin line across at each. */
export const axisLeft = ([x, y]: Place, height: number, width: number, ticks: readonly Tick[]): Piece =>
  piece(
    'g',
    { class: 'axis' },
    piece('path', {
      class: 'across',
      d: ticks.map(({ at }) => `M${short(x)} ${short(at)}h${short(width)}`).join(''),
    }),
    piece('path', { d: `M${short(x)} ${short(y)}v${short(-height)}` }),
    ticks.map(({ at, text }) => piece('text', { class: 'end', x: short(x - 6), y: short(at + 5) }, text)),
  );
