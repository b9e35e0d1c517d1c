import { requireNumber } from '@scantling/rules';

/** What one screw may be given; its head is left out where steel or a large washer lies under it. */
export interface PulledScrew {
  /** Straight out of the wood that holds its point, N, 1 to 1 000 000: an allowed value, never a test value. */
  readonly allowedWithdrawalN: number;
  /** At its head, before the wood under it gives way, allowed as well, N, 1 to 1 000 000; `null` where steel lies under the head. */
  readonly allowedPullThroughN: number | null;
}

/** Limits of what one screw may be given. */
export const onePerScrew = { min: 1, max: 1_000_000 } as const;

export function requirePullThrough(caller: string, allowedPullThroughN: number | null): void {
  if (allowedPullThroughN !== null)
    requireNumber(caller, 'allowedPullThroughN', allowedPullThroughN, onePerScrew);
}

/** How many share a load of which one would bear this many times what it may; never none. */
export const leastCount = (timesOne: number): number => Math.max(1, Math.ceil(timesOne - 1e-9));
