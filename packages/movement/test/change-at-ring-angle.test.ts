import fc from 'fast-check';
import { expect, test } from 'vitest';
import { changeAtRingAngle, widthChange } from '../src/index.ts';

const size = fc.double({ min: 1, max: 1000, noNaN: true });
const angle = fc.double({ min: 0, max: 90, noNaN: true });
const coefficient = fc.double({ min: 0, max: 0.02, noNaN: true });
const moisture = fc.double({ min: 0, max: 30, noNaN: true });
const board = fc.record({
  widthMm: size,
  thicknessMm: size,
  ringAngleDeg: angle,
  radialPerPct: coefficient,
  tangentialPerPct: coefficient,
  fromMoisturePct: moisture,
  toMoisturePct: moisture,
});

const near = (ours: number, expected: number) => expect(Math.abs(ours - expected)).toBeLessThan(1e-9);

test('flatsawn and quartersawn are the change in width by either coefficient', () => {
  fc.assert(
    fc.property(board, (given) => {
      const { widthMm, thicknessMm, radialPerPct, tangentialPerPct } = given;
      const change = (mm: number, coefficientPerPct: number) =>
        widthChange({ ...given, widthMm: mm, coefficientPerPct }).changeMm;
      const flat = changeAtRingAngle({ ...given, ringAngleDeg: 0 });
      near(flat.widthChangeMm, change(widthMm, tangentialPerPct));
      near(flat.thicknessChangeMm, change(thicknessMm, radialPerPct));
      const quarter = changeAtRingAngle({ ...given, ringAngleDeg: 90 });
      near(quarter.widthChangeMm, change(widthMm, radialPerPct));
      near(quarter.thicknessChangeMm, change(thicknessMm, tangentialPerPct));
    }),
  );
});

test('any angle lies between the two', () => {
  fc.assert(
    fc.property(board, (given) => {
      const at = (ringAngleDeg: number) => changeAtRingAngle({ ...given, ringAngleDeg }).widthChangeMm;
      const ends = [at(0), at(90)];
      expect(at(given.ringAngleDeg)).toBeGreaterThanOrEqual(Math.min(...ends) - 1e-9);
      expect(at(given.ringAngleDeg)).toBeLessThanOrEqual(Math.max(...ends) + 1e-9);
    }),
  );
});

test('a board stood on its edge is the same board', () => {
  fc.assert(
    fc.property(board, (given) => {
      const { widthChangeMm, thicknessChangeMm } = changeAtRingAngle(given);
      const stood = changeAtRingAngle({
        ...given,
        widthMm: given.thicknessMm,
        thicknessMm: given.widthMm,
        ringAngleDeg: 90 - given.ringAngleDeg,
      });
      near(stood.widthChangeMm, thicknessChangeMm);
      near(stood.thicknessChangeMm, widthChangeMm);
    }),
  );
});

test('both strains together are radial and tangential together, at any angle', () => {
  fc.assert(
    fc.property(board, (given) => {
      const { widthChangeMm, thicknessChangeMm } = changeAtRingAngle(given);
      const both = widthChangeMm / given.widthMm + thicknessChangeMm / given.thicknessMm;
      const rise = given.toMoisturePct - given.fromMoisturePct;
      near(both, (given.radialPerPct + given.tangentialPerPct) * rise);
    }),
  );
});
