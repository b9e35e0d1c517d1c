import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Calendar, type Plan, planWorktop } from '../src/index.ts';
import { bench } from './bindery-bench.ts';

/** Hours of a wiping varnish, as a product's sheet might give them; common practice, no source. */
const calendar: Calendar = {
  turned: 'after each coat',
  layHours: 1,
  recoatHours: 12,
  recoatWithinHours: 72,
  turnHours: 8,
  dryingDays: 5,
  opensHours: 8,
  closesHours: 18,
  startsHours: 8,
  readyByDays: 14,
};
const withCalendar = (changes: Partial<Calendar> = {}): Plan => ({
  ...bench(),
  calendar: { ...calendar, ...changes },
});
const check = (plan: Plan, id: string) => planWorktop(plan).checks.find((one) => one.id === id);

describe('how much finish', () => {
  test('counts each face by itself, as geometry has it', () => {
    // 1479.55 × 640 mm, 65 holes of 15.875 mm: mouth π/4 × 15.875² = 197.93 mm², wall π × 15.875 × 44.45 = 2216.845 mm².
    const { finish } = planWorktop(bench());
    const area = Object.fromEntries(finish.faces.map(({ name, areaM2 }) => [name, areaM2]));
    expect(area.top).toBeCloseTo((1479.55 * 640 - 65 * 197.933) / 1e6, 6);
    expect(area.underside).toBe(area.top);
    expect(area.edges).toBeCloseTo((2 * 44.45 * (1479.55 + 640)) / 1e6, 6);
    expect(area['hole walls']).toBeCloseTo((65 * 2216.845) / 1e6, 6);
    expect(finish.faces.reduce((sum, { areaM2 }) => sum + areaM2, 0)).toBeCloseTo(finish.areaM2, 12);
  });

  test('a strip that fills its rabbet changes nothing of it', () => {
    const plan = bench();
    const bare = planWorktop({ ...plan, top: { ...plan.top, inlays: [] } });
    expect(planWorktop(plan).finish.faces).toEqual(bare.finish.faces);
  });

  test('a coat is laid as thick as it has to be to leave its dry film', () => {
    // Half and half of 44 % solids is 22 %: 12 µm dry are 12 / 0.22 = 54.545 µm wet, so a litre covers 18.333 m².
    const { eachCoat, areaM2, volumeMl } = planWorktop(bench()).finish;
    expect(eachCoat.wetFilmUm).toBeCloseTo(54.5455, 4);
    expect(eachCoat.dryFilmUm).toBeCloseTo(12, 9);
    // 15 % of the mix is lost, so that 0.85 of it is film.
    expect(eachCoat.mixMl).toBeCloseTo((areaM2 * 54.5455) / 0.85, 2);
    expect(eachCoat.productMl).toBeCloseTo(eachCoat.mixMl / 2, 9);
    expect(eachCoat.thinnerMl).toBeCloseTo(eachCoat.mixMl / 2, 9);
    expect(volumeMl).toBeCloseTo(3 * eachCoat.mixMl, 9);
  });

  test('more coats, a thicker film or more loss never take less', () => {
    const given = fc.record({
      coats: fc.integer({ min: 1, max: 20 }),
      dryFilmUm: fc.double({ min: 1, max: 500, noNaN: true }),
      lossPct: fc.double({ min: 0, max: 90, noNaN: true }),
    });
    const volume = (changes: object) => {
      const plan = bench();
      return planWorktop({ ...plan, finish: { ...plan.finish, ...changes } }).finish.volumeMl;
    };
    fc.assert(
      fc.property(given, given, (a, b) => {
        const most = {
          coats: Math.max(a.coats, b.coats),
          dryFilmUm: Math.max(a.dryFilmUm, b.dryFilmUm),
          lossPct: Math.max(a.lossPct, b.lossPct),
        };
        expect(volume(most)).toBeGreaterThanOrEqual(volume(a) * (1 - 1e-12));
      }),
      { numRuns: 40 },
    );
  });

  test.each<[string, Partial<Plan['finish']>, RegExp]>([
    [
      'a film that no coat leaves',
      { product: { name: 'oil', parts: 1, volumeSolidsPct: 2, onHandMl: 0 }, dryFilmUm: 300 },
      /^planWorktop requires finish\.dryFilmUm to be so thin that a litre of the mix, with 1\.00 % solids, .*got 300$/,
    ],
    [
      'a mix that is nearly all thinner',
      {
        thinner: { name: 'spirits', parts: 10, onHandMl: 0 },
        product: { name: 'oil', parts: 1, volumeSolidsPct: 5, onHandMl: 0 },
      },
      /^planWorktop requires finish\.thinner\.parts to be so few that the mix has 1 % solids, got 10$/,
    ],
    [
      'two liquids of one name',
      { thinner: { name: 'varnish', parts: 1, onHandMl: 0 } },
      /^planWorktop requires finish\.thinner\.name to be a name of its own, got varnish$/,
    ],
  ])('%s is refused by its path', (_, changes, message) => {
    const plan = bench();
    expect(() => planWorktop({ ...plan, finish: { ...plan.finish, ...changes } })).toThrow(message);
  });
});

describe('the calendar of coats', () => {
  test('is left out where the plan leaves it out', () => {
    expect(planWorktop(bench()).calendar).toBe(null);
    expect(check(bench(), 'calendar')).toBe(undefined);
  });

  test('coats both faces as often as the plan says, and says on which day the top is ready', () => {
    // One hour a coat, turned 8 h after its end, 8 to 18 o'clock. Day 1: underside 8–9, turned at 17, top 17–18.
    // Day 2: turned at 8 (8 h after 18 is 2 at night), underside 8–9 (12 h after 9 on day 1 is past); turned at 17, top
    // 17–18. Day 3 the same. Ready 5 × 24 h after 18 on day 3: day 8.
    const result = planWorktop(withCalendar());
    const coats = result.calendar?.steps.filter(({ does }) => does === 'coat');
    expect(coats?.map(({ face, dayIndex, clockHours }) => [face, dayIndex, clockHours])).toEqual([
      ['underside', 1, 8],
      ['top', 1, 17],
      ['underside', 2, 8],
      ['top', 2, 17],
      ['underside', 3, 8],
      ['top', 3, 17],
    ]);
    expect(result.calendar?.readyDayIndex).toBe(8);
    expect(check(withCalendar(), 'calendar')).toMatchObject({
      status: 'pass',
      margin: { given: 8, max: 14, unit: 'd' },
    });
  });

  test('a top that is ready too late fails and says when it is', () => {
    const { status, says } = check(withCalendar({ readyByDays: 7 }), 'calendar') ?? {};
    expect(status).toBe('fail');
    expect(says).toMatch(/^calendar\.readyByDays is 7\. The last coat is laid on day 3; .* day 8: /);
    expect(check(withCalendar({ readyByDays: 8 }), 'calendar')?.status).toBe('pass');
  });

  test('a coat that comes too late to hold is a warning with its day', () => {
    // Turned once: three coats below on days 1, 2, 3 at 8, and 24 h lie between the end of one and the end of the next,
    // 23 h between its end and the beginning of the next: more than a window of 22 h. The top gets its first coat on day 3
    // at 17, its second on day 4 at 8, 14 h after the end of that, and its third, 23 h later again, on day 5.
    const late = check(withCalendar({ turned: 'once', recoatWithinHours: 22 }), 'calendar');
    expect(late?.status).toBe('warn');
    expect(late?.says).toContain('coat 2 of the underside, on day 2 at 8:00, comes more than 22 h after');
    expect(late?.says.split('\n')).toHaveLength(1 + 3);
    expect(check(withCalendar({ turned: 'once', recoatWithinHours: 23 }), 'calendar')?.status).toBe('pass');
  });

  test.each<[string, Partial<Calendar>, RegExp]>([
    [
      'a coat longer than the day',
      { closesHours: 8.5 },
      /calendar\.closesHours to be so late .* at least 9, got 8\.5$/,
    ],
    ['a day that ends before it begins', { closesHours: 7 }, /calendar\.closesHours to be so late .*got 7$/],
    [
      'a window that closes before it opens',
      { recoatWithinHours: 4 },
      /calendar\.recoatWithinHours to be at least calendar\.recoatHours, 12, got 4$/,
    ],
  ])('%s is refused by its path', (_, changes, message) => {
    expect(() => planWorktop(withCalendar(changes))).toThrow(message);
  });

  test('coats follow each other no sooner than the product’s sheet says, within working hours', () => {
    const changes = fc.record({
      turned: fc.constantFrom('once' as const, 'after each coat' as const),
      recoatHours: fc.integer({ min: 0, max: 48 }),
      turnHours: fc.integer({ min: 0, max: 30 }),
      layHours: fc.integer({ min: 1, max: 8 }),
      startsHours: fc.integer({ min: 0, max: 24 }),
    });
    fc.assert(
      fc.property(changes, (some) => {
        const steps = planWorktop(withCalendar(some)).calendar?.steps ?? [];
        expect(steps.filter(({ does }) => does === 'coat')).toHaveLength(6);
        for (const [i, step] of steps.entries()) {
          const { does, face, clockHours, atHours } = step;
          expect(clockHours).toBeGreaterThanOrEqual(8);
          expect(clockHours + (does === 'coat' ? some.layHours : 0)).toBeLessThanOrEqual(18 + 1e-9);
          const before = steps.slice(0, i).findLast((one) => one.does === 'coat' && one.face === face);
          if (does === 'coat' && before) {
            expect(atHours - before.doneHours).toBeGreaterThanOrEqual(some.recoatHours - 1e-9);
          }
        }
      }),
      { numRuns: 100 },
    );
  });
});
