import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layoutHoles, type SlidingBase, type SlidingPart, widestBase } from '../src/index.ts';
import { GAP_MM } from './grid-arbitraries.ts';
import { asPolygon, halfTurned, mm } from './shapes.ts';
import { bases, slid, stricter } from './sliding-arbitraries.ts';

describe('widestBase, laws', () => {
  test('every setting is one: within its limits, and the layout drops no more holes than it says', () => {
    let [settled, dropping] = [0, 0];
    fc.assert(
      fc.property(bases, (base) => {
        const { settings, proven } = widestBase(base);
        for (const { droppedCount, spreadMm, spreadBoundMm, slides, ...setting } of settings) {
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
          if (proven) expect(spreadBoundMm - spreadMm).toBeLessThanOrEqual(GAP_MM);
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

  test('told where the grid begins, it finds what it found by itself, and never more', () => {
    let compared = 0;
    fc.assert(
      fc.property(bases, (base) => {
        const { settings, proven } = widestBase(base);
        fc.pre(proven);
        for (const { droppedCount, spreadMm, spreadBoundMm, firstHole } of settings) {
          const told = (grid: SlidingBase) =>
            widestBase({ ...grid, firstHole })
              .settings.filter((one) => one.droppedCount <= droppedCount)
              .at(-1);
          expect(told(base)).toMatchObject({ firstHole });
          expect(told(base)?.spreadMm ?? Number.NaN).toBeGreaterThanOrEqual(spreadMm - 1e-6);
          const withMore = told(stricter(base, GAP_MM))?.spreadMm ?? Number.NEGATIVE_INFINITY;
          expect(withMore).toBeLessThanOrEqual(spreadBoundMm + 1e-6);
          compared += 1;
        }
      }),
    );
    expect(compared).toBeGreaterThan(20);
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
          ...(base.keepIn && {
            keepIn: { ...base.keepIn, areas: base.keepIn.areas.map((area) => halfTurned(area, panel)) },
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
        // A part has to keep something.
        const extra = base.keepOuts.find(
          ({ id }) => !base.parts.some(({ keepOutIds: [only, ...more] }) => only === id && more.length === 0),
        );
        if (!extra) return;
        const rest = base.keepOuts.filter((one) => one !== extra);
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

  test('a rectangle given by its corners is as wide', () => {
    fc.assert(
      fc.property(bases, (base) => {
        const byCorners = { ...base, keepOuts: base.keepOuts.map(asPolygon) };
        const [one, other] = [widestBase(base), widestBase(byCorners)];
        fc.pre(one.proven && other.proven);
        for (const [given, { settings }] of [
          [base, other],
          [byCorners, one],
        ] as const) {
          for (const setting of widestBase(stricter(given, 2 * GAP_MM)).settings) {
            const bound = settings.filter(({ droppedCount }) => droppedCount <= setting.droppedCount).at(-1);
            expect(setting.spreadMm).toBeLessThanOrEqual((bound?.spreadBoundMm ?? Number.NaN) + 1e-6);
          }
        }
      }),
      { numRuns: 50 },
    );
  });
});
