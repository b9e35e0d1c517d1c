import { requireFields, requireNumber, requireThat } from '@scantling/rules';
import type { CutBarsInput } from '../cut-bars.ts';
import { requireName } from '../require-name.ts';

const caller = 'cutBars';
const MOST_PARTS = 100_000;
const MOST_BARS = 20;

const listOf = (list: unknown, most: number) =>
  Array.isArray(list) && list.length >= 1 && list.length <= most;
const shown = (list: unknown) => (Array.isArray(list) ? list.length : typeof list);

/** Throws where a field is missing or outside its limits. */
export function checkCutBars(input: CutBarsInput): void {
  requireNumber(caller, 'kerfMm', input?.kerfMm, { min: 0, max: 50 });
  requireNumber(caller, 'endTrimMm', input?.endTrimMm, { min: 0, max: 1000 });
  const { parts, bars, longestCarriedMm } = input;
  requireThat(
    caller,
    listOf(parts, MOST_PARTS),
    `parts to be a list of 1 to ${MOST_PARTS}, got ${shown(parts)}`,
  );
  requireThat(caller, listOf(bars, MOST_BARS), `bars to be a list of 1 to ${MOST_BARS}, got ${shown(bars)}`);
  const whole = { max: MOST_PARTS, integer: true } as const;
  const partLimits = { lengthMm: { min: 0.1, max: 100_000 }, count: { min: 1, ...whole } };
  for (const [i, part] of parts.entries()) {
    const path = `parts[${i}]`;
    requireFields(caller, path, part, partLimits);
    requireName(caller, path, part);
  }
  const names = new Set<string>();
  for (const [i, bar] of bars.entries()) {
    requireFields(caller, `bars[${i}]`, bar, {
      lengthMm: { min: 1, max: 100_000 },
      eachPrice: { min: 0.01, max: 1_000_000 },
      ...(bar?.count === undefined ? {} : { count: { min: 0, ...whole } }),
    });
    const named = typeof bar.name === 'string' && bar.name !== '' && !names.has(bar.name);
    requireThat(
      caller,
      named,
      `bars[${i}].name to be a name unlike every other, got ${JSON.stringify(bar.name)?.slice(0, 40)}`,
    );
    names.add(bar.name);
    requireThat(
      caller,
      input.kerfMm < bar.lengthMm,
      `kerfMm below bars[${i}].lengthMm, got ${input.kerfMm} and ${bar.lengthMm}`,
    );
  }
  const total = parts.reduce((sum, { count }) => sum + count, 0);
  requireThat(caller, total <= MOST_PARTS, `no more than ${MOST_PARTS} parts, got ${total}`);
  if (longestCarriedMm !== undefined) {
    requireNumber(caller, 'longestCarriedMm', longestCarriedMm, { min: 1, max: 100_000 });
  }
}
