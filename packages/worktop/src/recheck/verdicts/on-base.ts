import type { Rectangle } from '../../plan/place.ts';
import type { PlannedFixing, WorktopPlan } from '../../result.ts';
import { apartMm, type Neighbour, neighbours } from '../neighbours.ts';
import { atLeast, graver, lowest, type Verdicts } from './expected.ts';

/** The slot of a screw, its screw midway in the room that it has. */
function slotOf({ plan: { base } }: WorktopPlan, fixing: PlannedFixing): Rectangle {
  const { xMm, yMm, slotMm, screwFromInnerEndMm: room } = fixing;
  const innerMm = room ? (room.leastMm + room.mostMm) / 2 : slotMm / 2;
  const frontMm = yMm < base.fixedLineMm ? yMm - slotMm + innerMm : yMm - innerMm;
  const wideMm = base.shankDiameterMm;
  return { xMm: xMm - wideMm / 2, yMm: frontMm, lengthMm: wideMm, widthMm: slotMm };
}

const within = (a: Rectangle, b: Rectangle) =>
  a.xMm >= b.xMm &&
  a.yMm >= b.yMm &&
  a.xMm + a.lengthMm <= b.xMm + b.lengthMm &&
  a.yMm + a.widthMm <= b.yMm + b.widthMm;

/** What a slot is at its widest: a round hole, or as wide as the shank. */
const openingMm = ({ plan: { base } }: WorktopPlan, slotMm: number) =>
  slotMm <= base.shankDiameterMm + 2 * base.slotClearanceMm + 1e-9 ? slotMm : base.shankDiameterMm;

/** How far holes stay from each of some things. */
function clearances({ holes, plan }: WorktopPlan, things: readonly Neighbour[]) {
  const radiusMm = plan.holes.diameterMm / 2;
  return things.flatMap(({ nearestMm, neededMm }) =>
    holes.map(({ xMm, yMm }) => ({ clearMm: nearestMm(xMm, yMm) - radiusMm, neededMm })),
  );
}

export const onBase: Verdicts = {
  holes: (result) => {
    const { plan, holes, blockedHoles, checks } = result;
    const all = neighbours(result);
    const counts = [plan.base.members.length, plan.top.inlays.length, plan.base.fixings.length, 4];
    const kinds = counts.map((count, i) => {
      const from = counts.slice(0, i).reduce((sum, one) => sum + one, 0);
      return clearances(result, all.slice(from, from + count));
    });
    const leftOut = plan.holes.blocked === 'leave out' && holes.length > 0;
    const nearest = kinds.flatMap((kind) => lowest(kind, ({ clearMm }) => clearMm)?.value ?? []);
    const pairs = [
      ...kinds.flat(),
      ...(leftOut ? [] : blockedHoles.flatMap(({ conflicts }) => conflicts)).map((conflict) => ({
        clearMm: conflict.clearanceMm,
        neededMm: conflict.neededMm,
      })),
    ];
    const spareMm = ({ clearMm, neededMm }: (typeof pairs)[number]) => clearMm - neededMm;
    const leastSpareMm = Math.min(...pairs.map(spareMm));
    // Of several that are as tight any may be named.
    const claimedMm = checks.find(({ id }) => id === 'holes')?.margin?.min ?? Number.NaN;
    const worst =
      pairs.find((pair) => pair.neededMm === claimedMm && spareMm(pair) <= leastSpareMm + 1e-9) ??
      lowest(pairs, spareMm)?.item;
    const blocked = blockedHoles.length > 0;
    return {
      status: graver(blocked && !leftOut, blocked),
      figures: [holes.length, blockedHoles.length, ...nearest],
      ...(worst ? { margin: [worst.clearMm, worst.neededMm] as const } : {}),
    };
  },
  slots: ({ fixings }) => {
    const tight = lowest(fixings, ({ slotMm, neededSlotMm }) => slotMm - neededSlotMm);
    const travelMm = Math.max(...fixings.map(({ swellMm, shrinkMm }) => swellMm + shrinkMm));
    if (!tight) return { status: 'pass', figures: [] };
    const { slotMm, neededSlotMm } = tight.item;
    return {
      status: graver(!atLeast(tight.value, 0)),
      figures: [slotMm, neededSlotMm, travelMm],
      margin: [slotMm, neededSlotMm],
    };
  },
  screws: (result) => {
    const { plan, fixings } = result;
    const { base, top, strip, screws } = plan;
    const slots = fixings.map((fixing) => slotOf(result, fixing));
    const panel = { xMm: 0, yMm: 0, lengthMm: top.lengthMm, widthMm: top.widthMm };
    const astray = slots.some(
      (slot) => !within(slot, panel) || !base.members.some((member) => within(slot, member)),
    );
    const unknown = top.inlays.filter(({ name }) => !(screws && strip?.inlay === name));
    const under = fixings.some((fixing) =>
      unknown.some((inlay) => apartMm(fixing.xMm, fixing.yMm, inlay) < base.shankDiameterMm / 2),
    );
    const roundMm = base.shankDiameterMm + 2 * base.slotClearanceMm;
    const holding = fixings.filter(
      ({ yMm, slotMm }) =>
        Math.abs(yMm - base.fixedLineMm) <= base.slotClearanceMm && slotMm <= roundMm + 1e-9,
    );
    const metal = fixings.flatMap(({ leftInMemberMm }) => leftInMemberMm ?? []);
    return {
      status: graver(astray, under || holding.length === 0),
      figures: [fixings.length, holding.length, ...(metal.length ? [Math.min(...metal)] : [])],
    };
  },
  'through-face': ({ plan, screws }) => {
    if (!plan.screws || !screws) return null;
    const leastMm = Math.min(...screws.at.map(({ stockAboveTipMm }) => stockAboveTipMm));
    const needed = plan.screws.leastStockMm;
    // What does not reach the wood needs no hole in it: that is for its hold to say.
    const unbored = screws.settings.some(
      ({ reasons, fixings }) =>
        reasons.length > 0 &&
        screws.at.some(({ name, penetrationMm }) => fixings.includes(name) && penetrationMm > 0),
    );
    return {
      status: graver(!atLeast(leastMm, needed) || unbored),
      figures: [screws.lengthMm, leastMm],
      margin: [leastMm, needed],
    };
  },
  engagement: ({ plan, screws }) => {
    if (!plan.screws || !screws) return null;
    const leastMm = Math.min(...screws.at.map(({ threadInWoodMm }) => threadInWoodMm));
    const { leastThreadMm, stockLengthsMm } = plan.screws;
    const out = screws.at.some(({ penetrationMm }) => !(penetrationMm > 0));
    const offered = stockLengthsMm.some((mm) => Math.abs(mm - screws.lengthMm) <= 1e-6);
    return {
      status: graver(out || !atLeast(leastMm, leastThreadMm), !offered),
      figures: [screws.layersMm, screws.threadLengthMm, leastMm],
      margin: [leastMm, leastThreadMm],
    };
  },
  washers: (result) => {
    const { plan, fixings } = result;
    if (!plan.screws) return null;
    const widest = Math.max(...fixings.map(({ slotMm }) => openingMm(result, slotMm)));
    const covering = Math.max(...fixings.map(({ coveringWasherMm }) => coveringWasherMm));
    const { washerDiameterMm } = plan.screws;
    return {
      status: graver(!(washerDiameterMm > widest)),
      figures: [washerDiameterMm, widest, covering],
      margin: [washerDiameterMm, widest],
    };
  },
  cover: ({ plan, swing }) => {
    const { top, base } = plan;
    const changes = [swing.swellPct / 100, -swing.shrinkPct / 100];
    const edgesMm = (yMm: number) => changes.map((change) => yMm + (yMm - base.fixedLineMm) * change);
    const overhangs = base.members.map(({ xMm, yMm, lengthMm, widthMm }) =>
      Math.min(
        xMm,
        top.lengthMm - xMm - lengthMm,
        yMm - Math.max(...edgesMm(0)),
        Math.min(...edgesMm(top.widthMm)) - yMm - widthMm,
      ),
    );
    const leastMm = Math.min(...overhangs);
    return { status: graver(false, leastMm < 0), figures: [leastMm], margin: [leastMm, 0] };
  },
  template: ({ plan, template }) => {
    if (!plan.template || !template) return null;
    const { steps, leastStepCount, unreached, farthestOff, tightest } = template;
    return {
      status: graver(
        unreached.length > 0 || steps.length === 0,
        tightest !== null && !(tightest.leftMm >= -1e-9),
      ),
      figures: [
        steps.length,
        leastStepCount,
        unreached.length,
        ...(farthestOff ? [farthestOff.worstCaseMm, farthestOff.rootSumSquareMm] : []),
        ...(tightest ? [tightest.leftMm] : []),
      ],
      ...(tightest && unreached.length === 0 ? { margin: [tightest.leftMm, 0] as const } : {}),
    };
  },
  accessories: ({ plan, accessories }) => {
    if (!plan.accessories?.length || !accessories) return null;
    const seasons = ['now', 'swollen', 'shrunken'] as const;
    const fits = accessories.flatMap(({ fit }) => (fit ? seasons.map((season) => fit[season]) : []));
    const margins = fits.map(({ worstCase }) => worstCase.marginMm);
    const everywhere = accessories.every(({ fit }) => fit);
    const rarely = fits.some(({ rootSumSquare }) => !atLeast(rootSumSquare.marginMm, 0));
    return {
      status: graver(
        !everywhere || rarely,
        margins.some((mm) => !atLeast(mm, 0)),
      ),
      figures: [...accessories.map(({ placeCount }) => placeCount), ...margins],
      ...(everywhere ? { margin: [Math.min(...margins), 0] as const } : {}),
    };
  },
};
