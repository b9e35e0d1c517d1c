import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Plan,
  type PlannedScrew,
  type PlannedScrews,
  planWorktop,
  type Screws,
  type SettledPlan,
} from '../src/index.ts';
import { plannedFixings } from '../src/parts/fixings.ts';
import { plannedScrews } from '../src/parts/screws.ts';
import { plannedStrip } from '../src/parts/strip.ts';
import { basisOf } from '../src/season.ts';
import { builtBench, checkOf, screws } from './shop-sections.ts';

const screwed = (changes: Partial<Screws> = {}, plan = builtBench()): Plan => ({
  ...plan,
  screws: { ...screws, ...changes },
});

const partOf = (plan: Plan): PlannedScrews => {
  const { screws: part } = planWorktop(plan);
  if (!part) throw new Error('no screws');
  return part;
};

const at = (plan: Plan, name: string): PlannedScrew => {
  const found = partOf(plan).at.find((screw) => screw.name === name);
  if (!found) throw new Error(`no screw ${name}`);
  return found;
};

/** The bench with its guide, and so its rabbet of 25.8 mm, moved back over the front screws. */
const guideAt = (yMm: number, plan = builtBench()): Plan => ({
  ...plan,
  top: { ...plan.top, inlays: plan.top.inlays.map((inlay) => ({ ...inlay, yMm })) },
});

test('a screw of 40 mm by hand', () => {
  // Washer 1.5 and flange 4 mm; 0.65 × 40 = 26 mm of thread from 14 mm on, its tip of 6 mm from 34 mm on.
  expect(partOf(screwed())).toMatchObject({ lengthMm: 40, threadLengthMm: 26, layersMm: 5.5 });
  const screw = at(screwed(), 'left front');
  expect(screw).toMatchObject({ underStrip: false, topThicknessMm: 44.45 });
  expect(screw.threadInWoodMm).toBeCloseTo(34 - 14, 9);
  expect(screw.shankInWoodMm).toBeCloseTo(14 - 5.5, 9);
  expect(screw.penetrationMm).toBeCloseTo(40 - 5.5, 9);
  expect(screw.stockAboveTipMm).toBeCloseTo(44.45 + 5.5 - 40, 9);
  for (const id of ['through-face', 'engagement', 'washers']) {
    expect([id, checkOf(screwed(), id).status]).toEqual([id, 'pass']);
  }
  expect(checkOf(screwed(), 'through-face').margin).toMatchObject({ min: 6, unit: 'mm' });
});

test('its holes by hand, bored with the base off the top', () => {
  const [setting, ...others] = partOf(screwed()).settings;
  expect(others).toEqual([]);
  // 8.5 mm of shank in the wood, the bit's tip 2 mm; then nine tenths of the 26 mm of thread: 8.5 + 23.4 = 31.9 mm
  expect(setting?.shankHole?.holeDepthMm).toBeCloseTo(8.5, 9);
  expect(setting?.shankHole?.stopFromTipMm).toBeCloseTo(10.5, 9);
  expect(setting?.leadHole?.holeDepthMm).toBeCloseTo(31.9, 9);
  expect(setting?.leadHole?.stopFromTipMm).toBeCloseTo(33.4, 9);
  expect(setting?.leadHole?.bitOutOfChuckMm).toBeCloseTo(45.4, 9);
  expect(setting?.steps.map(({ operation }) => operation)).toEqual([
    ...['measure', 'set', 'check', 'bore', 'set', 'check', 'bore', 'check', 'drive'],
  ]);
});

describe('under the strip', () => {
  test('the wood is thinner by the depth of the rabbet, and the screw fails there', () => {
    // Rabbet from 60 − 0.2 to 85.6 mm, over the front screws at 70: 44.45 − 5 = 39.45 mm; 39.45 + 5.5 − 40 = 4.95 mm
    const plan = screwed({}, guideAt(60));
    expect(at(plan, 'left front')).toMatchObject({ underStrip: true });
    expect(at(plan, 'left front').stockAboveTipMm).toBeCloseTo(4.95, 9);
    expect(at(plan, 'left back')).toMatchObject({ underStrip: false, topThicknessMm: 44.45 });
    const { status, says } = checkOf(plan, 'through-face');
    expect(status).toBe('fail');
    expect(says.split('\n')).toEqual([
      'screws.length is 40.0 mm; at base.fixings[0] (left front), in 39.4 mm of wood under the strip, the tip ends 4.9 mm below the face, at least 6.0 mm below it is needed',
      expect.stringMatching(/base\.fixings\[3\] \(right front\)/),
      'Of the lengths on offer 35.0 mm would do at every screw',
    ]);
    expect(partOf(plan).settings.map(({ fixings }) => fixings)).toEqual([
      ['left front', 'right front'],
      ['left middle', 'left back', 'right middle', 'right back'],
    ]);
  });

  test('begins where the shank, 6 mm thick, comes within the rabbet', () => {
    // The rabbet reaches 25.4 + 0.2 mm beyond the front of the guide; the shank of the screw at 70 begins at 67.
    expect(at(screwed({}, guideAt(67 - 25.61)), 'left front').underStrip).toBe(false);
    expect(at(screwed({}, guideAt(67 - 25.59)), 'left front').underStrip).toBe(true);
  });

  test('counts for nothing where the inlay is no strip', () => {
    const { strip: _, ...plan } = guideAt(60);
    expect(at(plan, 'left front')).toMatchObject({ underStrip: false, topThicknessMm: 44.45 });
  });
});

describe('a screw that does not do', () => {
  test('comes through, and there is no other', () => {
    const { status, says } = checkOf(screwed({ lengthMm: 50, stockLengthsMm: [50] }), 'through-face');
    // 44.45 + 5.5 − 50 = −0.05 mm
    expect(status).toBe('fail');
    expect(says).toMatch(/the tip ends 0\.1 mm beyond the face, at least 6\.0 mm below it is needed/);
    expect(says).toMatch(
      /\nNo other length on offer does at every screw: change the layers, or move the screw$/,
    );
  });

  test('holds by too little thread', () => {
    // 30 mm: thread from 30 − 19.5 = 10.5 to 30 − 6 = 24 mm: 13.5, less than 15
    const { status, says, margin } = checkOf(screwed({ lengthMm: 30 }), 'engagement');
    expect(status).toBe('fail');
    expect(says).toMatch(
      /^screws\.length is 30\.0 mm; at base\.fixings\[0\] \(left front\) 13\.5 mm of thread is within 44\.4 mm of wood, at least 15\.0 mm is needed\n/,
    );
    expect(says).toMatch(/Of the lengths on offer 35\.0 mm, 40\.0 mm would do at every screw$/);
    expect(margin?.given).toBeCloseTo(13.5, 9);
  });

  test('does not reach the wood, also where no thread is asked for', () => {
    const { status, says } = checkOf(
      screwed({ lengthMm: 30, layersMm: [31], leastThreadMm: 0 }),
      'engagement',
    );
    expect([status, says]).toEqual([
      'fail',
      expect.stringMatching(/\(left front\) it does not reach the wood/),
    ]);
  });

  test('where no length does, the longest that stays below the face is planned', () => {
    // 20 mm have 0.5 mm in the wood, 45 mm come through it: of 20 and 25 the longer is the safer hold.
    const { chosen } = planWorktop(
      screwed({ lengthMm: 'choose', stockLengthsMm: [20, 25, 80], leastThreadMm: 18 }),
    );
    expect(chosen.find(({ path }) => path === 'screws.length')?.value).toBe(25);
  });

  test('is not to be had', () => {
    const { status, says } = checkOf(screwed({ lengthMm: 38 }), 'engagement');
    expect([status, says]).toEqual([
      'warn',
      expect.stringMatching(/^screws\.length is 38\.0 mm, which is not among/),
    ]);
  });

  test('has a bit whose tip is too long for the wood above it', () => {
    // 44.45 − 6 − 32 = 6.45 mm is the deepest that such a bit may bore; the shank takes 8.5
    const { status, says } = checkOf(screwed({ shankBitTipLengthMm: 32 }), 'through-face');
    expect([status, says]).toEqual([
      'fail',
      expect.stringMatching(/^screws, at left front, .*: The hole for the shank/),
    ]);
  });

  test('gets a lead hole that is less deep than asked, and says so', () => {
    // 0.9 of the thread is 31.9 mm deep; 44.45 − 6 − 8 = 30.45 mm is left for a bit with a tip of 8 mm: 1.45 mm less
    const { status, says } = checkOf(screwed({ leadBitTipLengthMm: 8 }), 'through-face');
    expect([status, says]).toEqual([
      'pass',
      expect.stringMatching(/hole for the thread is 1\.5 mm less deep than asked/),
    ]);
  });
});

describe('washers', () => {
  test('that pass through the round hole of 7 mm fail there, and not over slots as wide as the shank', () => {
    const { status, says } = checkOf(screwed({ washerDiameterMm: 7 }), 'washers');
    expect(status).toBe('fail');
    expect(says.split('\n')).toEqual([
      'screws.washerDiameter is 7.0 mm; at left middle the opening in the base is 7.0 mm wide, and the washer passes through it',
      expect.stringMatching(/at right middle/),
    ]);
    expect(checkOf(screwed({ washerDiameterMm: 7.1 }), 'washers').status).toBe('pass');
    expect(checkOf(screwed({ washerDiameterMm: 6 }), 'washers').says.split('\n')).toHaveLength(6);
  });

  test('that are narrow say what would cover every slot all year', () => {
    expect(checkOf(screwed({ washerDiameterMm: 10 }), 'washers').says).toMatch(
      /To cover every slot all year a washer would have to be \d+\.\d mm wide\.$/,
    );
    expect(checkOf(screwed({ washerDiameterMm: 60 }), 'washers').says).toMatch(
      /They cover every slot all year\.$/,
    );
  });
});

describe('laws of screws in the wood', () => {
  const some = fc.record({
    lengthMm: numberArb({ min: 5, max: 80 }),
    threadShare: numberArb({ min: 0.05, max: 1 }),
    tipLengthMm: numberArb({ min: 0, max: 20 }),
    leastThreadMm: numberArb({ min: 0, max: 40 }),
    leastStockMm: numberArb({ min: 0, max: 20 }),
    layersMm: fc.array(numberArb({ min: 0, max: 20 }), { maxLength: 4 }),
  });

  test('screw, layers and what is left make up the thickness', () => {
    fc.assert(
      fc.property(some, (changes) => {
        const { at: screwsAt, layersMm } = partOf(screwed(changes));
        for (const {
          stockAboveTipMm,
          penetrationMm,
          shankInWoodMm,
          threadInWoodMm,
          topThicknessMm,
        } of screwsAt) {
          expect(layersMm + topThicknessMm - stockAboveTipMm).toBeCloseTo(changes.lengthMm, 6);
          expect(shankInWoodMm + threadInWoodMm).toBeLessThanOrEqual(penetrationMm + 1e-9);
          if (penetrationMm > 0 && stockAboveTipMm >= 0) {
            expect(penetrationMm + stockAboveTipMm).toBeCloseTo(topThicknessMm, 6);
          }
        }
      }),
    );
  });

  test('the lengths that it says would do are those that do, and no other', () => {
    const stockLengthsMm = [20, 30, 40, 50];
    fc.assert(
      fc.property(some, fc.constantFrom(28, 60, 400), (changes, yMm) => {
        const lying = (lengthMm: number): PlannedScrews => {
          const plan = screwed({ ...changes, stockLengthsMm, lengthMm }, guideAt(yMm)) as SettledPlan;
          const basis = basisOf(plan);
          const part = plannedScrews(plan, plannedFixings(plan, basis.swing), plannedStrip(plan, basis));
          if (!part) throw new Error('no screws');
          return part;
        };
        const does = stockLengthsMm.filter((lengthMm) =>
          lying(lengthMm).at.every(
            ({ threadInWoodMm, stockAboveTipMm, penetrationMm }) =>
              penetrationMm > 0 &&
              changes.threadShare * lengthMm >= changes.tipLengthMm &&
              threadInWoodMm >= changes.leastThreadMm - 1e-9 &&
              stockAboveTipMm >= changes.leastStockMm - 1e-9,
          ),
        );
        expect(lying(changes.lengthMm).fittingLengthsMm).toEqual(does);
      }),
    );
  });

  test('a thicker top never fails where a thinner one passes, and a longer screw never leaves more', () => {
    fc.assert(
      fc.property(some, numberArb({ min: 0, max: 30 }), (changes, more) => {
        const plan = screwed(changes);
        const thicker: Plan = { ...plan, top: { ...plan.top, thicknessMm: plan.top.thicknessMm + more } };
        for (const id of ['through-face', 'engagement']) {
          if (checkOf(plan, id).status !== 'fail') expect(checkOf(thicker, id).status).not.toBe('fail');
        }
        const longer = screwed({ ...changes, lengthMm: changes.lengthMm + more });
        expect(at(longer, 'left back').stockAboveTipMm).toBeLessThanOrEqual(
          at(plan, 'left back').stockAboveTipMm,
        );
      }),
    );
  });
});
