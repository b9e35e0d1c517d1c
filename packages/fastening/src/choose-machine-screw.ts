import { requireInputs, requireList, requireThat } from '@scantling/rules';
import { drillingCare, makersDataFirst, notStructuralDesign } from './cautions.ts';
import { fallsShort, mm, objectionTo, type Verdict, verdictOf } from './verdict.ts';

const limits = {
  threadFromMm: { min: 0, max: 100 },
  threadLengthMm: { min: 0.5, max: 200 },
  clearDepthMm: { min: 0.5, max: 500 },
  leastEngagementMm: { min: 0, max: 200 },
  leastRoomMm: { min: 0, max: 100 },
} as const;

/** What a machine screw goes through, and the thread that takes it: an insert in wood, or tapped metal. */
export interface ChooseMachineScrewInput {
  /** What lies between the head and the threaded part, mm each, 0 to 8 layers of 0 to 200. */
  readonly layersMm: readonly number[];
  /** From the surface of the threaded part down to its thread, mm, 0 to 100: how deep an insert sits. */
  readonly threadFromMm: number;
  /** Length of the thread that takes the screw, mm, 0.5 to 200: of the insert, or the thickness of tapped metal. */
  readonly threadLengthMm: number;
  /** How far the end of the screw can go below the surface, mm, 0.5 to 500: to the bottom of the hole, or to what stands behind it. */
  readonly clearDepthMm: number;
  /** Lengths that are to be had, mm, 1 to 60 of them, 1 to 500 each. */
  readonly stockLengthsMm: readonly number[];
  /** Least thread in engagement, mm, 0 to 200: from `tappedEngagement`, or from the maker of the insert. */
  readonly leastEngagementMm: number;
  /** Least room ahead of the end of the screw, mm, 0 to 100. */
  readonly leastRoomMm: number;
}

/** How one length engages, and what is against it. */
export interface MachineScrewLength extends Verdict {
  readonly lengthMm: number;
  /** Thread in engagement, mm. */
  readonly engagementMm: number;
  /** Room ahead of the end of the screw, mm; negative where it strikes the bottom before the head is down. */
  readonly roomMm: number;
}

/** The length chosen, and every length beside it. */
export interface ChosenMachineScrew {
  readonly status: 'pass' | 'fail';
  /** The shortest length with the most thread in engagement; `null` where none passes. */
  readonly chosen: MachineScrewLength | null;
  /** Every stock length once, from short to long. */
  readonly lengths: readonly MachineScrewLength[];
  readonly cautions: readonly string[];
}

/**
 * Chooses a machine screw, threaded all along, for a thing that comes off often: into an insert in the wood, or into
 * tapped metal. It has to engage enough thread, and must not strike the bottom of the hole before its head is down.
 *
 * @returns The shortest length with the most engagement among those that pass, and all lengths.
 * @throws RangeError where an input is outside its limits or the thread goes deeper than the hole is clear.
 * Common practice, no source.
 * @example
 * ```ts
 * import { chooseMachineScrew } from '@scantling/fastening';
 * // M6 through a 3 mm bracket into an insert of 15 mm, 1 mm below the surface, in a hole 19 mm deep
 * const insert = { layersMm: [3], threadFromMm: 1, threadLengthMm: 15, clearDepthMm: 19, leastEngagementMm: 9, leastRoomMm: 1 };
 * const { chosen, lengths } = chooseMachineScrew({ ...insert, stockLengthsMm: [12, 16, 20, 25] });
 * [chosen.lengthMm, chosen.engagementMm, chosen.roomMm] // => [20, 15, 2]
 * lengths[3].reasons // => ['25 mm strikes the bottom 3 mm before its head is down.']
 * ```
 */
export function chooseMachineScrew(input: ChooseMachineScrewInput): ChosenMachineScrew {
  const caller = 'chooseMachineScrew';
  requireInputs<Omit<ChooseMachineScrewInput, 'layersMm' | 'stockLengthsMm'>>(caller, input, limits);
  const { layersMm, stockLengthsMm, threadFromMm, threadLengthMm, clearDepthMm } = input;
  requireList(caller, 'layersMm', layersMm, { min: 0, max: 200, minItems: 0, maxItems: 8 });
  requireList(caller, 'stockLengthsMm', stockLengthsMm, { min: 1, max: 500, minItems: 1, maxItems: 60 });
  const threadToMm = threadFromMm + threadLengthMm;
  requireThat(
    caller,
    !fallsShort(clearDepthMm, threadToMm),
    `clearDepthMm not less than threadFromMm and threadLengthMm together, got ${clearDepthMm} and ${threadToMm}`,
  );
  const fixtureMm = layersMm.reduce((sum, layerMm) => sum + layerMm, 0);
  const lengths = [...new Set(stockLengthsMm)]
    .sort((a, b) => a - b)
    .map((lengthMm): MachineScrewLength => {
      const endMm = lengthMm - fixtureMm;
      const engagementMm = Math.max(0, Math.min(endMm, threadToMm) - threadFromMm);
      const roomMm = clearDepthMm - endMm;
      return { lengthMm, engagementMm, roomMm, ...judge(lengthMm, engagementMm, roomMm, input) };
    });
  const [chosen = null] = lengths
    .filter(({ status }) => status === 'pass')
    .sort((a, b) => b.engagementMm - a.engagementMm || a.lengthMm - b.lengthMm);
  return {
    status: chosen ? 'pass' : 'fail',
    chosen,
    lengths,
    cautions: [makersDataFirst, drillingCare, notStructuralDesign],
  };
}

function judge(
  lengthMm: number,
  engagementMm: number,
  roomMm: number,
  { leastEngagementMm, leastRoomMm }: ChooseMachineScrewInput,
): Verdict {
  const it = mm(lengthMm);
  return verdictOf([
    engagementMm <= 0
      ? `${it} does not reach the thread.`
      : fallsShort(engagementMm, leastEngagementMm) &&
        `${it} engages ${mm(engagementMm)} of thread, less than ${mm(leastEngagementMm)}.`,
    objectionTo(
      roomMm,
      leastRoomMm,
      (by) => `${it} strikes the bottom ${by} before its head is down`,
      (left) => `${it} leaves ${left} ahead of its end`,
    ),
  ]);
}
