import { type AnyRule, type Expected, expectedValue, type OutputSpec } from '@scantling/rules';
import { printNumber } from './calculator/numbers.ts';

/** One expected figure beside ours, in the unit it is printed in. */
export interface Comparison {
  readonly output: string;
  readonly unit: string;
  /** All its digits, as printed. */
  readonly published: string;
  readonly ours: string;
  readonly difference: string;
  /** The difference is at most what the last printed digit, or the example's own sentence, allows. */
  readonly agrees: boolean;
  /** The difference, 1 where it is half of the last printed digit: up to 1 the two are the same as printed. */
  readonly ofLastDigit: number;
}

/** A number to two places more than the printed one beside it. */
function besidePrinted(value: number, printed: string): string {
  if (printed.includes('e')) return printNumber(value, 6);
  const places = (printed.split('.')[1]?.length ?? 0) + 2;
  return value
    .toFixed(places)
    .replace(/^-(?=[0.]*$)/, '')
    .replace('-', '−');
}

/** Computes a worked example and sets each of its figures beside the expected one. */
export function compareExample(rule: AnyRule, example: AnyRule['examples'][number]): Comparison[] {
  const { given, expect, within } = example;
  const computed = rule.compute(given);
  return Object.entries(expect).flatMap(([name, stated]) => {
    const { label, unit: outputUnit } = rule.outputs[name] as OutputSpec;
    return [stated].flat().map((figure, i): Comparison => {
      const { printed, unit, times } =
        typeof figure === 'string'
          ? { printed: figure, unit: outputUnit, times: 1 }
          : (figure as Exclude<Expected, string>);
      const { value, tolerance } = expectedValue(figure as Expected);
      const ours = [computed[name]].flat()[i] as number;
      const difference = (ours - value) / times;
      return {
        output: Array.isArray(stated) ? `${label} (${i + 1})` : label,
        unit: unit === '1' ? '' : unit,
        published: printed.replace(/^-/, '−'),
        ours: besidePrinted(ours / times, printed),
        difference: Math.abs(difference) < 1e-9 * Math.abs(value / times) ? '0' : printNumber(difference, 2),
        agrees: Math.abs(ours - value) <= (within?.value ?? tolerance) + 1e-12 * Math.abs(value),
        ofLastDigit: Math.abs(ours - value) / tolerance,
      };
    });
  });
}
