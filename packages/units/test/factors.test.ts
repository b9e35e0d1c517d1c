import { readFileSync } from 'node:fs';
import { expectedValue } from '@scantling/rules';
import { expectWithin } from '@scantling/tests-shared';
import fc from 'fast-check';
import Fraction from 'fraction.js';
import Qty from 'js-quantities';
import { unit as peerUnit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import * as units from '../src/index.ts';
import { convert, factors, type Unit } from '../src/index.ts';

interface PublishedFactor {
  readonly from: string;
  readonly to: string;
  readonly printed: string;
  readonly exact: boolean;
  readonly at: string;
  readonly confirmed: 'text' | 'memory';
}

const { rows: published } = JSON.parse(
  readFileSync(new URL('published-factors.json', import.meta.url), 'utf8'),
) as { rows: readonly PublishedFactor[] };

const named = (name: string): Unit => {
  const found = (units as unknown as Record<string, Unit | undefined>)[name];
  if (!found) throw new Error(`there is no unit ${name}`);
  return found;
};
const ratio = ({ times, per }: Unit) => new Fraction(times, per);

describe('published factors', () => {
  test('were found, exact ones and rounded ones', () => {
    expect(published.filter(({ exact }) => exact).length).toBeGreaterThan(30);
    expect(published.filter(({ exact }) => !exact).length).toBeGreaterThan(10);
  });

  test.each(published)('$from to $to is $printed ($at)', ({ from, to, printed, exact, at }) => {
    expect(named(from).kind).toBe(named(to).kind);
    const factor = ratio(named(from)).div(ratio(named(to)));
    if (exact) expect(factor.equals(new Fraction(decimal(printed)))).toBe(true);
    const { value, tolerance } = expectedValue(printed);
    expectWithin(factor.valueOf(), value, tolerance, at);
    expectWithin(convert(1, named(from), named(to)), value, exact ? 1e-15 * value : tolerance, at);
  });
});

/** `2.54e-2` as `254/10000`, with no double on the way. */
function decimal(printed: string): string {
  const [digits = '', exponent = '0'] = printed.split('e');
  const places = (digits.split('.')[1]?.length ?? 0) - Number(exponent);
  return `${digits.replace('.', '')}${'0'.repeat(Math.max(0, -places))}/1${'0'.repeat(Math.max(0, places))}`;
}

/** Each derived unit from those that its definition names, by exact fractions. */
const derivations: Readonly<Record<string, Fraction>> = (() => {
  const inch = new Fraction(254, 10); // mm
  const pound = new Fraction(45_359_237, 100_000); // g
  const gravity = new Fraction(980_665, 100_000); // m/s²
  const gallon = inch.pow(3).mul(231).div(1000); // mL
  const cubicFoot = inch.mul(12).pow(3).div(1000); // mL
  const imperial = new Fraction(454_609, 100); // mL
  const poundForce = pound.div(1000).mul(gravity); // N
  return {
    thou: inch.div(1000),
    foot: inch.mul(12),
    yard: inch.mul(36),
    squareInch: inch.pow(2),
    squareFoot: inch.mul(12).pow(2),
    squareYard: inch.mul(36).pow(2),
    cubicInch: inch.pow(3).div(1000),
    cubicFoot,
    boardFoot: inch.pow(3).mul(144).div(1000),
    cord: cubicFoot.mul(4 * 4 * 8),
    usFluidOunce: gallon.div(128),
    usPint: gallon.div(8),
    usQuart: gallon.div(4),
    usGallon: gallon,
    imperialFluidOunce: imperial.div(160),
    imperialPint: imperial.div(8),
    imperialQuart: imperial.div(4),
    ounce: pound.div(16),
    poundPerCubicFoot: pound.mul(1000).div(cubicFoot),
    poundPerUsGallon: pound.mul(1000).div(gallon),
    kilogramForce: gravity,
    poundForce,
    poundForcePerSquareInch: poundForce.div(inch.div(1000).pow(2)),
    fahrenheitDegree: new Fraction(5, 9),
    squareFootPerUsGallon: inch.mul(12).pow(2).div(gallon.mul(1000)),
  };
})();

test.each(Object.entries(derivations))('%s follows from its definition', (name, exact) => {
  expect(ratio(named(name)).equals(exact)).toBe(true);
});

describe('the list of factors', () => {
  const exported = Object.entries(units).filter(
    (entry): entry is [string, Unit] =>
      typeof entry[1] === 'object' && entry[1] !== null && 'times' in entry[1] && 'per' in entry[1],
  );

  test('names every unit once, and each has a source', () => {
    expect(factors).toHaveLength(exported.length);
    expect(exported.length).toBeGreaterThan(50);
    for (const [name, one] of exported) {
      const entry = factors.filter(({ unit }) => unit === one);
      expect(entry, name).toHaveLength(1);
      expect(entry[0]?.sources.length, name).toBeGreaterThan(0);
      expect(['exact', 'derived']).toContain(entry[0]?.basis);
    }
    expect(new Set(factors.map(({ name }) => name)).size).toBe(factors.length);
    expect(new Set(factors.map(({ symbol }) => symbol)).size).toBe(factors.length);
  });

  test('every ratio is of whole numbers that a double holds', () => {
    for (const [name, { times, per }] of exported) {
      expect(Number.isSafeInteger(times) && Number.isSafeInteger(per) && times > 0 && per > 0, name).toBe(
        true,
      );
    }
  });

  test('every unit that is not metric is checked against a publication or derived here', () => {
    const checked = new Set([...published.map(({ from }) => from), ...Object.keys(derivations)]);
    const metric = /metre|litre|gram|newton|pascal|celsius/i;
    expect(exported.map(([name]) => name).filter((name) => !checked.has(name) && !metric.test(name))).toEqual(
      [],
    );
  });
});

describe('beside general unit libraries', () => {
  // mathjs carries psi to 1e-10 of the exact factor only: 6894.75729276459 for 6894.757293168….
  test.each([
    ['inch', 'in', 'millimetre', 'mm'],
    ['foot', 'ft', 'metre', 'm'],
    ['yard', 'yd', 'metre', 'm'],
    ['thou', 'mil', 'millimetre', 'mm'],
    ['squareInch', 'sqin', 'squareMillimetre', 'mm^2'],
    ['squareFoot', 'sqft', 'squareMetre', 'm2'],
    ['squareYard', 'sqyd', 'squareMetre', 'm2'],
    ['cubicInch', 'cuin', 'millilitre', 'ml'],
    ['cubicFoot', 'cuft', 'litre', 'l'],
    ['usFluidOunce', 'floz', 'millilitre', 'ml'],
    ['usPint', 'pint', 'litre', 'l'],
    ['usQuart', 'quart', 'litre', 'l'],
    ['usGallon', 'gallon', 'litre', 'l'],
    ['ounce', 'oz', 'gram', 'g'],
    ['pound', 'lbm', 'kilogram', 'kg'],
    ['poundPerCubicFoot', 'lbm/cuft', 'kilogramPerCubicMetre', 'kg/m^3'],
    ['poundPerUsGallon', 'lbm/gallon', 'gramPerLitre', 'g/l'],
    ['poundForce', 'lbf', 'newton', 'N'],
    ['poundForcePerSquareInch', 'psi', 'kilopascal', 'kPa', 1e-10],
    ['bar', 'bar', 'pascal', 'Pa'],
    ['squareFootPerUsGallon', 'sqft/gallon', 'squareMetrePerLitre', 'm^2/l'],
  ] as const)('%s agrees with mathjs', (from, theirs, to, theirTo, rounded?: number) => {
    const relative = rounded ?? 1e-14;
    const peer = peerUnit(1, theirs).toNumber(theirTo);
    expectWithin(convert(1, named(from), named(to)), peer, relative * peer, `mathjs ${theirs}`);
  });

  test.each([
    ['imperialGallon', 'gallon-imp'],
    ['imperialPint', 'pint-imp'],
    ['imperialFluidOunce', 'fluid-ounce-imp'],
  ] as const)('%s agrees with js-quantities', (from, theirs) => {
    const peer = new Qty(1, theirs).to('ml').scalar;
    expectWithin(convert(1, named(from), units.millilitre), peer, 1e-12 * peer, `js-quantities ${theirs}`);
  });
});

describe('laws of conversion', () => {
  const pair = fc
    .constantFrom(...factors)
    .chain(({ unit: from }) =>
      fc.tuple(
        fc.constant(from),
        fc.constantFrom(...factors.map(({ unit }) => unit).filter(({ kind }) => kind === from.kind)),
      ),
    );
  // Smaller numbers than anybody measures leave the range in which a double keeps its sixteen digits.
  const value = fc
    .double({ min: -1e12, max: 1e12, noNaN: true })
    .filter((x) => x === 0 || Math.abs(x) > 1e-200);
  const close = (a: number, b: number) => {
    expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-15 * Math.max(Math.abs(a), Math.abs(b)));
  };

  test('there and back is where it began', () => {
    fc.assert(fc.property(pair, value, ([a, b], x) => close(convert(convert(x, a, b), b, a), x)));
  });

  test('a unit is itself, a longer way is the short one, and nothing is −0', () => {
    fc.assert(
      fc.property(pair, value, ([a, b], x) => {
        close(convert(x, a, a), x);
        expect(Object.is(convert(-0, a, b), -0)).toBe(false);
        for (const { unit: c } of factors.filter(({ unit }) => unit.kind === a.kind)) {
          close(convert(convert(x, a, c), c, b), convert(x, a, b));
        }
      }),
    );
  });

  test('what measures different things is refused, and what is no number', () => {
    const all = fc.constantFrom(...factors.map(({ unit }) => unit));
    fc.assert(
      fc.property(all, all, (a, b) => {
        fc.pre(a.kind !== b.kind);
        expect(() => convert(1, a, b as never)).toThrow(/^convert requires numbers of one kind, got 1 /);
      }),
    );
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, 1e101, undefined]) {
      expect(() => convert(bad as number, units.inch, units.foot)).toThrow(RangeError);
    }
  });
});
