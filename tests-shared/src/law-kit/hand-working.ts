import { expectedValue } from '@scantling/rules';
import { evaluate } from 'mathjs/number';
import type { Problems } from './problem.ts';

const number = String.raw`\d+(?:\.\d+)?(?:e-?\d+)?`;
const signedNumber = new RegExp(String.raw`(?<![\d).]\s?)-?${number}`, 'g');

/** The same text with one kind of minus and no spaces inside a number. */
const plain = (working: string) =>
  working
    .replaceAll('−', '-')
    .replace(/[\u00a0\u2009\u202f]/g, ' ')
    .replace(/\b(\d{1,3}) (?=\d{3}\b(?!\/))/g, '$1');

/** Arithmetic as people write it, in the notation of a general expression library. */
const asExpression = (text: string) =>
  text
    .replace(/(\d)\s?(?:%|[a-zA-Zµ]{1,2}[²³]?)(?=[\s)]|$)/g, '$1')
    .replace(/(\d+) (\d+)\/(\d+)/g, '($1+$2/$3)')
    .replace(/√\s*\(/g, 'sqrt(')
    .replace(/√\s*(\d+(?:\.\d+)?)/g, 'sqrt($1)')
    .replaceAll('²', '^2')
    .replaceAll('³', '^3')
    .replaceAll('π', 'pi')
    .replaceAll('°', ' * pi / 180')
    .replace(/\bln\(/g, 'log(')
    .replace(/[×·]/g, '*')
    .replaceAll('÷', '/');

const arithmetic = /(?:^|\s)(-?(?:[\d.]|(?:sqrt|exp|log|sin|cos|tan)\(|pi|[-+*/^()]|\s)+)$/;
const takesWhatFollows = /(?:of|per|half|sin|cos|tan|ln|log|exp|[)\d%²³]|[-+*/^])\s*$/;

/** What the end of a text works out to, where it is arithmetic throughout; `null` where it is not. */
function workedOut(text: string): number | null {
  const expression = asExpression(text.trim());
  const run = arithmetic.exec(expression)?.[1]?.trim();
  if (!run || !/\d.*[-+*/^].*\d|\w\(/s.test(run)) return null;
  if (takesWhatFollows.test(expression.slice(0, -run.length))) return null;
  try {
    return Number(evaluate(run));
  } catch {
    return null; // Not arithmetic by itself: a unit or a word stands within.
  }
}

/** The equations of a working that are arithmetic alone: what each says, and what it works out to. */
export function equations(working: string): { said: string; stated: string; worked: number }[] {
  return plain(working)
    .split(/[;:,]\s|\.\s|\n/)
    .flatMap((clause) => {
      const sides = clause.split('=');
      return sides.slice(1).flatMap((right, i) => {
        const stated = new RegExp(String.raw`^\s*(-?${number})(?!\s*[-+*/^×·÷²³√(\d])`).exec(right)?.[1];
        const worked = workedOut(sides[i] ?? '');
        return stated && worked !== null ? [{ said: clause.trim(), stated, worked }] : [];
      });
    });
}

/** Arithmetic written out by hand comes out, and the figures it is written for stand in it. */
export function workingProblems(working: string, figures: readonly string[]): Problems {
  const checked = equations(working);
  const wrong = checked.filter(({ stated, worked }) => {
    const { value, tolerance } = expectedValue(stated);
    return !(Math.abs(worked - value) <= tolerance + 1e-12 * Math.abs(value));
  });
  const written = (plain(working).match(signedNumber) ?? []).map(Number);
  const missing = figures.filter((figure) => {
    const { value, tolerance } = expectedValue(figure);
    return !written.some((one) => Math.abs(one - value) <= tolerance);
  });
  return [
    ...(checked.length > 0 ? [] : ['no equation in its working is arithmetic that can be worked out']),
    ...wrong.map(({ said, worked }) => `"${said}" works out to ${worked}`),
    ...missing.map((figure) => `the figure ${figure} does not stand in its working`),
  ];
}
