import type { Limits } from '@scantling/rules';
import { figure, text } from './field.ts';

/** What figures of a plan may be: outside, it is a slip of the pen or another unit. */
export const side: Limits = { min: 1, max: 10_000 };
export const position: Limits = { min: -10_000, max: 10_000 };
export const gap: Limits = { min: 0, max: 1000 };
export const share: Limits = { min: 0, max: 90 };
export const screwHole: Limits = { min: 1, max: 200 };

export const named = { name: text('Its name, unlike every other here.') };
export const place = {
  xMm: figure('Along the grain from the left end.', position),
  yMm: figure('Across the grain from the front edge.', position),
};
export const area = { lengthMm: figure('Along x.', side), widthMm: figure('Along y.', side) };

export const MOST_HOLES = 20_000;
