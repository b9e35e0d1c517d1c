import fc from 'fast-check';
import { type Plan, planWorktop, type WorktopPlan } from '../src/index.ts';
import { plainBench } from './plain-bench.ts';

type Base = Plan['base'];

const shankDiameterMm = 4;
const halves = (min: number, max: number) =>
  fc.integer({ min: min * 2, max: max * 2 }).map((value) => value / 2);
const share = fc.integer({ min: 0, max: 8 }).map((eighths) => eighths / 8);
const open = fc.constant('choose' as const);

const members = fc.array(
  fc.record({
    at: fc.tuple(share, share),
    ...{ lengthMm: halves(20, 80), widthMm: halves(20, 80), clearanceMm: halves(2, 8) },
    screws: fc.array(fc.record({ at: fc.tuple(share, share), slotMm: fc.constantFrom(5, 5, 14) }), {
      maxLength: 2,
    }),
  }),
  { minLength: 1, maxLength: 3 },
);

/**
 * Small tops over a few members, with screws that stand within them: what keeps holes from a member keeps them from its
 * screws. Any choice may be open.
 */
export const plans = (
  ways: readonly ('left' | 'right' | 'front' | 'back')[],
  mostParts = 2,
): fc.Arbitrary<Plan> =>
  fc
    .record({
      ...{ lengthMm: halves(250, 480), widthMm: halves(160, 320), members },
      moisturePct: fc.constantFrom(7, 8, 11),
      inlay: fc.option(fc.tuple(share, share)),
      holes: fc.record({
        ...{ diameterMm: halves(8, 20), pitchXMm: halves(40, 90), pitchYMm: halves(40, 90) },
        ...{ columns: fc.integer({ min: 1, max: 4 }), rows: fc.integer({ min: 1, max: 3 }) },
        edgeMarginMm: halves(5, 15),
        blocked: fc.constantFrom('fail' as const, 'leave out' as const),
        first: fc.oneof({ weight: 2, arbitrary: open }, fc.tuple(share, share)),
      }),
      line: fc.oneof({ weight: 2, arbitrary: open }, share),
      sliding: fc.array(
        fc.record({
          widensTowards: fc.constantFrom(...ways),
          ...{ leastSlideMm: halves(-20, 10), rangeMm: halves(0, 60) },
          slideMm: fc.oneof({ weight: 3, arbitrary: open }, share),
        }),
        { maxLength: mostParts },
      ),
    })
    .map(({ lengthMm, widthMm, moisturePct, inlay, line, holes, sliding, ...given }): Plan => {
      const placed = given.members.map(({ at: [u, v], screws, ...member }, i) => ({
        ...member,
        ...{ name: `member ${i + 1}`, screws },
        ...{ xMm: u * (lengthMm - member.lengthMm), yMm: v * (widthMm - member.widthMm) },
      }));
      const fixings = placed.flatMap(({ screws, name, xMm, yMm, ...member }) =>
        screws.map(({ at: [u, v], slotMm }, i) => ({
          ...{ name: `${name}, screw ${i + 1}`, slotMm },
          xMm: xMm + shankDiameterMm + u * (member.lengthMm - 2 * shankDiameterMm),
          yMm: yMm + shankDiameterMm + v * (member.widthMm - 2 * shankDiameterMm),
        })),
      );
      const lone = { name: 'lone screw', xMm: 10, yMm: widthMm / 2, slotMm: 5 };
      const first =
        holes.first === 'choose' ? holes.first : { xMm: holes.first[0] * 100, yMm: holes.first[1] * 100 };
      return {
        ...plainBench,
        top: {
          ...plainBench.top,
          ...{ lengthMm, widthMm, moisturePct },
          inlays: inlay
            ? [
                {
                  ...{ name: 'inlay', lengthMm: 60, widthMm: 12, clearanceMm: 3 },
                  ...{ xMm: inlay[0] * (lengthMm - 60), yMm: inlay[1] * (widthMm - 12) },
                },
              ]
            : [],
        },
        base: {
          members: placed.map(({ screws: _, ...member }) => member),
          fixings: fixings.length ? fixings : [lone],
          ...{ shankDiameterMm, slotClearanceMm: 0.5, screwClearanceMm: 2 },
          fixedLineMm: line === 'choose' ? line : line * widthMm,
          sliding: sliding.slice(0, placed.length).map(({ rangeMm, slideMm, ...part }, i) => ({
            ...part,
            name: `part ${i + 1}`,
            members: [`member ${i + 1}`],
            fixings: fixings
              .filter(({ name }) => name.startsWith(`member ${i + 1},`))
              .map(({ name }) => name),
            mostSlideMm: part.leastSlideMm + rangeMm,
            slideMm: slideMm === 'choose' ? slideMm : part.leastSlideMm + slideMm * rangeMm,
          })),
        },
        holes: { ...holes, first },
      };
    });

/** What was chosen for a place that is left open. */
export const chosenOf = (plan: Plan, path: string) => {
  const found = planWorktop(plan).chosen.find((one) => one.path === path);
  if (!found) throw new Error(`nothing was chosen for ${path}`);
  return found;
};

/** The plan as it was asked, with every choice as it was made. */
export function asChosen({ asked, chosen }: WorktopPlan): Plan {
  const settledAs = <T>(path: string, given: T) =>
    (chosen.find((one) => one.path === path)?.value ?? given) as Exclude<T, 'choose'>;
  const { base, holes, screws, glueUp } = asked;
  return {
    ...asked,
    base: {
      ...base,
      fixedLineMm: settledAs('base.fixedLine', base.fixedLineMm),
      ...(base.sliding && {
        sliding: base.sliding.map((part, i) => ({
          ...part,
          slideMm: settledAs(`base.sliding[${i}].slide`, part.slideMm),
        })),
      }),
    },
    holes: { ...holes, first: settledAs('holes.first', holes.first) },
    ...(screws && { screws: { ...screws, lengthMm: settledAs('screws.length', screws.lengthMm) } }),
    ...(glueUp && { glueUp: { ...glueUp, boardCount: settledAs('glueUp.boardCount', glueUp.boardCount) } }),
  };
}

/** Every hole asks for a bit more: what fits with next to nothing to spare may be missed by a search. */
export const stricter = (plan: Plan, byMm: number): Plan => {
  const more = <T extends { readonly clearanceMm: number }>(things: readonly T[]) =>
    things.map((thing) => ({ ...thing, clearanceMm: thing.clearanceMm + byMm }));
  const { top, base, holes } = plan;
  return {
    ...plan,
    top: { ...top, inlays: more(top.inlays) },
    base: { ...base, members: more(base.members), screwClearanceMm: base.screwClearanceMm + byMm },
    holes: { ...holes, edgeMarginMm: holes.edgeMarginMm + byMm },
  };
};

/** Turned round, where order means nothing. */
export const reversed = ({ top, base, screws, stock, ...plan }: Plan): Plan => {
  const sliding = base.sliding?.map((part) => ({
    ...part,
    members: [...part.members].reverse(),
    fixings: [...part.fixings].reverse(),
  }));
  return {
    ...plan,
    top: { ...top, inlays: [...top.inlays].reverse() },
    base: {
      ...base,
      members: [...base.members].reverse(),
      fixings: [...base.fixings].reverse(),
      ...(sliding && { sliding: sliding.reverse() }),
    } satisfies Base,
    ...(screws && { screws: { ...screws, stockLengthsMm: [...screws.stockLengthsMm].reverse() } }),
    ...(stock && { stock: { ...stock, boards: [...stock.boards].reverse() } }),
  };
};
