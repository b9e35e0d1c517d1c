import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layoutHoles, type SlidingBase, type SlidingPart, widestBase } from '../src/index.ts';
import { halfTurned, keepOutsArb, mm } from './shapes.ts';

const GAP_MM = 0.01;

const ways = ['left', 'right', 'front', 'back'] as const;

/** Keep-outs of the base are dealt out to the parts; one in three stays. */
const bases: fc.Arbitrary<SlidingBase> = fc
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
  .map(({ parts, movement, ...grid }) => {
    const loose = grid.keepOuts.filter(({ belongsTo, shape }) => belongsTo === 'base' && shape !== 'band');
    const dealt = parts.map(
      ({ lengthMm, ...part }, i): SlidingPart => ({
        ...part,
        id: `part ${i + 1}`,
        keepOutIds: loose.filter((_, j) => j % 3 === i).map(({ id }) => id),
        mostSlideMm: part.leastSlideMm + lengthMm,
      }),
    );
    return { ...grid, parts: dealt, ...(movement && { movement }) };
  });

/** The keep-outs with every part so far the way that widens; written without regard to how the search does it. */
function slid({ keepOuts, parts }: SlidingBase, slidesMm: readonly number[]): SlidingBase['keepOuts'] {
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
const stricter = (base: SlidingBase, byMm: number): SlidingBase => ({
  ...base,
  edgeMarginMm: base.edgeMarginMm + byMm,
  keepOuts: base.keepOuts.map((one) => ({ ...one, clearanceMm: one.clearanceMm + byMm })),
});

describe('widestBase, laws', () => {
  test('every setting is one: within its limits, and the layout drops no more holes than it says', () => {
    let [settled, dropping] = [0, 0];
    fc.assert(
      fc.property(bases, (base) => {
        for (const { droppedCount, spreadMm, spreadBoundMm, slides, ...setting } of widestBase(base)
          .settings) {
          const slidesMm = slides.map(({ slideMm }) => slideMm);
          for (const [i, slideMm] of slidesMm.entries()) {
            expect(slideMm).toBeGreaterThanOrEqual(base.parts[i]?.leastSlideMm ?? Number.NaN);
            expect(slideMm).toBeLessThanOrEqual(base.parts[i]?.mostSlideMm ?? Number.NaN);
          }
          expect(spreadMm).toBeCloseTo(
            slidesMm.reduce((sum, slideMm) => sum + slideMm, 0),
            6,
          );
          expect(spreadBoundMm).toBeGreaterThanOrEqual(spreadMm);
          expect(spreadBoundMm - spreadMm).toBeLessThanOrEqual(GAP_MM);
          expect(setting.keepOuts).toEqual(slid(base, slidesMm));
          expect(layoutHoles({ ...base, ...setting }).dropped.length).toBeLessThanOrEqual(droppedCount);
          settled += 1;
          dropping += droppedCount > 0 ? 1 : 0;
        }
      }),
    );
    expect(settled).toBeGreaterThan(20);
    expect(dropping).toBeGreaterThan(0);
  });

  test('no setting tried at random is wider than the bound with as many holes and a bit to spare', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    let rivals = 0;
    fc.assert(
      fc.property(
        bases,
        fc.array(fc.array(share, { minLength: 5, maxLength: 5 }), { minLength: 40, maxLength: 40 }),
        (base, tries) => {
          const { settings, proven } = widestBase(base);
          fc.pre(proven);
          const asked = stricter(base, GAP_MM);
          for (const [i, [u = 0, v = 0, ...shares]] of tries.entries()) {
            // Half of the tries begin near the answer, and slide no less than it.
            const near = i % 2 === 0 ? settings[i % Math.max(1, settings.length)] : undefined;
            const at = near?.firstHole ?? { xMm: u * base.panel.lengthMm, yMm: v * base.panel.widthMm };
            const slidesMm = base.parts.map(({ leastSlideMm, mostSlideMm }, j) => {
              const from = near?.slides[j]?.slideMm ?? leastSlideMm;
              return from + (shares[j] ?? 0) ** 2 * (mostSlideMm - from);
            });
            const firstHole = near
              ? {
                  xMm: Math.min(base.panel.lengthMm, Math.max(0, at.xMm + (u - 0.5) * 4)),
                  yMm: Math.min(base.panel.widthMm, Math.max(0, at.yMm + (v - 0.5) * 4)),
                }
              : at;
            const { dropped } = layoutHoles({ ...asked, keepOuts: slid(asked, slidesMm), firstHole });
            if (dropped.length > base.mostDroppedCount) continue;
            rivals += 1;
            const rival = slidesMm.reduce((sum, slideMm) => sum + slideMm, 0);
            const bound = settings.filter(({ droppedCount }) => droppedCount <= dropped.length).at(-1);
            expect(rival).toBeLessThanOrEqual((bound?.spreadBoundMm ?? Number.NEGATIVE_INFINITY) + 1e-6);
          }
        },
      ),
    );
    expect(rivals).toBeGreaterThan(100);
  });

  test('one part over holes that cannot shift: as wide as the layout finds, slide by slide', () => {
    // The margin leaves the grid one place, so all that is left is how far the part goes.
    const tight = fc.tuple(bases, mm(0, 20)).map(([base, edgeMarginMm]): SlidingBase => {
      const lengthMm = (base.columns - 1 + (base.staggered && base.rows > 1 ? 0.5 : 0)) * base.pitchXMm;
      const aroundMm = 2 * edgeMarginMm + base.holeDiameterMm;
      const panel = { lengthMm: lengthMm + aroundMm, widthMm: (base.rows - 1) * base.pitchYMm + aroundMm };
      const keepOuts = base.keepOuts.filter(({ shape }) => shape !== 'band');
      return { ...base, panel, edgeMarginMm, keepOuts, mostDroppedCount: 0, parts: base.parts.slice(0, 1) };
    });
    let hindered = 0;
    fc.assert(
      fc.property(tight, (base) => {
        const [{ leastSlideMm, mostSlideMm }] = base.parts as [SlidingPart];
        const awayMm = base.edgeMarginMm + base.holeDiameterMm / 2;
        const clear = (slideMm: number, byMm: number) => {
          const asked = { ...stricter(base, byMm), edgeMarginMm: base.edgeMarginMm };
          const firstHole = { xMm: awayMm, yMm: awayMm };
          return layoutHoles({ ...asked, keepOuts: slid(asked, [slideMm]), firstHole }).dropped.length === 0;
        };
        const [setting] = widestBase(base).settings;
        const STEPS = 200;
        for (let i = 0; i <= STEPS; i++) {
          const slideMm = mostSlideMm - ((mostSlideMm - leastSlideMm) * i) / STEPS;
          if (setting && slideMm <= setting.spreadMm + GAP_MM) break;
          expect(clear(slideMm, GAP_MM)).toBe(false);
          hindered += 1;
        }
        if (setting) expect(clear(setting.spreadMm, 0)).toBe(true);
      }),
    );
    expect(hindered).toBeGreaterThan(1000);
  });

  test('turned by half a turn, the base is as wide', () => {
    const opposite = { left: 'right', right: 'left', front: 'back', back: 'front' } as const;
    fc.assert(
      fc.property(bases, (staggeredBase) => {
        // Half a turn takes a row that begins late to one that begins early.
        const base = { ...staggeredBase, staggered: false };
        const { panel, movement } = base;
        const turned: SlidingBase = {
          ...base,
          keepOuts: base.keepOuts.map((keepOut) => halfTurned(keepOut, panel)),
          parts: base.parts.map((part) => ({ ...part, widensTowards: opposite[part.widensTowards] })),
          ...(movement && {
            movement: { ...movement, fixedLineYMm: panel.widthMm - movement.fixedLineYMm },
          }),
        };
        const [one, other] = [widestBase(base), widestBase(turned)];
        fc.pre(one.proven && other.proven);
        for (const setting of widestBase(stricter(turned, 2 * GAP_MM)).settings) {
          const bound = one.settings
            .filter(({ droppedCount }) => droppedCount <= setting.droppedCount)
            .at(-1);
          expect(setting.spreadMm).toBeLessThanOrEqual((bound?.spreadBoundMm ?? Number.NaN) + 1e-6);
        }
      }),
      { numRuns: 50 },
    );
  });

  test('one more keep-out never widens it; dropping more never narrows it', () => {
    fc.assert(
      fc.property(bases, (base) => {
        const [extra, ...rest] = base.keepOuts;
        fc.pre(extra !== undefined);
        const without: SlidingBase = {
          ...base,
          keepOuts: rest,
          parts: base.parts.map((part) => ({
            ...part,
            keepOutIds: part.keepOutIds.filter((id) => id !== extra.id),
          })),
        };
        const freer = widestBase(without);
        fc.pre(freer.proven);
        let widestMm = Number.NEGATIVE_INFINITY;
        for (const setting of widestBase(stricter(base, 2 * GAP_MM)).settings) {
          const bound = freer.settings
            .filter(({ droppedCount }) => droppedCount <= setting.droppedCount)
            .at(-1);
          expect(setting.spreadMm).toBeLessThanOrEqual((bound?.spreadBoundMm ?? Number.NaN) + 1e-6);
          expect(setting.spreadMm).toBeGreaterThan(widestMm);
          widestMm = setting.spreadMm;
        }
      }),
      { numRuns: 50 },
    );
  });
});
