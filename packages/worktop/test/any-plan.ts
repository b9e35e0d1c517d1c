import { woods } from '@scantling/species';
import fc from 'fast-check';
import type { Plan } from '../src/index.ts';
import {
  type Around,
  anyAccessories,
  anyCables,
  anyCalendar,
  anyGlueUp,
  anyLift,
  anyLoad,
  anyScrews,
  anyShop,
  anyStock,
  anyStrip,
  anyTemplate,
  halves,
  pick,
  share,
} from './any-sections.ts';
import { plainBench } from './plain-bench.ts';

const known = woods.filter(({ movement }) => movement.radialPerPct && movement.tangentialPerPct);

const top = fc.record({
  ...{ lengthMm: halves(300, 1600), widthMm: halves(200, 800), thicknessMm: halves(18, 60) },
  species: pick(...known.map(({ commonName }) => commonName)),
  cut: pick('flatsawn' as const, 'quartersawn' as const),
  moisturePct: pick(3, 6, 8, 8, 8, 10, 12, 16),
});

const inlay = fc.record({
  ...{ at: fc.tuple(pick(0, 0.05, 0.3, 0.9, 1), pick(0, 0.05, 0.3, 0.9, 1)), across: fc.boolean() },
  ...{ longMm: halves(60, 600), wideMm: halves(10, 40), clearanceMm: halves(0, 12) },
});

const member = fc.record({
  ...{ at: fc.tuple(share, share), lengthMm: halves(20, 400), widthMm: halves(20, 400) },
  clearanceMm: halves(0, 8),
  screws: fc.array(fc.record({ at: fc.tuple(share, share), slotMm: pick(6, 7, 9, 14, 20) }), {
    maxLength: 3,
  }),
});

const sliding = fc.record({
  widensTowards: pick('left' as const, 'right' as const, 'front' as const, 'back' as const),
  ...{ leastSlideMm: halves(-60, 20), rangeMm: halves(0, 80) },
  slide: fc.oneof(fc.constant('choose' as const), share),
});

const holes = fc.record({
  ...{ diameterMm: pick(8, 15.875, 20, 35), pitchXMm: halves(40, 200), pitchYMm: halves(40, 200) },
  ...{ columns: fc.integer({ min: 1, max: 7 }), rows: fc.integer({ min: 1, max: 5 }) },
  ...{ edgeMarginMm: pick(0, 10, 40), blocked: pick('fail' as const, 'leave out' as const) },
  first: fc.oneof(fc.constant('choose' as const), fc.record({ xMm: halves(0, 200), yMm: halves(0, 200) })),
});

/** A top over a few members, wherever they happen to lie, with their screws, some of them sliding. */
const around: fc.Arbitrary<Around> = fc
  .record({
    ...{ top, holes, inlays: fc.array(inlay, { maxLength: 2 }) },
    members: fc.array(member, { minLength: 1, maxLength: 4 }),
    line: fc.oneof(fc.constant('choose' as const), share),
    clear: fc.record({
      ...{ shankDiameterMm: pick(4, 6), slotClearanceMm: pick(0, 0.5, 1), screwClearanceMm: pick(0, 5, 10) },
    }),
    sliding: fc.array(sliding, { maxLength: 2 }),
  })
  .map((given) => {
    const { lengthMm, widthMm } = given.top;
    const placed = given.members.map(({ at: [x, y], ...rest }, i) => ({
      ...{ ...rest, name: `member ${i + 1}` },
      ...{ xMm: x * (lengthMm - rest.lengthMm), yMm: y * (widthMm - rest.widthMm) },
    }));
    const fixings = placed.flatMap(({ screws, ...under }) =>
      screws.map(({ at: [x, y], slotMm }, j) => ({
        ...{ name: `${under.name}, screw ${j + 1}`, slotMm },
        ...{ xMm: under.xMm + x * under.lengthMm, yMm: under.yMm + y * under.widthMm },
      })),
    );
    const lone = { name: 'lone screw', slotMm: 7, xMm: lengthMm / 3, yMm: widthMm / 2 };
    return {
      top: {
        ...given.top,
        inlays: given.inlays.map(({ at: [x, y], across, longMm, wideMm, clearanceMm }, i) => {
          const long = Math.min(longMm, across ? widthMm : lengthMm);
          const [inX, inY] = across ? [wideMm, long] : [long, wideMm];
          const size = { lengthMm: inX, widthMm: inY, clearanceMm };
          return { name: `inlay ${i + 1}`, ...size, xMm: x * (lengthMm - inX), yMm: y * (widthMm - inY) };
        }),
      },
      base: {
        ...given.clear,
        members: placed.map(({ screws: _, ...under }) => under),
        fixings: fixings.length ? fixings : [lone],
        fixedLineMm: given.line === 'choose' ? given.line : given.line * widthMm,
        sliding: given.sliding.slice(0, placed.length).map(({ rangeMm, slide, ...part }, i) => ({
          ...{ ...part, name: `part ${i + 1}`, members: [`member ${i + 1}`] },
          fixings: fixings.map(({ name }) => name).filter((name) => name.startsWith(`member ${i + 1},`)),
          mostSlideMm: part.leastSlideMm + rangeMm,
          slideMm: slide === 'choose' ? slide : part.leastSlideMm + slide * rangeMm,
        })),
      },
      holes: given.holes,
    };
  });

const climate = (...humidities: readonly number[]) =>
  fc.record({ temperatureC: pick(5, 18, 24, 30), relativeHumidityPct: pick(...humidities) });

const maybe = <T>(section: fc.Arbitrary<T>) => fc.option(section, { nil: undefined });

/** Plans of any sections put together at random: hardly one can be built from, and each is an answer. */
export const anyPlan: fc.Arbitrary<Plan> = fc
  .record({
    ...{ around, driest: climate(5, 25, 32, 45), wettest: climate(45, 62, 75, 90) },
    ...{ strip: maybe(anyStrip), screws: maybe(anyScrews), template: maybe(anyTemplate) },
    ...{ accessories: maybe(anyAccessories), load: maybe(anyLoad), cables: maybe(anyCables) },
    ...{ glueUp: maybe(anyGlueUp), calendar: maybe(anyCalendar), shop: maybe(anyShop) },
    ...{ stock: maybe(anyStock), lift: maybe(anyLift), coats: fc.integer({ min: 1, max: 5 }) },
  })
  .map(({ around: so, driest, wettest, coats, lift, ...sections }) => ({
    ...plainBench,
    ...so,
    seasons: { driest, wettest },
    base: { ...so.base, lift: lift?.(so) },
    ...{ strip: sections.strip?.(so), screws: sections.screws?.(so), template: sections.template?.(so) },
    ...{ accessories: sections.accessories?.(so), load: sections.load?.(so), cables: sections.cables?.(so) },
    ...{ glueUp: sections.glueUp?.(so), calendar: sections.calendar?.(so), shop: sections.shop?.(so) },
    stock: sections.stock && { ...sections.stock(so), containers: [] },
    finish: { ...plainBench.finish, coats },
  })) as fc.Arbitrary<Plan>;
