import { requireFields, requireInputs, requireThat } from '@scantling/rules';
import { makersCapacity } from './cautions.ts';
import { requireName } from './require-name.ts';

const mass = { min: 0, max: 100_000 };

/** Something that a base has to lift. */
export interface LiftedPart {
  readonly name: string;
  /** kg, 0 to 100 000. */
  readonly massKg: number;
}

export interface LiftInput {
  /** All that goes up: the top, what is fixed to it, the moving part of the base, and what lies on it. 1 to 100. */
  readonly parts: readonly LiftedPart[];
  /** What the base may lift, as its maker states it, kg, 0.001 to 100 000. */
  readonly capacityKg: number;
}

export interface LiftCheck {
  /** kg. */
  readonly liftedKg: number;
  /** What could be added, kg; negative where it is too much already. */
  readonly marginKg: number;
  /** Share of the capacity in use, %. */
  readonly usedPct: number;
  /** Whether it is within the capacity. */
  readonly within: boolean;
  /** The parts, the heaviest first. */
  readonly heaviestFirst: readonly LiftedPart[];
  /** What to mind besides. */
  readonly caution: string;
}

/**
 * What a lifting base has to lift, beside the capacity that its maker states.
 *
 * @returns The mass, the margin, kg, and the share of the capacity in use, %.
 * @throws RangeError where an input is outside its limits or a part has no name.
 * Source: a sum. The capacity is the maker's, for a load in the middle; a person who leans or sits on it counts too.
 * @example
 * ```ts
 * import { checkLift } from '@scantling/stock';
 * const parts = [{ name: 'top', massKg: 38 }, { name: 'press and tools', massKg: 55 }, { name: 'upper frame', massKg: 12 }];
 * const { liftedKg, marginKg, usedPct } = checkLift({ parts, capacityKg: 120 });
 * [liftedKg, marginKg, usedPct] // => [105, 15, 87.5]
 * ```
 */
export function checkLift(input: LiftInput): LiftCheck {
  requireInputs('checkLift', input, { capacityKg: { min: 1e-3, max: 100_000 } });
  const { parts, capacityKg } = input;
  const fits = Array.isArray(parts) && parts.length >= 1 && parts.length <= 100;
  requireThat('checkLift', fits, `parts to be a list of 1 to 100, got ${parts?.length}`);
  parts.forEach((part, i) => {
    requireFields('checkLift', `parts[${i}]`, part, { massKg: mass });
    requireName('checkLift', `parts[${i}]`, part);
  });
  const liftedKg = parts.reduce((sum, { massKg }) => sum + massKg, 0);
  return {
    liftedKg,
    marginKg: capacityKg - liftedKg,
    usedPct: (100 * liftedKg) / capacityKg,
    within: liftedKg <= capacityKg,
    heaviestFirst: parts.map(({ name, massKg }) => ({ name, massKg })).sort((a, b) => b.massKg - a.massKg),
    caution: makersCapacity,
  };
}
