import { type ListLimits, requireList, requireThat } from '@scantling/rules';

/** Throws unless both lists hold numbers within their limits, and as many of one as of the other. */
export function requirePairs<const A extends string, const B extends string>(
  caller: string,
  input: Readonly<Record<A | B, readonly number[]>>,
  [first, second]: readonly [A, B],
  limits: Readonly<Record<A | B, ListLimits>>,
): void {
  for (const name of [first, second]) requireList(caller, name, input?.[name], limits[name]);
  const counts = [input[second].length, input[first].length];
  requireThat(
    caller,
    counts[0] === counts[1],
    `as many ${second} as ${first}, got ${counts[0]} and ${counts[1]}`,
  );
}
