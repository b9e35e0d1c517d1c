import { requireInputs, requireThat } from '@scantling/rules';
import type { ThreadEngagementInput } from './rules/thread-engagement.ts';

/** Limits of a screw in a top. */
export const partLimits = {
  screwLengthMm: { min: 1, max: 1000 },
  threadLengthMm: { min: 0, max: 1000 },
  tipLengthMm: { min: 0, max: 100 },
  fixtureThicknessMm: { min: 0, max: 500 },
  topThicknessMm: { min: 1, max: 500 },
} as const;

export const partsFit = ({ screwLengthMm, threadLengthMm, tipLengthMm }: ThreadEngagementInput) =>
  tipLengthMm <= threadLengthMm && threadLengthMm <= screwLengthMm;

/** Refuses, in the name of whoever was called, a screw that cannot be. */
export function requireScrewParts(caller: string, input: ThreadEngagementInput): void {
  requireInputs<ThreadEngagementInput>(caller, input, partLimits);
  const { screwLengthMm, threadLengthMm, tipLengthMm } = input;
  requireThat(
    caller,
    partsFit(input),
    `tipLengthMm <= threadLengthMm <= screwLengthMm, got ${[tipLengthMm, threadLengthMm, screwLengthMm]}`,
  );
}
