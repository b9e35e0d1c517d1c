import fc from 'fast-check';
import { expect, test } from 'vitest';
import { coefficientFromShrinkage, widthChange, widthChangeByShrinkage } from '../src/index.ts';

const shrinkage = fc.double({ min: 0, max: 30, noNaN: true });
const saturation = fc.double({ min: 20, max: 40, noNaN: true });
const moisture = fc.double({ min: 0, max: 30, noNaN: true });

test('the shrinkage comes back from its coefficient', () => {
  fc.assert(
    fc.property(shrinkage, saturation, (shrinkagePct, fibreSaturationPct) => {
      const { coefficientPerPct: c } = coefficientFromShrinkage({ shrinkagePct, fibreSaturationPct });
      // From 10 % the wood swells by (M − 10) C up to fibre saturation, and shrinks by 10 C to ovendry.
      const [green, ovendry] = [1 + (fibreSaturationPct - 10) * c, 1 - 10 * c];
      expect(Math.abs(100 * (1 - ovendry / green) - shrinkagePct)).toBeLessThan(1e-11);
    }),
  );
});

test('from 10 % moisture content both ways to the change in width are one', () => {
  fc.assert(
    fc.property(shrinkage, moisture, (shrinkagePct, toMoisturePct) => {
      const shrinking = { shrinkagePct: shrinkagePct / 2, fibreSaturationPct: 30 };
      const { coefficientPerPct } = coefficientFromShrinkage(shrinking);
      const board = { widthMm: 600, fromMoisturePct: 10, toMoisturePct };
      const a = widthChange({ ...board, coefficientPerPct }).changeMm;
      const b = widthChangeByShrinkage({ ...board, ...shrinking }).changeMm;
      expect(Math.abs(a - b)).toBeLessThan(1e-10);
    }),
  );
});
