import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  countersinkDepth,
  countersinkDiameter,
  countersunkHeads,
  countersunkWoodScrews,
  findScrew,
  headBelowFace,
  headThroughStrip,
  inchWoodScrews,
  sharpHeadDiameter,
  socketCountersunkHeads,
  woodScrewDiameter,
} from '../src/index.ts';

const angles = fc.oneof(fc.constantFrom(82, 90, 100), numberArb({ min: 30, max: 150 }));
const cones = fc
  .record({
    headDiameterMm: numberArb({ min: 0.1, max: 50 }),
    share: numberArb({ min: 0, max: 1 }),
    includedAngleDeg: angles,
    headBelowFaceMm: numberArb({ min: 0, max: 10 }),
  })
  .map(({ share, ...cone }) => ({ ...cone, shankDiameterMm: share * cone.headDiameterMm }));

describe('heads as the standards print them', () => {
  const heads = [...countersunkHeads.rows, ...socketCountersunkHeads.rows];

  // Source: ISO 7721 and ISO 10642, as text in reprints. Two rows of ISO 10642 do not follow, and have an erratum.
  test('a metric head is as high as the cone from its sharp edge to the shank', () => {
    const off = heads.filter(({ diameterMm, headDiameterMm, headHeightMm }) => {
      const { coneDepthMm } = countersinkDepth({
        countersinkDiameterMm: headDiameterMm,
        holeDiameterMm: diameterMm,
        includedAngleDeg: 90,
      });
      return Math.abs(coneDepthMm - headHeightMm) > 0.005 + 1e-9;
    });
    expect(heads).toHaveLength(22);
    expect(off.map(({ size, headDiameterMm }) => [size, headDiameterMm])).toEqual([
      ['M2', 4.09],
      ['M2.5', 5.08],
    ]);
    for (const { size } of off) {
      const { diameterMm } = findScrew(size).screw?.heads[1] ?? {};
      expect(diameterMm?.citation.erratum).toBeDefined();
    }
  });

  // Source: ASME B18.6.1, as text in a reprint. No. 18 has an erratum.
  test('a wood screw’s flat head is as high as its 82° cone, and up to 0.0065 in more', () => {
    for (const { gauge, diameterIn, headDiameterIn, headHeightIn } of inchWoodScrews.rows) {
      const { coneDepthMm } = countersinkDepth({
        countersinkDiameterMm: headDiameterIn * 25.4,
        holeDiameterMm: diameterIn * 25.4,
        includedAngleDeg: 82,
      });
      const overIn = headHeightIn - coneDepthMm / 25.4;
      const { heightMm } = findScrew(`#${gauge}`).screw?.heads[0] ?? {};
      expect(overIn > 0, `No. ${gauge}`).toBe(heightMm?.citation.erratum === undefined);
      expect(Math.abs(overIn), `No. ${gauge}`).toBeLessThan(0.0065);
    }
  });

  // Source: DIN 97, from memory.
  test('the recalled heads of DIN 97 are higher than a cone from their rounded edge, by 0.3 to 0.8 mm', () => {
    for (const { diameterMm, headDiameterMm, headHeightMm } of countersunkWoodScrews.rows) {
      const over = headHeightMm - (headDiameterMm - diameterMm) / 2;
      expect(over).toBeGreaterThan(0.3);
      expect(over).toBeLessThan(0.8);
    }
  });

  // Source: DIN 963, machine screws with the same heads, as an open library for drawing them lists it, as text.
  test('the recalled heads of DIN 97 are as wide as those of DIN 963', () => {
    const printed: Readonly<Record<number, number>> = { 3: 5.6, 3.5: 6.5, 4: 7.5, 5: 9.2, 6: 11, 8: 14.5 };
    const same = countersunkWoodScrews.rows.filter(({ diameterMm }) => diameterMm in printed);
    expect(same).toHaveLength(6);
    for (const { diameterMm, headDiameterMm } of same) expect(headDiameterMm).toBe(printed[diameterMm]);
  });

  test('every gauge of the table has the diameter of the rule', () => {
    for (const { gauge, diameterIn, bodyDiameterIn } of inchWoodScrews.rows) {
      expect(woodScrewDiameter({ gauge }).diameterMm).toBeCloseTo(diameterIn * 25.4, 9);
      expect(bodyDiameterIn - diameterIn).toBeCloseTo(0.004, 9);
    }
  });
});

describe('a real head, whose edge is blunt', () => {
  const lies = (headDiameterMm: number, headBelowFaceMm: number, truthMm: number) => {
    const { countersinkDiameterMm } = countersinkDiameter({
      headDiameterMm,
      headBelowFaceMm,
      includedAngleDeg: 90,
    });
    return headBelowFace({
      headDiameterMm: truthMm,
      headAngleDeg: 90,
      countersinkDiameterMm,
      countersinkAngleDeg: 90,
      holeDiameterMm: 0,
    }).headBelowFaceMm;
  };

  // Source: ISO 7721 and ISO 10642, as text in reprints: both edges and the height. A head of height k lies flush where
  // the cone of the countersink is k deep down to the shank.
  test('lies flush by its sharp edge, and would stand proud by its edge as made', () => {
    const heads = [...countersunkHeads.rows, ...socketCountersunkHeads.rows.slice(2)];
    expect(heads).toHaveLength(20);
    for (const { size, diameterMm, headDiameterMm, headEdgeDiameterMm, headHeightMm } of heads) {
      const flush = countersinkDepth({
        ...countersinkDiameter({ headDiameterMm, headBelowFaceMm: 0, includedAngleDeg: 90 }),
        holeDiameterMm: diameterMm,
        includedAngleDeg: 90,
      });
      expect(Math.abs(flush.coneDepthMm - headHeightMm), size).toBeLessThanOrEqual(0.005 + 1e-9);
      expect(lies(headEdgeDiameterMm, 0, headDiameterMm), size).toBeLessThan(-0.08);
    }
    // M6: 12.6 to the sharp edge, 11.2 as made: (11.2 − 12.6) / 2 = −0.7 mm.
    expect(lies(11.2, 0, 12.6)).toBeCloseTo(-0.7, 9);
  });

  test('has the sharp edge that its height tells, within what half a digit of the height makes', () => {
    const heads = [...countersunkHeads.rows, ...socketCountersunkHeads.rows.slice(2)];
    for (const { size, diameterMm, headDiameterMm, headHeightMm } of heads) {
      const sharp = sharpHeadDiameter({
        shankDiameterMm: diameterMm,
        headHeightMm,
        includedAngleDeg: 90,
      }).headDiameterMm;
      expect(Math.abs(sharp - headDiameterMm), size).toBeLessThanOrEqual(0.01 + 1e-9);
    }
  });

  test('height, sharp edge and depth of the cone go round', () => {
    fc.assert(
      fc.property(cones, ({ headDiameterMm, shankDiameterMm, includedAngleDeg }) => {
        const { coneDepthMm } = countersinkDepth({
          countersinkDiameterMm: headDiameterMm,
          holeDiameterMm: shankDiameterMm,
          includedAngleDeg,
        });
        fc.pre(coneDepthMm <= 50);
        const back = sharpHeadDiameter({ shankDiameterMm, headHeightMm: coneDepthMm, includedAngleDeg });
        expect(back.headDiameterMm).toBeCloseTo(headDiameterMm, 9);
      }),
    );
  });

  // Source: DIN 97, from memory; DIN 963, which has the same heads, prints the same edges. 5 mm: 5 + 2 × 2.5 = 10 mm.
  test('every metric wood screw with a countersunk head leads to a sharp edge wider than its edge', () => {
    let heads = 0;
    for (const { diameterMm } of countersunkWoodScrews.rows) {
      const { screw } = findScrew(`${diameterMm} mm wood screw`);
      for (const { shape, angleDeg, edgeDiameterMm, heightMm } of screw?.heads ?? []) {
        if (shape !== 'countersunk') continue;
        heads += 1;
        const sharp = sharpHeadDiameter({
          shankDiameterMm: diameterMm,
          headHeightMm: heightMm.value,
          includedAngleDeg: angleDeg as number,
        }).headDiameterMm;
        expect(sharp).toBeGreaterThan((edgeDiameterMm?.value as number) + 0.5);
        if (diameterMm === 5) expect(sharp).toBeCloseTo(10, 9);
      }
    }
    expect(heads).toBe(countersunkWoodScrews.rows.length);
  });

  // Source: ASME B18.6.1, No. 8: 0.332 in to the sharp edge, 0.164 in shank, as text in a reprint.
  test('of a No. 8 reaches the wood under a strip of 2.2 mm', () => {
    // (0.332 − 0.164) × 25.4 / 2 / tan(41°) = 2.454 mm; 2.454 − 2.2 = 0.254 mm.
    const { heads, diameterMm } = findScrew('#8').screw ?? {};
    const through = headThroughStrip({
      headDiameterMm: heads?.[0]?.diameterMm?.value as number,
      shankDiameterMm: diameterMm?.value as number,
      includedAngleDeg: 82,
      stripThicknessMm: 2.2,
      headBelowFaceMm: 0,
    });
    expect(through.headReachMm).toBeCloseTo(2.454, 3);
    expect(through.belowStripMm).toBeCloseTo(0.254, 3);
  });
});

describe('the rules of the countersink together', () => {
  test('a head lies as deep in its countersink as the countersink was made for', () => {
    fc.assert(
      fc.property(cones, ({ headDiameterMm, shankDiameterMm, includedAngleDeg, headBelowFaceMm }) => {
        const { countersinkDiameterMm } = countersinkDiameter({
          headDiameterMm,
          headBelowFaceMm,
          includedAngleDeg,
        });
        fc.pre(countersinkDiameterMm <= 100);
        const lies = headBelowFace({
          headDiameterMm,
          headAngleDeg: includedAngleDeg,
          countersinkDiameterMm,
          countersinkAngleDeg: includedAngleDeg,
          holeDiameterMm: shankDiameterMm,
        });
        expect(lies.headBelowFaceMm).toBeCloseTo(headBelowFaceMm, 9);
      }),
    );
  });

  test('through a strip the cone is one: what strip and wood hold of it is the whole', () => {
    fc.assert(
      fc.property(cones, numberArb({ min: 0, max: 20 }), (cone, stripThicknessMm) => {
        const { includedAngleDeg, shankDiameterMm } = cone;
        const strip = headThroughStrip({ ...cone, stripThicknessMm });
        const whole = countersinkDepth({
          countersinkDiameterMm: countersinkDiameter(cone).countersinkDiameterMm,
          holeDiameterMm: shankDiameterMm,
          includedAngleDeg,
        });
        expect(strip.headReachMm).toBeCloseTo(whole.coneDepthMm, 9);
        if (strip.undersideDiameterMm === null) {
          expect(strip.belowStripMm).toBe(0);
          return;
        }
        const inWood = countersinkDepth({
          countersinkDiameterMm: strip.undersideDiameterMm,
          holeDiameterMm: shankDiameterMm,
          includedAngleDeg,
        });
        expect(inWood.coneDepthMm).toBeCloseTo(strip.belowStripMm, 8);
        expect(strip.undersideDiameterMm).toBeGreaterThanOrEqual(shankDiameterMm);
      }),
    );
  });

  test('a head touches its countersink and nowhere lies in the metal', () => {
    const pairs = fc.record({
      headDiameterMm: numberArb({ min: 5, max: 20 }),
      headAngleDeg: angles,
      countersinkDiameterMm: numberArb({ min: 5, max: 20 }),
      countersinkAngleDeg: angles,
      holeDiameterMm: numberArb({ min: 0, max: 5 }),
    });
    const half = (angleDeg: number) => Math.tan((angleDeg * Math.PI) / 360);
    fc.assert(
      fc.property(pairs, (pair) => {
        const { headBelowFaceMm } = headBelowFace(pair);
        // Radii of head and of countersink at a depth below the face.
        const head = (depthMm: number) =>
          pair.headDiameterMm / 2 - (depthMm - headBelowFaceMm) * half(pair.headAngleDeg);
        const room = (depthMm: number) =>
          Math.max(
            pair.holeDiameterMm / 2,
            pair.countersinkDiameterMm / 2 - depthMm * half(pair.countersinkAngleDeg),
          );
        const coneMm =
          (pair.countersinkDiameterMm - pair.holeDiameterMm) / 2 / half(pair.countersinkAngleDeg);
        const fromMm = Math.max(0, headBelowFaceMm);
        const depths = Array.from({ length: 201 }, (_, i) => fromMm + ((coneMm - fromMm) * i) / 200);
        const gaps = depths.map((depthMm) => room(depthMm) - head(depthMm));
        expect(Math.min(...gaps)).toBeCloseTo(0, 9);
      }),
    );
  });

  test('where the angles are the same the hole does not matter', () => {
    fc.assert(
      fc.property(cones, numberArb({ min: 0, max: 1 }), (cone, share) => {
        const head = {
          headDiameterMm: cone.headDiameterMm,
          headAngleDeg: cone.includedAngleDeg,
          countersinkDiameterMm: cone.headDiameterMm * 1.1,
          countersinkAngleDeg: cone.includedAngleDeg,
        };
        const lies = headBelowFace({ ...head, holeDiameterMm: share * cone.headDiameterMm }).headBelowFaceMm;
        expect(lies).toBeCloseTo(headBelowFace({ ...head, holeDiameterMm: 0 }).headBelowFaceMm, 9);
      }),
    );
  });
});
