import { expect } from 'vitest';
import type { Problems } from '../law-kit/problem.ts';

/** Expects a guard to have looked at something, and to have found nothing wrong with it. */
export function expectClean<T>(looked: readonly T[], check: (one: T) => Problems): void {
  expect(looked.length, 'the guard looked at nothing').toBeGreaterThan(0);
  expect(looked.flatMap(check)).toEqual([]);
}
