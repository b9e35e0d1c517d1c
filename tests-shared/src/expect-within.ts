import { assert } from 'vitest';

/**
 * Expects a number of ours within a tolerance of a published one. NaN, `null` and a tolerance that allows
 * anything all fail.
 *
 * @param ours - What the code gives.
 * @param published - What the source prints, in the same unit.
 * @param tolerance - Largest difference allowed, in the same unit.
 * @param source - Where the published figure stands; it opens the message.
 */
export function expectWithin(ours: unknown, published: number, tolerance: number, source: string): void {
  assert(source.trim().length > 2, 'expectWithin requires the source of the published figure');
  assert(
    Number.isFinite(published) && Number.isFinite(tolerance) && tolerance >= 0,
    `${source}: nothing is checked against ${published} ± ${tolerance}`,
  );
  const agrees = typeof ours === 'number' && Math.abs(ours - published) <= tolerance;
  assert(agrees, `${source}: ours is ${String(ours)}, published ${published} ± ${tolerance}`);
}
