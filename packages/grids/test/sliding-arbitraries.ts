import fc from 'fast-check';
import type { SlidingBase, SlidingPart } from '../src/index.ts';
import { keepInArb, keepOutsArb, mm } from './shapes.ts';

const ways = ['left', 'right', 'front', 'back'] as const;

/** Keep-outs of the base are dealt out to the parts; one in three stays. */
export const bases: fc.Arbitrary<SlidingBase> = fc
  .record({
    panel: fc.record({ lengthMm: mm(250, 600), widthMm: mm(150, 400) }),
    pitchXMm: mm(40, 90),
    pitchYMm: mm(40, 90),
    columns: fc.integer({ min: 1, max: 5 }),
    rows: fc.integer({ min: 1, max: 3 }),
    staggered: fc.boolean(),
    holeDiameterMm: mm(1, 30),
    edgeMarginMm: mm(0, 30),
    keepOuts: keepOutsArb,
    keepIn: fc.oneof({ weight: 6, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: keepInArb }),
    movement: fc.option(
      fc.record({
        fixedLineYMm: mm(0, 400),
        shrinkPct: fc.double({ min: 0, max: 5, noNaN: true }),
        swellPct: fc.double({ min: 0, max: 5, noNaN: true }),
      }),
    ),
    parts: fc.uniqueArray(
      fc.record({
        widensTowards: fc.constantFrom(...ways),
        leastSlideMm: mm(-100, 50),
        lengthMm: mm(0, 200),
      }),
      { minLength: 1, maxLength: 3, selector: ({ widensTowards }) => widensTowards },
    ),
    mostDroppedCount: fc.integer({ min: 0, max: 3 }),
  })
  .map(({ parts, movement, keepIn, ...grid }) => {
    const loose = grid.keepOuts.filter(({ belongsTo, shape }) => belongsTo === 'base' && shape !== 'band');
    const dealt = parts.map(
      ({ lengthMm, ...part }, i): SlidingPart => ({
        ...part,
        id: `part ${i + 1}`,
        keepOutIds: loose.filter((_, j) => j % 3 === i).map(({ id }) => id),
        mostSlideMm: part.leastSlideMm + lengthMm,
      }),
    );
    const carrying = dealt.filter(({ keepOutIds }) => keepOutIds.length > 0);
    return { ...grid, parts: carrying, ...(movement && { movement }), ...(keepIn && { keepIn }) };
  })
  .filter(({ parts }) => parts.length > 0);

/** The keep-outs with every part so far the way that widens; written without regard to how the search does it. */
export function slid({ keepOuts, parts }: SlidingBase, slidesMm: readonly number[]): SlidingBase['keepOuts'] {
  return keepOuts.map((keepOut) => {
    const i = parts.findIndex(({ keepOutIds }) => keepOutIds.includes(keepOut.id));
    const way = parts[i]?.widensTowards;
    const by = slidesMm[i] ?? 0;
    const xMm = way === 'right' ? by : way === 'left' ? -by : 0;
    const yMm = way === 'back' ? by : way === 'front' ? -by : 0;
    if (keepOut.shape === 'band') return keepOut;
    if (keepOut.shape === 'polygon') {
      const corners = keepOut.corners.map((at) => ({ xMm: at.xMm + xMm, yMm: at.yMm + yMm }));
      return { ...keepOut, corners };
    }
    return { ...keepOut, xMm: keepOut.xMm + xMm, yMm: keepOut.yMm + yMm };
  });
}

/** The same with more asked for everywhere. */
export const stricter = (base: SlidingBase, byMm: number): SlidingBase => ({
  ...base,
  edgeMarginMm: base.edgeMarginMm + byMm,
  ...(base.keepIn && { keepIn: { ...base.keepIn, clearanceMm: base.keepIn.clearanceMm + byMm } }),
  keepOuts: base.keepOuts.map((one) => ({ ...one, clearanceMm: one.clearanceMm + byMm })),
});
