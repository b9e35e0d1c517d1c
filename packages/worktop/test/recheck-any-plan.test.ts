import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Plan, planWorktop, recheckPlan, type WorktopPlan } from '../src/index.ts';
import { anyPlan } from './any-plan.ts';
import { usedBench } from './used-bench.ts';
import { wholeBench } from './whole-bench.ts';

/** The plan, or nothing where figures contradict each other. */
function planned(plan: Plan): WorktopPlan | null {
  try {
    return planWorktop(plan);
  } catch (error) {
    if (error instanceof RangeError && error.message.startsWith('planWorktop requires ')) return null;
    throw error;
  }
}

const findings = (plan: Plan) => recheckPlan(planWorktop(plan)).findings;
const bench = wholeBench();
type Strip = NonNullable<Plan['strip']>;

test('whatever sections are put together, both computations agree on what follows', () => {
  let agreed = 0;
  fc.assert(
    fc.property(anyPlan, (plan) => {
      const result = planned(plan);
      if (!result) return;
      expect(recheckPlan(result).findings).toEqual([]);
      agreed += 1;
    }),
    { numRuns: 120 },
  );
  expect(agreed).toBeGreaterThan(80);
});

test('where a check fails its margin is broken, and where one passes it is kept', () => {
  let looked = 0;
  fc.assert(
    fc.property(anyPlan, (plan) => {
      for (const { id, status, margin } of planned(plan)?.checks ?? []) {
        if (!margin || status === 'warn') continue;
        const { given, min = -Infinity, max = Infinity } = margin;
        const kept = given >= min - 1e-6 && given <= max + 1e-6;
        expect([id, kept]).toEqual([id, status === 'pass']);
        looked += 1;
      }
    }),
    { numRuns: 60 },
  );
  expect(looked).toBeGreaterThan(200);
});

describe('where the two once disagreed', () => {
  test('two cables of 8.5 mm need 17 mm side by side, though their share of a hole is less', () => {
    const { cables } = usedBench();
    const bundle = [
      { name: 'mains', diameterMm: 8.5, count: 1 },
      { name: 'lamp', diameterMm: 8.5, count: 1 },
      { name: 'thin', diameterMm: 2, count: 1 },
    ];
    const plan = {
      ...usedBench(),
      cables: { ...(cables as NonNullable<typeof cables>), bundle, mostFillPct: 100 },
    };
    expect(planWorktop(plan).cables?.neededHoleMm).toBe(17);
    expect(findings(plan)).toEqual([]);
  });

  test('wood that settles at one moisture all year has a face that moves all the same', () => {
    const air = { temperatureC: 21, relativeHumidityPct: 45 };
    const plan = { ...bench, seasons: { driest: air, wettest: air } };
    const { strip, movement, plan: settled } = planWorktop(plan);
    expect(movement.driestMoisturePct).toBe(movement.wettestMoisturePct);
    // Sugar maple moves by 0.00165 a point radially, which is in thickness where it is flatsawn (Table 13-5).
    const { rabbetDepthMm, thicknessMm } = settled.strip as Strip;
    const then = rabbetDepthMm * (1 + 0.00165 * (movement.driestMoisturePct - 8)) - thicknessMm;
    expect(strip?.belowFaceDriestMm).toBeCloseTo(then, 9);
    expect(findings(plan)).toEqual([]);
  });

  test('a head that ends at the underside of its strip asks for no countersink in the wood', () => {
    // 2.2 mm of head, 0.3 mm below the face of 2.5 mm: in binary these do not add up to a hair.
    const strip = { ...(bench.strip as Strip), thicknessMm: 2.5, headHeightMm: 2.2, headBelowFaceMm: 0.3 };
    const plan = { ...bench, strip };
    expect(planWorktop(plan).strip?.head).toMatchObject({ inWoodMm: 0, inWoodDiameterMm: null });
    expect(findings(plan)).toEqual([]);
  });
});

describe('a finished plan that is not what was asked', () => {
  const asked: Plan = {
    ...bench,
    base: {
      ...bench.base,
      fixedLineMm: 'choose',
      sliding: [
        {
          ...{ name: 'left frame', members: ['left leg frame'], fixings: ['left front', 'left back'] },
          ...{ widensTowards: 'left', leastSlideMm: -10, mostSlideMm: 10, slideMm: 'choose' },
        },
      ],
    },
    holes: { ...bench.holes, first: 'choose' },
    screws: bench.screws && { ...bench.screws, lengthMm: 'choose' },
  };
  const result = planWorktop(asked);
  const { plan, chosen } = result;

  test('is borne out as it is, with its four choices', () => {
    expect(chosen.map(({ path }) => path)).toEqual([
      ...['base.fixedLine', 'base.sliding[0].slide', 'holes.first', 'screws.length'],
    ]);
    expect(recheckPlan(result).findings).toEqual([]);
  });

  const spoilt: readonly [what: string, so: Partial<WorktopPlan>][] = [
    ['another width', { asked: { ...asked, top: { ...asked.top, widthMm: asked.top.widthMm + 1 } } }],
    ['a choice less', { chosen: chosen.slice(1) }],
    ['a choice too many', { chosen: [...chosen, { ...chosen[0], path: 'glueUp.boardCount' } as never] }],
    ['another value', { chosen: chosen.map((one) => ({ ...one, value: 1 })) }],
    [
      'a member that did not slide',
      { plan: { ...plan, base: { ...plan.base, members: asked.base.members } } },
    ],
    [
      'a screw that did not slide',
      { plan: { ...plan, base: { ...plan.base, fixings: asked.base.fixings } } },
    ],
    ['a part that no longer slides', { plan: { ...plan, base: { ...plan.base, sliding: [] } } }],
  ];
  test.each(spoilt)('%s is found', (_, so) => {
    expect(recheckPlan({ ...result, ...so }).agrees).toBe(false);
  });

  test('a screw that holds less than another in stock is found', () => {
    const { screws } = plan;
    if (!screws) throw new Error('screws are planned');
    const shorter = planWorktop({ ...asked, screws: { ...screws, lengthMm: 40 } });
    const claimed = chosen.map((one) => (one.path === 'screws.length' ? { ...one, value: 40 } : one));
    expect(screws.lengthMm).toBe(45);
    expect(recheckPlan({ ...shorter, asked, chosen: claimed }).findings.map(({ path }) => path)).toEqual([
      'plan.screws.lengthMm',
    ]);
  });
});
