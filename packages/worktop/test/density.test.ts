import { assignedSpecificGravity, findSpecies, woods } from '@scantling/species';
import { expectWithin } from '@scantling/tests-shared';
import { describe, expect, test } from 'vitest';
import { densityKgPerM3, specificGravityOf } from '../src/density.ts';

describe('the density of a wood', () => {
  test('sugar maple by hand', () => {
    const { species: maple } = findSpecies('sugar maple');
    if (!maple) throw new Error('no maple');
    // The table has 0.63 at 12 %: 630 kg of dry wood, and 12 % of water.
    expect(densityKgPerM3(maple, 12)).toBeCloseTo(630 * 1.12, 9);
    // Drying from 12 to 8 % takes 0.265 × 4 / 30 = 0.035333 off the room of a gram, from 1 / 0.63 = 1.587302 cm³:
    // 1 / 1.551968 = 0.644343, and 644.343 × 1.08 = 695.89.
    expect(densityKgPerM3(maple, 8)).toBeCloseTo(695.89, 2);
    // Down to 0 %: 0.265 × 12 / 30 = 0.106; 1 / 1.481302 = 0.675082
    expect(specificGravityOf(maple, 0)).toBeCloseTo(0.675082, 6);
  });

  test('ovendry gravities that a design standard assigns to combinations named for one wood (NDS 2018, Table 12.3.3A)', () => {
    const single = assignedSpecificGravity.rows.flatMap(({ species: name, specificGravityRatio }) => {
      const { species } = findSpecies(name);
      const ours = species && specificGravityOf(species, 0);
      return ours && !/cedars/i.test(name) ? [{ name, ours, specificGravityRatio }] : [];
    });
    expect(single.length).toBeGreaterThanOrEqual(6);
    for (const { name, ours, specificGravityRatio } of single) {
      expectWithin(ours, specificGravityRatio, 0.015, `NDS 2018, Table 12.3.3A, ${name}`);
    }
  });

  test('no figure is made up for a wood whose gravity no table gives', () => {
    const unknown = woods.filter((wood) => wood.at12Pct.specificGravityRatio === null);
    expect(unknown.length).toBeGreaterThan(0);
    for (const wood of unknown) expect(densityKgPerM3(wood, 8)).toBeNull();
  });
});
