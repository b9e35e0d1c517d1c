import { numberArb } from '@scantling/tests-shared';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  dryFilm,
  finishAreas,
  finishVolume,
  type PlanCoatsInput,
  type PlannedCoat,
  planCoats,
  type SheenOfCoatsInput,
  sheenOfCoats,
} from '../src/index.ts';

const close = (ours: number, theirs: number) =>
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-9 * Math.abs(theirs) + 1e-12);

const names = ['top', 'underside', 'edges', 'hole walls'];
const faces = fc
  .tuple(...names.map(() => numberArb({ min: 0, max: 5 })))
  .map((areas) => names.map((name, i) => ({ name, areaM2: areas[i] ?? 0 })));
const coat: fc.Arbitrary<PlannedCoat> = fc.record({
  faces: fc.subarray(names, { minLength: 1 }),
  finish: fc.constantFrom('gloss varnish', 'satin varnish'),
  thinner: fc.constant('mineral spirits'),
  thinnerPct: fc.oneof(fc.constant(0), numberArb({ min: 0, max: 200 })),
  volumeSolidsPct: numberArb({ min: 10, max: 100 }),
  spreadingRateM2PerL: numberArb({ min: 2, max: 40 }),
  lossPct: numberArb({ min: 0, max: 50 }),
  sheen: fc.constantFrom('gloss', 'satin'),
});
const plans: fc.Arbitrary<PlanCoatsInput> = fc.record({
  faces,
  coats: fc.array(coat, { minLength: 1, maxLength: 8 }),
});

describe('planCoats', () => {
  test('the liquids of the job are those of its coats, and each coat is what the rules say', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const { coats, liquids } = planCoats(plan);
        const total = (of: (one: (typeof coats)[number]) => number) =>
          coats.reduce((sum, one) => sum + of(one), 0);
        close(
          liquids.reduce((sum, { volumeMl }) => sum + volumeMl, 0),
          total((one) => one.mixMl),
        );
        close(
          liquids.find(({ name }) => name === 'mineral spirits')?.volumeMl ?? 0,
          total((one) => one.thinnerMl),
        );
        coats.forEach((one, i) => {
          const asked = plan.coats[i] as PlannedCoat;
          close(one.finishMl + one.thinnerMl, one.mixMl);
          close(one.thinnerMl * 100, one.finishMl * asked.thinnerPct);
          close(one.mixMl, finishVolume({ ...asked, areaM2: one.areaM2, coatCount: 1 }).volumeMl);
          close(one.dryFilmUm, dryFilm({ ...asked, wetFilmUm: one.wetFilmUm }).dryFilmUm);
          // What is on the wood: film times area is the volume less the loss, and the solids of it.
          close(one.wetFilmUm * one.areaM2, (one.mixMl * (100 - asked.lossPct)) / 100);
        });
      }),
    );
  });

  test('solids are kept: film times area of all faces is what all coats bring', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const { coats, faces: results } = planCoats(plan);
        const onFaces = results.reduce((sum, { areaM2, filmUm }) => sum + areaM2 * filmUm, 0);
        const brought = coats.reduce((sum, { finishMl }, i) => {
          const { volumeSolidsPct, lossPct } = plan.coats[i] as PlannedCoat;
          return sum + (finishMl * volumeSolidsPct * (100 - lossPct)) / 10_000;
        }, 0);
        close(onFaces, brought);
        for (const [i, result] of results.entries()) {
          const own = plan.coats.filter((one) => one.faces.includes(names[i] ?? ''));
          expect(result.coatCount).toBe(own.length);
          expect(result.sheen).toBe(own.at(-1)?.sheen ?? null);
        }
      }),
    );
  });

  test('twice the area takes twice the finish and leaves the same film', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const once = planCoats(plan);
        const doubled = { ...plan, faces: plan.faces.map((face) => ({ ...face, areaM2: 2 * face.areaM2 })) };
        const twice = planCoats(doubled);
        twice.liquids.forEach(({ volumeMl }, i) => {
          close(volumeMl, 2 * (once.liquids[i]?.volumeMl ?? Number.NaN));
        });
        expect(twice.faces.map(({ filmUm }) => filmUm)).toEqual(once.faces.map(({ filmUm }) => filmUm));
      }),
    );
  });

  const gloss: PlannedCoat = {
    faces: ['top'],
    finish: 'gloss varnish',
    thinner: 'mineral spirits',
    thinnerPct: 0,
    volumeSolidsPct: 50,
    spreadingRateM2PerL: 10,
    lossPct: 0,
    sheen: 'gloss',
  };
  const satin: PlannedCoat = { ...gloss, finish: 'satin varnish', sheen: 'satin' };
  const top = [{ name: 'top', areaM2: 1 }];

  test('notes a dull coat under a glossier one, and a face without a coat', () => {
    const notes = (...coats: PlannedCoat[]) => planCoats({ faces: top, coats }).notes;
    expect(notes(gloss, gloss, satin)).toEqual([]);
    expect(notes(satin, gloss)).toEqual([
      'On the top, coat 1 (satin) lies under coat 2 (gloss): the last coat alone makes the sheen, so the flatting agent below only veils the wood.',
    ]);
    const both = planCoats({ faces: [...top, { name: 'underside', areaM2: 1 }], coats: [gloss] });
    expect(both.notes).toEqual([
      'No coat is laid on the underside: bare wood takes up and gives off moisture faster.',
    ]);
    expect(both.cautions.join(' ')).toMatch(/Rags wet.*Solvent vapour.*own sheet/s);
  });

  test('wants the name of a thinner only where there is some', () => {
    const { thinner, ...unthinned } = gloss;
    expect(planCoats({ faces: top, coats: [unthinned] })).toEqual(planCoats({ faces: top, coats: [gloss] }));
    expect(() => planCoats({ faces: top, coats: [{ ...unthinned, thinnerPct: 5 }] })).toThrow(
      'planCoats requires coats[0].thinner to be a text, got undefined',
    );
  });

  // The bindery bench, worked by hand: 1 m² of top, sealed half and half at 12.5 m²/L: 80 mL, of them 40 of varnish;
  // then twice 100 mL of gloss and once 100 mL of satin at 10 m²/L. Films 80 × 0.25 = 20 and 100 × 0.5 = 50 µm.
  test('of a sealer, two coats of gloss and one of satin, worked by hand', () => {
    const sealer = { ...gloss, thinnerPct: 100, spreadingRateM2PerL: 12.5 };
    const plan = planCoats({ faces: top, coats: [sealer, gloss, gloss, satin] });
    expect(plan.liquids).toEqual([
      { name: 'gloss varnish', volumeMl: 240 },
      { name: 'mineral spirits', volumeMl: 40 },
      { name: 'satin varnish', volumeMl: 100 },
    ]);
    expect(plan.faces[0]).toMatchObject({ coatCount: 4, sheen: 'satin', laidUm: 380, filmUm: 170 });
  });

  test('takes the areas of a panel as they come', () => {
    const areas = finishAreas({
      lengthMm: 1000,
      widthMm: 500,
      thicknessMm: 40,
      holes: [{ count: 20, diameterMm: 20, bored: 'through' }],
      rabbets: [],
    });
    const { coats } = planCoats({
      faces: [
        { name: 'top', areaM2: areas.topM2 },
        { name: 'hole walls', areaM2: areas.holeWallsM2 },
      ],
      coats: [{ ...gloss, faces: ['top', 'hole walls'] }],
    });
    // 0.5 less 20 × π × 0.01², and 20 × π × 0.02 × 0.04.
    close(coats[0]?.areaM2 ?? Number.NaN, 0.5 - 0.002 * Math.PI + 0.016 * Math.PI);
  });

  test.each<[object, string]>([
    [{}, 'faces to be a list of 1 to 50, got undefined'],
    [{ faces: [{ areaM2: 1 }], coats: [gloss] }, 'faces[0].name to be a text, got undefined'],
    [{ faces: [...top, ...top], coats: [gloss] }, 'faces[1].name unlike every other, got "top"'],
    [
      { faces: [{ name: 'top', areaM2: Number.NaN }], coats: [gloss] },
      'faces[0].areaM2 between 0 and 10000, got NaN',
    ],
    [
      { faces: top, coats: [{ ...gloss, faces: ['bottom'] }] },
      'coats[0].faces[0] to name a face once, got "bottom"',
    ],
    [
      { faces: top, coats: [{ ...gloss, faces: ['top', 'top'] }] },
      'coats[0].faces[1] to name a face once, got "top"',
    ],
    [{ faces: top, coats: [{ ...gloss, sheen: 'shiny' }] }, 'coats[0].sheen to be one of'],
    [{ faces: top, coats: [{ ...gloss, finish: '' }] }, 'coats[0].finish to be a text, got '],
    [{ faces: top, coats: [{ ...gloss, lossPct: 96 }] }, 'coats[0].lossPct between 0 and 95, got 96'],
  ])('refuses %o', (input, says) => {
    expect(() => planCoats(input as PlanCoatsInput)).toThrow(`planCoats requires ${says}`);
  });
});

describe('sheenOfCoats', () => {
  // Source: `sheen-column`, as text: the sheen is created in the last coat applied, previous coats have no impact; a
  // finish without flatting agent dries glossy. Gloss for the build is common practice, no source.
  test('is gloss below and as wanted at the end', () => {
    const sheen = fc.constantFrom(
      'high gloss',
      'gloss',
      'silk gloss',
      'semigloss',
      'satin',
      'matt',
      'dead matt',
    );
    const counts = fc.tuple(fc.integer({ min: 1, max: 50 }), fc.integer({ min: 1, max: 50 }));
    fc.assert(
      fc.property(sheen, counts, (wanted, [one, other]) => {
        const [lastCoatCount, coatCount] = [Math.min(one, other), Math.max(one, other)];
        const { sheens, why } = sheenOfCoats({
          coatCount,
          sheen: wanted,
          lastCoatCount,
        } as SheenOfCoatsInput);
        expect(sheens).toHaveLength(coatCount);
        expect(sheens.slice(-lastCoatCount)).toEqual(Array(lastCoatCount).fill(wanted));
        const below = wanted === 'high gloss' ? 'high gloss' : 'gloss';
        expect(sheens.slice(0, -lastCoatCount)).toEqual(Array(coatCount - lastCoatCount).fill(below));
        expect(why[0]).toContain('The last coat alone makes the sheen');
        expect(why.length > 1).toBe(
          !wanted.endsWith(' gloss') && wanted !== 'gloss' ? true : wanted === 'silk gloss',
        );
        // A plan that follows it has no note on sheen.
        const plan = planCoats({
          faces: [{ name: 'top', areaM2: 1 }],
          coats: sheens.map((each) => ({
            faces: ['top'],
            finish: `${each} varnish`,
            thinner: 'mineral spirits',
            thinnerPct: 0,
            volumeSolidsPct: 50,
            spreadingRateM2PerL: 10,
            lossPct: 0,
            sheen: each,
          })),
        });
        expect(plan.notes).toEqual([]);
      }),
    );
  });

  test.each<[object, string]>([
    [{ coatCount: 0, sheen: 'satin', lastCoatCount: 1 }, 'coatCount a whole number between 1 and 50, got 0'],
    [{ coatCount: 2, sheen: 'satin', lastCoatCount: 3 }, 'lastCoatCount at most coatCount, got 3 and 2'],
    [{ coatCount: 2, sheen: 'toString', lastCoatCount: 1 }, 'sheen to be one of'],
  ])('refuses %o', (input, says) => {
    expect(() => sheenOfCoats(input as SheenOfCoatsInput)).toThrow(`sheenOfCoats requires ${says}`);
  });
});
