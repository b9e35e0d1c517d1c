import { type Limits, requireInputs } from '@scantling/rules';

/** Checks numbers that lie inside an input under the path that the reader wrote: `boards[2].widthMm`. */
export function requireFields(
  caller: string,
  path: string,
  given: object | undefined,
  limits: Readonly<Record<string, Limits>>,
): void {
  const named = (record: object) =>
    Object.fromEntries(Object.entries(record).map(([name, value]) => [`${path}.${name}`, value]));
  requireInputs(caller, named(given ?? {}), named(limits) as Record<string, Limits>);
}
