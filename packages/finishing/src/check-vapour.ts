import { type Citation, requireFields, requireInputs, requireThat } from '@scantling/rules';
import {
  flammabilityBulletin1965,
  flammableLiquidsRuleWashington,
  sprayFinishingRule,
} from '@scantling/rules/sources';
import {
  breathingIsLess,
  productSheet,
  roomAirIsAnEstimate,
  solvents as solventCaution,
  vapourLiesLow,
} from './cautions.ts';
import { roomVolume, solventGravity, solventMolarMass, solventVolume } from './solvent-limits.ts';
import { vapourM3 } from './vapour-volume.ts';

/** A solvent of the job. */
export interface EvaporatingSolvent {
  /** How much of it evaporates, mL, 0 to 100 000. */
  readonly solventMl: number;
  /** Density against that of water, 0.5 to 2. */
  readonly specificGravityRatio: number;
  /** Molar mass, g/mol, 15 to 500. */
  readonly molarMassGPerMol: number;
  /** Lower flammable (explosive) limit, % by volume in air, 0.3 to 20: see the safety data sheet. */
  readonly lowerFlammableLimitPct: number;
}

export interface VapourCheckInput {
  /** Volume of the room, m³, 1 to 100 000. */
  readonly roomVolumeM3: number;
  readonly solvents: readonly EvaporatingSolvent[];
}

/**
 * Under a tenth of the lower flammable limit, under a quarter, over a quarter, or over the limit itself, where the air
 * of the whole room could burn.
 */
export type VapourLevel = 'under a tenth' | 'under a quarter' | 'over a quarter' | 'over the limit';

export interface VapourCheck {
  /** Vapour of each solvent, % of the room's volume. */
  readonly vapoursPct: readonly number[];
  /** All of them as a part of their lower flammable limits, %: at 100 the air can burn. */
  readonly ofFlammableLimitPct: number;
  readonly level: VapourLevel;
  /** The least room in which the same solvent would stay under a quarter of the limit, m³. */
  readonly roomForQuarterM3: number;
  /** Where the tenth, the quarter and the sum come from. */
  readonly citations: readonly Citation[];
  readonly cautions: readonly string[];
}

const limits = {
  solventMl: solventVolume,
  specificGravityRatio: solventGravity,
  molarMassGPerMol: solventMolarMass,
  lowerFlammableLimitPct: { min: 0.3, max: 20 },
} as const;

const levels: readonly (readonly [number, VapourLevel])[] = [
  [10, 'under a tenth'],
  [25, 'under a quarter'],
  [100, 'over a quarter'],
];

/**
 * Whether the air of a closed room could burn if all solvent of a job evaporated into it, evenly: an estimate to see
 * trouble early, never a proof of safety. Over the wet surface and near the floor the limit is passed much sooner.
 * Several solvents add up, each as a part of its own limit, by Le Chatelier’s rule. It says nothing on breathing: a tenth
 * of what can burn is many times what may be breathed.
 *
 * @returns How near the air comes to the lower flammable limit.
 * @throws RangeError where an input is outside its limits, there is no solvent, or there would be more vapour than room.
 * @example
 * ```ts
 * import { checkVapour, findSolvent } from '@scantling/finishing';
 * const { lowMolarMassGPerMol, highSpecificGravityRatio, lowerFlammableLimitPct } = findSolvent('turpentine');
 * const turpentine = { molarMassGPerMol: lowMolarMassGPerMol, specificGravityRatio: highSpecificGravityRatio, lowerFlammableLimitPct };
 * const shed = checkVapour({ roomVolumeM3: 40, solvents: [{ ...turpentine, solventMl: 1000 }] });
 * shed.vapoursPct // => [0.3865]
 * shed.ofFlammableLimitPct // => 48.32
 * shed.level // => 'over a quarter'
 * shed.roomForQuarterM3 // => 77.3
 * // A glass of it in the same shed is far from burning, and near eight times the limit of 100 ppm
 * const glass = checkVapour({ roomVolumeM3: 40, solvents: [{ ...turpentine, solventMl: 200 }] });
 * glass.level // => 'under a tenth'
 * glass.vapoursPct[0] * 10000 // => 773.05
 * ```
 */
export function checkVapour(input: VapourCheckInput): VapourCheck {
  const caller = 'checkVapour';
  const { roomVolumeM3, solvents } = input ?? {};
  requireInputs(caller, { roomVolumeM3 }, { roomVolumeM3: roomVolume });
  requireThat(
    caller,
    Array.isArray(solvents) && solvents.length > 0,
    `solvents to be a list of at least one solvent, got ${Array.isArray(solvents) ? 'none' : typeof solvents}`,
  );
  const vapours = solvents.map((solvent, i) => {
    requireFields(caller, `solvents[${i}]`, solvent, limits);
    const pct = (100 * vapourM3(solvent.solventMl, solvent)) / roomVolumeM3;
    return { pct, ofLimit: (100 * pct) / solvent.lowerFlammableLimitPct };
  });
  const vapourPct = vapours.reduce((sum, { pct }) => sum + pct, 0);
  requireThat(
    caller,
    vapourPct <= 100,
    `solvents that fill no more than the room with vapour, got ${Math.round(vapourPct)} %`,
  );
  const ofFlammableLimitPct = vapours.reduce((sum, { ofLimit }) => sum + ofLimit, 0);
  return {
    vapoursPct: vapours.map(({ pct }) => pct),
    ofFlammableLimitPct,
    level: levels.find(([under]) => ofFlammableLimitPct < under)?.[1] ?? 'over the limit',
    roomForQuarterM3: (roomVolumeM3 * ofFlammableLimitPct) / 25,
    citations: [
      {
        source: sprayFinishingRule,
        at: '1910.107(a)(2), as interpreted on 14 July 2009: more than 25 % of the lower flammable limit is a dangerous quantity',
        confirmed: 'text',
        tier: 'reprint',
      },
      {
        source: flammableLiquidsRuleWashington,
        at: '(2): vapours below ten percent of their lower explosive limit',
        confirmed: 'text',
      },
      {
        source: flammabilityBulletin1965,
        at: 'Le Chatelier’s rule: the parts of the lower limits of a mixture add up',
        confirmed: 'memory',
      },
    ],
    cautions: [breathingIsLess, roomAirIsAnEstimate, vapourLiesLow, solventCaution, productSheet],
  };
}
