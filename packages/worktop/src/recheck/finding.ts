/** A claim of a finished plan that another computation does not bear out. */
export interface Finding {
  /** The place in the finished plan, such as `holes[3].clearanceMm`. */
  readonly path: string;
  /** What is claimed, what was found instead, and how far apart they may be. */
  readonly says: string;
}

/** Rounding of lengths that two ways of computing them may differ by, mm. */
export const ROUNDING_MM = 1e-6;

const shown = (value: unknown) => (typeof value === 'string' ? `"${value}"` : String(value));

/** A number that was claimed, beside the same from another computation. Written so that NaN is a finding. */
export function agree(path: string, claimed: number, found: number, within = ROUNDING_MM): Finding[] {
  if (Math.abs(claimed - found) <= within) return [];
  return [{ path, says: `${path} is claimed to be ${claimed}, but comes to ${found}` }];
}

/** Something that was claimed, beside the same from another computation. */
export function same(path: string, claimed: unknown, found: unknown): Finding[] {
  if (claimed === found) return [];
  return [{ path, says: `${path} is claimed to be ${shown(claimed)}, but is ${shown(found)}` }];
}

/** What has to be true of a finished plan. */
export const holds = (path: string, isTrue: boolean, says: string): Finding[] =>
  isTrue ? [] : [{ path, says: `${path}: ${says}` }];
