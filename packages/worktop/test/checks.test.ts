import * as fastening from '@scantling/fastening';
import * as finishing from '@scantling/finishing';
import * as grids from '@scantling/grids';
import * as movement from '@scantling/movement';
import { rulesIn } from '@scantling/rules';
import * as stock from '@scantling/stock';
import { describe, expect, test } from 'vitest';
import * as worktop from '../src/index.ts';
import { type Plan, planWorktop } from '../src/index.ts';
import { bench, planned } from './bindery-bench.ts';
import { usedBench } from './used-bench.ts';

const check = (plan: Plan, id: string) => {
  const found = planWorktop(plan).checks.find((one) => one.id === id);
  if (!found) throw new Error(`no check ${id}`);
  return found;
};

describe('a plan that does not go together', () => {
  test('a hole over a rail fails and names the hole, the rail and the clearance asked for', () => {
    const { status, says } = check(planned('holes.first.x', 100), 'holes');
    expect(status).toBe('fail');
    expect(says).toMatch(/holes: row 1, column 11 at x 1220\.0 mm, y 160\.0 mm: .*right leg frame.*6/);
  });

  test('the same holes are left out where the plan says so', () => {
    const plan = planned('holes.first.x', 100);
    const result = planWorktop({ ...plan, holes: { ...plan.holes, blocked: 'leave out' } });
    expect(result.status).toBe('warn');
    expect(result.blockedHoles.length).toBeGreaterThan(0);
    expect(result.holes.length + result.blockedHoles.length).toBe(65);
  });

  test('a hole that only the dry season pulls towards a rail is found', () => {
    // The last row, at 576, stands 576 − 15.875 / 2 − 545 = 23.06 mm behind the back rail. Held there, it stays;
    // held at 320, it comes nearer by 256 / 640 of the top's shrinking: by more than a millimetre.
    const plan = bench();
    const rails = plan.base.members.map((member) =>
      member.name === 'back rail' ? { ...member, clearanceMm: 22.9 } : member,
    );
    const still = { ...plan, base: { ...plan.base, members: rails, fixedLineMm: 576 } };
    expect(check(still, 'holes').status).toBe('pass');
    expect(check({ ...still, base: { ...still.base, fixedLineMm: 320 } }, 'holes').status).toBe('fail');
  });

  test('a slot too short fails and says how long it must be', () => {
    const { status, says } = check(planned('base.fixings.2.slot', 8), 'slots');
    expect(status).toBe('fail');
    expect(says).toMatch(/^base\.fixings\[2\] \(left back\): slot is 8\.0 mm, at least 1\d\.\d mm is needed/);
  });

  test('too little finish is a warning: it goes on the shopping list', () => {
    const { status, says } = check(planned('finish.product.onHandMl', 20), 'finish');
    expect(status).toBe('warn');
    expect(says).toMatch(/^finish, varnish: onHandMl is 20, at least 2\d\d mL is needed/);
  });

  test('a slot that is a hair too short is not written as long enough', () => {
    const plan = bench();
    const { neededSlotMm } = planWorktop(plan).fixings[2] as { neededSlotMm: number };
    const { says } = check(planned('base.fixings.2.slot', neededSlotMm - 0.001), 'slots');
    const [there, wanted] = says.match(/\d+\.\d(?= mm)/g) ?? [];
    expect(Number(wanted)).toBeGreaterThan(Number(there));
  });

  test.each<[string, string, unknown, 'warn' | 'fail', RegExp]>([
    [
      'a screw beyond the top',
      'base.fixings.0.x',
      5000,
      'fail',
      /^base\.fixings\[0\] \(left front\): lies beyond the top/,
    ],
    [
      'a screw beside the base',
      'base.fixings.0.x',
      600,
      'fail',
      /\(left front\): its slot lies in no member of the base/,
    ],
    [
      'a slot that runs out of its member',
      'base.fixings.0.y',
      45,
      'fail',
      /\(left front\): its slot lies in no member/,
    ],
    [
      'nothing at the fixed line',
      'base.fixedLine',
      200,
      'warn',
      /^base\.fixedLine: no screw in a round hole, at most 7\.0 mm wide/,
    ],
    [
      'a screw under the brass',
      'top.inlays.0.y',
      60,
      'warn',
      /\(left front\): stands under brass cutting guide/,
    ],
  ])('%s is found', (_, path, value, status, says) => {
    const found = check(planned(path, value), 'screws');
    expect([found.status, found.says]).toEqual([status, expect.stringMatching(says)]);
  });

  test('what is let in must lie in the top, and apart', () => {
    expect(check(planned('top.inlays.0.x', 3000), 'inlays').says).toMatch(
      /brass cutting guide: sticks out of the top/,
    );
    const plan = bench();
    const [inlay] = plan.top.inlays;
    const second = { ...(inlay as NonNullable<typeof inlay>), name: 'second guide' };
    const crossing = { ...plan, top: { ...plan.top, inlays: [...plan.top.inlays, second] } };
    expect(check(crossing, 'inlays')).toMatchObject({
      status: 'fail',
      says: 'top.inlays, brass cutting guide: runs into second guide',
    });
  });

  test('a coefficient that its table has wrong, or that is quoted from memory, is a warning', () => {
    // Table 13-5 prints 0.00230 for black oak, which does not follow from black oak's own shrinkage.
    expect(check(planned('top.species', 'black oak'), 'species')).toMatchObject({
      status: 'warn',
      says: expect.stringMatching(/0\.0023 .*\n.*[Bb]lack oak/s),
    });
    expect(check(planned('top.species', 'teak'), 'species').says).toMatch(/quoted from memory/);
  });

  test('air that the source does not speak of is a warning', () => {
    expect(check(planned('seasons.driest.temperatureC', -10), 'moisture').says).toMatch(
      /Air temperature -10 °C is outside/,
    );
  });

  test('a base that shows in the dry season is a warning', () => {
    expect(check(planned('base.members.0.y', 0.5), 'cover').status).toBe('warn');
  });

  test('wood wetter than the room will ever be is a warning', () => {
    expect(check(planned('top.moisturePct', 14), 'moisture').status).toBe('warn');
  });

  test('an unknown species is refused by its path', () => {
    expect(() => planWorktop(planned('top.species', 'moon cheese'))).toThrow(
      /^planWorktop requires top\.species to be one of the \d+ woods .*got "moon cheese"$/,
    );
  });

  test('a name that fits several woods lists them, and one that fits none lists what is near', () => {
    expect(() => planWorktop(planned('top.species', 'maple'))).toThrow(
      /^planWorktop requires top\.species to mean one wood, got "maple": .*sugar maple/,
    );
    expect(() => planWorktop(planned('top.species', 'maple syrup'))).toThrow(/near it: .*sugar maple/);
  });

  test('of woods that share a name each is listed as it may be written', () => {
    // `white oak` is the name of a wood, and what the trade calls a group of woods.
    const listed = /got "white oak": (.*)$/;
    const refused = (species: string) => {
      try {
        planWorktop(planned('top.species', species));
        return '';
      } catch (error) {
        return (error as Error).message;
      }
    };
    const names = listed.exec(refused('white oak'))?.[1]?.split('; ') ?? [];
    expect(names).toEqual(['commercial white oak (Quercus spp.)', 'white oak (Quercus alba)']);
    for (const name of names) expect(refused(name)).not.toMatch(/to mean one wood/);
  });

  test('seasons the wrong way round are refused', () => {
    const { seasons, ...rest } = bench();
    const turned = { ...rest, seasons: { driest: seasons.wettest, wettest: seasons.driest } };
    expect(() => planWorktop(turned)).toThrow(/^planWorktop requires seasons\.driest to keep wood no wetter/);
  });
});

test('every rule that a check names is one', () => {
  const packages = [fastening, finishing, grids, movement, stock, worktop];
  const ids = packages.flatMap(rulesIn).map(({ id }) => id);
  const named = [bench(), usedBench()].flatMap((plan) =>
    planWorktop(plan).checks.flatMap(({ rules }) => rules),
  );
  expect(named.length).toBeGreaterThan(8);
  expect(named.filter((id) => !ids.includes(id))).toEqual([]);
});
