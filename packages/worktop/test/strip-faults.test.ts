import { describe, expect, test } from 'vitest';
import { type Plan, planWorktop, type Strip } from '../src/index.ts';
import type { Obstacle } from '../src/plan/place.ts';
import { checkOf, letIn } from './shop-sections.ts';

const failsWith = (plan: Plan, id: string) => {
  const { status, says } = checkOf(plan, id);
  return [status, says.split('\n')[0]];
};

describe('a strip that does not go', () => {
  test.each<[string, Partial<Strip>, Partial<Obstacle>, string, string, RegExp]>([
    [
      'a narrow rabbet',
      { rabbetWidthMm: 25.5 },
      {},
      'strip-rabbet',
      'fail',
      /^strip\.rabbetWidth is 25\.50 mm, at least 25\.54 mm is needed/,
    ],
    [
      'a rabbet that breaks out',
      { rabbetWidthMm: 30 },
      { yMm: 2 },
      'strip-rabbet',
      'fail',
      /its rabbet comes out of the front edge by 0\.3 mm/,
    ],
    [
      'a thin wall',
      {},
      { yMm: 4 },
      'strip-rabbet',
      'warn',
      /3\.8 mm of wood is left towards the front edge, less than the rabbet is deep/,
    ],
    [
      'a proud strip',
      { rabbetDepthMm: 4.8 },
      {},
      'strip-rabbet',
      'warn',
      /^strip\.rabbetDepth is 4\.8 mm: the strip stands up to 0\.22 mm proud, strip\.tolerance is 0\.10 mm/,
    ],
    [
      'screws through the underside',
      { screwLengthMm: 45 },
      {},
      'strip-screws',
      'fail',
      /^strip\.screwLength is 45\.0 mm: the tips come through the underside by 0\.8 mm/,
    ],
    [
      'screws that do not reach the wood',
      { screwLengthMm: 4.8 },
      {},
      'strip-screws',
      'fail',
      /do not reach the wood, more than 4\.8 mm is needed/,
    ],
    [
      'heads that fall through',
      { headBelowFaceMm: 5 },
      {},
      'strip-screws',
      'fail',
      /^strip\.headBelowFace is 5\.0 mm: the heads lie below a strip of 5\.0 mm/,
    ],
    [
      'heads wider than the strip',
      {},
      { widthMm: 8 },
      'strip-screws',
      'fail',
      /^strip\.headDiameter: the countersink is 8\.4 mm wide at the face, the strip 8\.0 mm/,
    ],
    [
      'countersinks that run together',
      { mostPitchMm: 8 },
      {},
      'strip-movement',
      'fail',
      /the countersinks run out of the strip or into each other/,
    ],
    [
      'countersinks that run out of the end',
      { endDistanceMm: 4 },
      {},
      'strip-movement',
      'fail',
      /^strip: before the first screw .* by 0\.2 mm/,
    ],
  ])('%s', (_, changes, inlay, id, status, says) => {
    expect(failsWith(letIn(changes, inlay), id)).toEqual([status, expect.stringMatching(says)]);
  });

  test('a hole that breaks into the rabbet, though it keeps clear of the strip', () => {
    // Holes of the first row reach down to 160 − 7.9375 = 152.06; a strip up to 152, its rabbet 1 mm wider each way
    const plan = letIn({ rabbetWidthMm: 27.4 }, { yMm: 152 - 25.4, clearanceMm: 0 });
    expect(planWorktop(plan).blockedHoles.filter(({ row }) => row === 1).length).toBeLessThan(13);
    expect(checkOf(plan, 'strip-rabbet').says).toMatch(
      /^holes: row 1, column \d+ breaks into the rabbet by 1\.0 mm/,
    );
  });

  test('a screw that meets one from below, and not where they pass each other', () => {
    // A guide over the front screws at y = 70, its screw at x = 250: 40 + 210
    const over = { yMm: 70 - 12.7 };
    const first = { endDistanceMm: 210 };
    // From below 40 − 5.5 = 34.5 mm deep, from above 0.2 + 20: more than 44.45 together
    const { status, says } = checkOf(letIn(first, over), 'strip-screws');
    expect([status, says]).toEqual([
      'fail',
      expect.stringMatching(/^strip: its screw 1 meets the screw from below, left front/),
    ]);
    // From above 0.2 + 9.6: 44.3 together
    expect(checkOf(letIn({ ...first, screwLengthMm: 9.6 }, over), 'strip-screws').status).toBe('pass');
    // How deep a screw goes that the plan says nothing of is not known.
    const { screws: _, ...plan } = letIn({ ...first, screwLengthMm: 9.6 }, over);
    expect(checkOf(plan, 'strip-screws').status).toBe('fail');
  });

  test.each<[string, Partial<Strip>, Partial<Obstacle>, RegExp]>([
    [
      'no inlay of that name',
      { inlay: 'guide' },
      {},
      /strip\.inlay to be the name of one of top\.inlays: "brass cutting guide", got guide/,
    ],
    ['a rabbet through the top', { rabbetDepthMm: 44 }, {}, /strip\.rabbetDepthMm to be at most 43\.45 mm/],
    [
      'a plate',
      {},
      { widthMm: 300 },
      /strip\.inlay to be an inlay that is 10 mm long or more, and at most 200 mm wide/,
    ],
    [
      'ends longer than the strip',
      { endDistanceMm: 700 },
      {},
      /strip\.endDistanceMm to be less than half of the strip, 700 mm/,
    ],
    [
      'a head no wider than its shank',
      { headDiameterMm: 4 },
      {},
      /strip\.headDiameterMm to be more than strip\.shankDiameterMm, 4, got 4/,
    ],
    // (8 − 4) / 2 / tan 75° = 0.54, / tan 15° = 7.46
    [
      'a head that is no cone',
      { headHeightMm: 0.5 },
      {},
      /strip\.headHeightMm to be from 0\.54 mm to 7\.46 mm/,
    ],
  ])('%s is a contradiction', (_, changes, inlay, message) => {
    expect(() => planWorktop(letIn(changes, inlay))).toThrow(message);
  });
});
