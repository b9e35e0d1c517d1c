import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type BoredHoles, type FinishAreasInput, finishAreas, type Rabbet } from '../src/index.ts';

describe('finishAreas', () => {
  test('a hole fits between the rabbets of the faces that it opens in, and no wider one', () => {
    const panel = { lengthMm: 800, widthMm: 400, thicknessMm: 40 };
    const width = fc.integer({ min: 1, max: 150 });
    const face = fc.constantFrom('top' as const, 'underside' as const);
    const bored = fc.constantFrom('through' as const, 'from the top' as const, 'from the underside' as const);
    fc.assert(
      fc.property(width, width, face, face, bored, (front, back, one, other, bored) => {
        const rabbet = { depthMm: 5, fromMm: 0, toMm: 800 };
        const rabbets: Rabbet[] = [
          { ...rabbet, edge: 'front', face: one, widthMm: front },
          { ...rabbet, edge: 'back', face: other, widthMm: back },
        ];
        const opensIn = (face: Rabbet['face']) => bored === 'through' || bored === `from the ${face}`;
        const roomMm = 400 - (opensIn(one) ? front : 0) - (opensIn(other) ? back : 0);
        const areas = (diameterMm: number) =>
          finishAreas({
            ...panel,
            rabbets,
            holes: [{ count: 1, diameterMm, bored, depthMm: 9 } as BoredHoles],
          });
        expect(areas(roomMm).holeWallsM2).toBeGreaterThan(0);
        expect(() => areas(roomMm + 0.1)).toThrow(`at most ${roomMm},`);
      }),
    );
  });

  const top = { lengthMm: 800, widthMm: 400, thicknessMm: 40, holes: [], rabbets: [] };
  const step = { edge: 'front', face: 'top', widthMm: 20, depthMm: 5, fromMm: 0, toMm: 800 };
  test.each<[string, object, string]>([
    ['no panel', { widthMm: Number.NaN }, 'widthMm between 1 and 20000, got NaN'],
    ['holes that are no list', { holes: undefined }, 'holes to be a list of at most 100, got undefined'],
    [
      'a hole of another kind',
      { holes: [{ count: 1, diameterMm: 5, bored: 'sideways' }] },
      'holes[0].bored to be one of',
    ],
    [
      'a blind hole that goes through',
      { holes: [{ count: 1, diameterMm: 5, bored: 'from the top', depthMm: 40 }] },
      'holes[0].depthMm above 0 and below 40, got 40',
    ],
    [
      'a blind hole of unknown depth',
      { holes: [{ count: 1, diameterMm: 5, bored: 'from the top' }] },
      'holes[0].depthMm above 0 and below 40, got undefined',
    ],
    [
      'a hole wider than the panel',
      { holes: [{ count: 1, diameterMm: 401, bored: 'through' }] },
      'holes[0].diameterMm at most 400, got 401',
    ],
    [
      'a hole wider than a strip',
      { widthMm: 20, holes: [{ count: 1, diameterMm: 300, bored: 'from the top', depthMm: 5 }] },
      'holes[0].diameterMm at most 20, got 300',
    ],
    [
      'a hole into a rabbet',
      {
        holes: [{ count: 1, diameterMm: 370, bored: 'through' }],
        rabbets: [step, { ...step, edge: 'back', face: 'underside' }],
      },
      'holes[0].diameterMm at most 360, got 370',
    ],
    [
      'more holes than wood',
      { holes: [{ count: 10_000, diameterMm: 20, bored: 'through' }] },
      'holes and rabbets that leave some of the top, got none of it left',
    ],
    [
      'a rabbet through the thickness',
      { rabbets: [{ ...step, depthMm: 40 }] },
      'rabbets[0].widthMm and depthMm above 0 and within the panel, got 20 and 40',
    ],
    [
      'a rabbet beyond the end',
      { rabbets: [{ ...step, toMm: 801 }] },
      'rabbets[0].fromMm below toMm, and that at most 800, got 0 and 801',
    ],
    [
      'rabbets that meet at a corner',
      { rabbets: [step, { ...step, edge: 'left', toMm: 400 }] },
      'rabbets[1] clear of every other, got one that meets rabbets[0]',
    ],
  ])('refuses %s', (_, change, says) => {
    expect(() => finishAreas({ ...top, ...change } as FinishAreasInput)).toThrow(
      `finishAreas requires ${says}`,
    );
  });
});
