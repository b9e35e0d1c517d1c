import { requireInputs, requireThat } from '@scantling/rules';
import {
  drillingCare,
  measureTheTop,
  notStructuralDesign,
  stopAgainstTheChuck,
  tryOnAnOffcut,
} from './cautions.ts';
import { type DepthStopSetting, depthStopSetting } from './rules/depth-stop-setting.ts';
import {
  type ThreadEngagement,
  type ThreadEngagementInput,
  threadEngagement,
} from './rules/thread-engagement.ts';
import { requireScrewParts } from './screw-parts.ts';
import { mm, objectionTo, type Verdict, verdictOf } from './verdict.ts';

const limits = {
  drilledThroughMm: { min: 0, max: 500 },
  leadHoleShare: { min: 0, max: 1 },
  leadBitTipLengthMm: { min: 0, max: 100 },
  shankBitTipLengthMm: { min: 0, max: 100 },
  stopLengthMm: { min: 0, max: 200 },
  leastStockMm: { min: 0, max: 500 },
} as const;

/** A screw in a top, and the bits that make its holes. */
export interface PlanDepthStopsInput extends ThreadEngagementInput {
  /** What lies on the wood while you drill, mm, 0 to 500, no more than the fixture: the bracket in place, or nothing. */
  readonly drilledThroughMm: number;
  /**
   * How much of the thread, tip included, gets a lead hole, 0 to 1: 1/2 to 2/3 in an army manual, nearly all in
   * hardwood by a timber council.
   */
  readonly leadHoleShare: number;
  /** From the tip of the bit for the thread to its full diameter, mm, 0 to 100. */
  readonly leadBitTipLengthMm: number;
  /** From the tip of the bit for the shank to its full diameter, mm, 0 to 100. */
  readonly shankBitTipLengthMm: number;
  /** Length of the stop along the bit, mm, 0 to 200. */
  readonly stopLengthMm: number;
  /** Least wood that stays above any tip, of bit or screw, mm, 0 to 500. */
  readonly leastStockMm: number;
}

/** One hole: how deep at full diameter, and the stop on its bit. */
export interface StoppedHole extends DepthStopSetting {
  /** Depth at full diameter in the wood, mm. */
  readonly holeDepthMm: number;
  /** What is missing from the depth wanted, because the tip of the bit would come too near to the face, mm. */
  readonly shortenedMm: number;
}

/** One step, in its place in the order, with the number that it is about. */
export interface DepthStep {
  readonly operation: 'measure' | 'set' | 'check' | 'bore' | 'drive';
  readonly says: string;
  readonly distanceMm: number;
}

/** Both holes, the screw, and the steps in their order. */
export interface DepthStops extends Verdict {
  /** Hole for the unthreaded shank; `null` where none of it is in the wood. */
  readonly shankHole: StoppedHole | null;
  /** Hole for the thread; `null` where none is to be bored, or none can be. */
  readonly leadHole: StoppedHole | null;
  readonly screw: ThreadEngagement;
  readonly steps: readonly DepthStep[];
  readonly cautions: readonly string[];
}

/**
 * Plans the holes for a screw from below into a top so that no bit and no screw comes through its face: how deep each
 * hole is, where its stop goes, and the order in which to set, check and bore. A hole whose bit would come too near to
 * the face is made shallower, and says by how much. The order: measure; the wider hole before the narrower; no bit
 * turns before its stop is set and held against the edge of the top; the screw is held there before it is driven.
 *
 * @returns Holes, screw and steps; `fail` with its reasons where a tip would come nearer to the face than allowed.
 * @throws RangeError where an input is outside its limits, the parts of the screw do not fit, or more is drilled through than the fixture is thick.
 * Common practice, no source; the wider hole first is the order of army and navy manuals.
 * @example
 * ```ts
 * import { planDepthStops } from '@scantling/fastening';
 * const screw = { screwLengthMm: 40, threadLengthMm: 27, tipLengthMm: 8, fixtureThicknessMm: 3, topThicknessMm: 45 };
 * const { status, shankHole, leadHole, steps } = planDepthStops({ ...screw, drilledThroughMm: 3, leadHoleShare: 1, leadBitTipLengthMm: 1, shankBitTipLengthMm: 2, stopLengthMm: 12, leastStockMm: 6 });
 * status // => 'pass'
 * shankHole.holeDepthMm // => 10
 * leadHole // => { holeDepthMm: 37, shortenedMm: 0, stopFromTipMm: 41, bitOutOfChuckMm: 53, stockAboveTipMm: 7 }
 * steps[1].says // => 'Bit for the shank: let it 27 mm out of the chuck, the stop against the chuck, its face 15 mm from the tip.'
 * ```
 */
export function planDepthStops(input: PlanDepthStopsInput): DepthStops {
  requireInputs<Omit<PlanDepthStopsInput, keyof ThreadEngagementInput>>('planDepthStops', input, limits);
  requireScrewParts('planDepthStops', input);
  const screw = threadEngagement(input);
  const { drilledThroughMm, fixtureThicknessMm, topThicknessMm, leastStockMm } = input;
  requireThat(
    'planDepthStops',
    drilledThroughMm <= fixtureThicknessMm,
    `drilledThroughMm at most fixtureThicknessMm, got ${drilledThroughMm} and ${fixtureThicknessMm}`,
  );
  const { penetrationMm, shankInWoodMm, stockAboveTipMm } = screw;
  const leadMm = shankInWoodMm + input.leadHoleShare * (penetrationMm - shankInWoodMm);
  const shankHole = stoppedHole(shankInWoodMm, input.shankBitTipLengthMm, input);
  const leadHole = leadMm > shankInWoodMm ? stoppedHole(leadMm, input.leadBitTipLengthMm, input) : null;
  const bored = [
    { name: 'the shank', hole: shankHole },
    { name: 'the thread', hole: leadHole },
  ].flatMap(({ name, hole }) => (hole ? [{ name, hole }] : []));
  const verdict = verdictOf([
    penetrationMm <= 0 && 'The screw does not reach the wood.',
    objectionTo(
      stockAboveTipMm,
      leastStockMm,
      (by) => `The screw comes through the face by ${by}`,
      (left) => `The screw leaves ${left} above its tip`,
    ),
    shankInWoodMm > 0 &&
      (shankHole?.shortenedMm ?? shankInWoodMm) > 0 &&
      'The hole for the shank cannot be as deep as the shank: its bit would come too near to the face.',
    leadMm > shankInWoodMm &&
      !(leadHole && leadHole.holeDepthMm > shankInWoodMm) &&
      'No lead hole fits below the face with this bit: take one with a shorter tip.',
  ]);
  const steps: DepthStep[] = [
    step('measure', topThicknessMm, (it) => `Measure the top where the hole goes, at its thinnest: ${it}.`),
    ...bored.flatMap(({ name, hole }) => stepsOf(name, hole, drilledThroughMm)),
    step('check', stockAboveTipMm, (it) => `Screw in its fixture, held against the edge: ${fromFace(it)}.`),
    step('drive', penetrationMm, (it) => `Drive it, the last turns by hand: ${it} of it in the wood.`),
  ];
  return {
    ...verdict,
    shankHole,
    leadHole,
    screw,
    steps: verdict.status === 'pass' ? steps : [],
    cautions: [stopAgainstTheChuck, measureTheTop, tryOnAnOffcut, drillingCare, notStructuralDesign],
  };
}

/** A hole of a depth, or as near to it as the face allows; `null` where nothing is left of it. */
function stoppedHole(
  wantedMm: number,
  bitTipLengthMm: number,
  { drilledThroughMm, stopLengthMm, topThicknessMm, leastStockMm }: PlanDepthStopsInput,
): StoppedHole | null {
  const deepestMm = topThicknessMm - leastStockMm - bitTipLengthMm;
  const holeDepthMm = Math.min(wantedMm, deepestMm);
  if (holeDepthMm <= 0) return null;
  const setting = depthStopSetting({
    drilledThroughMm,
    holeDepthMm,
    bitTipLengthMm,
    stopLengthMm,
    topThicknessMm,
  });
  return { holeDepthMm, shortenedMm: wantedMm - holeDepthMm, ...setting };
}

const step = (
  operation: DepthStep['operation'],
  distanceMm: number,
  say: (distance: string) => string,
): DepthStep => ({ operation, distanceMm, says: say(mm(distanceMm)) });

const fromFace = (it: string) => `its tip ends ${it} below the face`;

function stepsOf(name: string, hole: StoppedHole, drilledThroughMm: number): DepthStep[] {
  const lands = drilledThroughMm > 0 ? 'the stop on what you drill through' : 'the stop on the wood';
  const { stopFromTipMm, bitOutOfChuckMm, stockAboveTipMm, holeDepthMm } = hole;
  const set = `Bit for ${name}: let it ${mm(bitOutOfChuckMm)} out of the chuck, the stop against the chuck, its face`;
  return [
    step('set', stopFromTipMm, (it) => `${set} ${it} from the tip.`),
    step('check', stockAboveTipMm, (it) => `Hold it against the edge, ${lands}: ${fromFace(it)}.`),
    step('bore', holeDepthMm, (it) => `Bore for ${name} until the stop lands: ${it} deep in the wood.`),
  ];
}
