import fc from 'fast-check';
import type { Plan } from '../src/index.ts';
import { wholeBench } from './whole-bench.ts';

/** What a section may have to go by: a top, what lies under it and in it, and its grid. */
export type Around = Pick<Plan, 'top' | 'base' | 'holes'>;

/** A section of any kind for what is around it; nothing where there can be none. */
export type AnySection<T> = fc.Arbitrary<(around: Around) => T | undefined>;

export const pick = fc.constantFrom;
export const share = fc.integer({ min: 0, max: 16 }).map((sixteenths) => sixteenths / 16);
export const halves = (min: number, max: number) =>
  fc.integer({ min: min * 2, max: max * 2 }).map((value) => value / 2);

type Section<K extends keyof Plan> = NonNullable<Plan[K]>;

const bench = wholeBench();
const ofBench = <K extends keyof Plan>(key: K) => bench[key] as Section<K>;

/** Too wide a rabbet and too narrow a one, along the grain and across it, at an edge and off it. */
export const anyStrip: AnySection<Section<'strip'>> = fc
  .record({
    ...{ thicknessMm: halves(1, 8), widerMm: pick(-2, 0, 0.2, 1, 1.6, 4), deepMm: halves(1, 10) },
    ...{
      expansionUmPerMK: pick(10, 19, 24),
      densityKgPerM3: pick(2700, 8500),
      buildingDayC: pick(-5, 20, 35),
    },
    ...{ toleranceMm: pick(0, 0.05, 0.5), endDistanceMm: pick(0, 5, 25), mostPitchMm: pick(20, 100, 330) },
    fixedScrew: pick('first' as const, 'middle' as const, 'last' as const),
    ...{ shankDiameterMm: pick(3, 4), headDiameterMm: pick(6, 8), headHeightMm: pick(1.5, 2.2) },
    ...{ headBelowFaceMm: pick(0, 0.3, 3), screwLengthMm: pick(6, 12, 25, 60) },
    ...{ slotClearanceMm: pick(0, 0.3), endClearanceMm: pick(0, 1) },
  })
  .map(({ widerMm, deepMm, ...strip }) => ({ top }) => {
    const [inlay] = top.inlays;
    return (
      inlay && {
        ...strip,
        inlay: inlay.name,
        rabbetWidthMm: Math.max(1, Math.min(inlay.lengthMm, inlay.widthMm) + widerMm),
        rabbetDepthMm: Math.min(deepMm, top.thicknessMm - 1),
      }
    );
  });

export const anyScrews: AnySection<Section<'screws'>> = fc
  .record({
    lengthMm: pick<(number | 'choose')[]>('choose', 25, 40, 70),
    stockLengthsMm: pick([40], [25, 30, 40, 50], [16, 60, 80]),
    layersMm: pick<number[][]>([], [2], [1.6, 4]),
    ...{ washerDiameterMm: pick(5, 9, 20), threadShare: pick(0.5, 0.7, 1), tipLengthMm: pick(0, 5) },
    ...{ leastThreadMm: pick(5, 20), leastStockMm: pick(0, 5, 8), leadHoleShare: pick(0, 0.5, 1) },
    ...{ leadBitTipLengthMm: pick(0, 2), shankBitTipLengthMm: pick(0, 2.5), stopLengthMm: pick(5, 20) },
  })
  .map((screws) => () => screws);

export const anyTemplate: AnySection<Section<'template'>> = fc
  .record({
    ...{ columns: fc.integer({ min: 1, max: 7 }), rows: fc.integer({ min: 1, max: 5 }) },
    ...{ leastPinSpanMm: pick(0, 50, 200), playInTemplateMm: pick(0, 0.08), playInHoleMm: pick(0, 0.15) },
    ...{ datumErrorMm: pick(0, 0.15, 2), boringErrorMm: pick(0, 0.1) },
    templatePitchErrorMm: pick(0, 0.02, 0.5),
  })
  .map(({ leastPinSpanMm, ...template }) => ({ holes }) => {
    const columns = Math.min(template.columns, holes.columns);
    const rows = Math.min(template.rows, holes.rows);
    const diagonalMm = Math.hypot((columns - 1) * holes.pitchXMm, (rows - 1) * holes.pitchYMm);
    if (columns * rows === 1) return undefined;
    return { ...template, columns, rows, leastPinSpanMm: Math.min(leastPinSpanMm, diagonalMm) };
  });

/** Of one pin to five, some of them off the pitch. */
export const anyAccessories: AnySection<Section<'accessories'>> = fc
  .array(
    fc.record({
      at: fc.uniqueArray(fc.tuple(fc.nat(4), fc.nat(3)), { minLength: 1, maxLength: 5, selector: String }),
      offMm: fc.array(pick(0, 0, 0.1, -0.3, 12), { minLength: 5, maxLength: 5 }),
      playMm: pick(0, 0.5, 1),
      ...{ pinPositionErrorMm: pick(0, 0.1), holePositionErrorMm: pick(0, 0.2) },
    }),
    { maxLength: 2 },
  )
  .map(
    (some) =>
      ({ holes: { diameterMm, pitchXMm, pitchYMm } }) =>
        some.map(({ at, offMm, playMm, ...errors }, i) => ({
          ...{ ...errors, name: `thing ${i + 1}` },
          pins: at.map(([x, y], j) => ({ xMm: x * pitchXMm + (offMm[j] ?? 0), yMm: y * pitchYMm })),
          ...{ leastPinMm: diameterMm - playMm - 0.1, mostPinMm: diameterMm - playMm },
          ...{ leastHoleMm: diameterMm, mostHoleMm: diameterMm + 0.1 },
        })),
  );

export const anyLoad: AnySection<Section<'load'>> = fc
  .record({
    ...{ left: fc.nat(3), right: fc.nat(3), spreadKg: pick(0, 25, 100), mostSagMm: pick(0.05, 1.5) },
    things: fc.array(fc.record({ at: share, massKg: pick(0, 5, 40) }), { maxLength: 4 }),
  })
  .map(({ left, right, things, ...load }) => ({ top, base: { members } }) => {
    const leftSupport = members[left % members.length]?.name;
    const others = members.filter(({ name }) => name !== leftSupport);
    const rightSupport = others[right % others.length]?.name;
    if (!leftSupport || !rightSupport) return undefined;
    const heavyThings = things.map(({ at, massKg }, i) => ({
      ...{ name: `heavy thing ${i + 1}`, xMm: at * top.lengthMm, massKg },
    }));
    return { ...load, leftSupport, rightSupport, heavyThings };
  });

/** On the top, at its edge and beside it. */
export const anyCables: AnySection<Section<'cables'>> = fc
  .record({
    at: fc.tuple(pick(-0.1, 0, 0.13, 0.37, 0.71, 1), pick(-0.1, 0, 0.13, 0.5, 0.93, 1)),
    bundle: fc.array(fc.record({ diameterMm: pick(6, 6, 6, 8.5), count: pick(1, 2, 3, 7, 12, 30) }), {
      ...{ minLength: 1, maxLength: 3 },
    }),
    ...{ holeDiameterMm: pick(20, 60, 80), mostFillPct: pick(20, 40, 100), heldBelowMm: pick(0, 400) },
    ...{ cableLengthMm: pick(0, 600, 1400), slackPct: pick(0, 15) },
  })
  .map(({ at: [x, y], bundle, ...cables }) => ({ top }) => ({
    ...cables,
    ...{ xMm: x * top.lengthMm, yMm: y * top.widthMm },
    bundle: bundle.map((kind, i) => ({ ...kind, name: `cable ${i + 1}` })),
  }));

export const anyGlueUp: AnySection<Section<'glueUp'>> = fc
  .record({
    boardCount: fc.oneof(fc.constant('choose' as const), fc.integer({ min: 1, max: 12 })),
    ...{ leastWidthMm: pick(60, 100), mostWidthMm: pick(100, 150, 400), planingMm: pick(0, 4) },
    ...{ jointingMm: pick(0, 6), flatteningMm: pick(0, 2), trimWidthMm: pick(0, 10) },
    ...{ trimLengthMm: pick(0, 40), order: pick('alternate' as const, 'match' as const) },
    ...{ clampForceN: pick(500, 5000), mostMoisturePct: pick(7, 12) },
  })
  .map(({ mostMoisturePct, ...glueUp }) => () => {
    const { glue } = ofBench('glueUp');
    return { ...glueUp, glue: { ...glue, mostMoisturePct } };
  });

export const anyCalendar: AnySection<Section<'calendar'>> = fc
  .record({
    turned: pick('once' as const, 'after each coat' as const),
    ...{ layHours: pick(0.5, 1, 3), recoatHours: pick(0, 6, 14, 30), longerHours: pick(0, 10, 48) },
    ...{ turnHours: pick(0, 8, 20), dryingDays: pick(0, 5, 7.5), startsHours: pick(6, 9, 17, 23) },
    readyByDays: pick(2, 10, 30),
  })
  .map(({ longerHours, ...calendar }) => () => ({
    ...{ ...ofBench('calendar'), ...calendar },
    recoatWithinHours: calendar.recoatHours + longerHours,
  }));

export const anyShop: AnySection<Section<'shop'>> = fc
  .record({
    air: fc.record({ temperatureC: pick(2, 20, 35), relativeHumidityPct: pick(10, 48, 85) }),
    ...{ surfaceC: pick(5, 12, 19), mostMoisturePct: pick(7, 12) },
  })
  .map((shop) => () => ({ ...ofBench('shop'), ...shop }));

/** As the bench has it: what is on offer has tests of its own. */
export const anyStock: AnySection<Section<'stock'>> = fc.constant(() => ofBench('stock'));

export const anyLift: AnySection<Plan['base']['lift']> = fc
  .record({
    ...{ leastHeightMm: halves(500, 800), riseMm: halves(0, 600), lowestWorkMm: halves(500, 900) },
    ...{ widerMm: halves(0, 500), capacityKg: pick(20, 60, 150), frameMassKg: pick(0, 18) },
    leastMarginPct: pick(0, 20),
  })
  .map(({ riseMm, widerMm, ...lift }) => () => ({
    ...lift,
    mostHeightMm: lift.leastHeightMm + riseMm,
    highestWorkMm: lift.lowestWorkMm + widerMm,
  }));
