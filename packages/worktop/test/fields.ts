import type { Field } from '../src/plan/field.ts';
import { planField } from '../src/plan/plan.ts';
import { fileKey } from '../src/schema/plan-file.ts';

type Content = { [key: string]: unknown };

/** A place in the content of a plan file, with what may stand there. */
export interface PlaceInFile {
  readonly path: readonly string[];
  readonly key: string;
  readonly field: Field;
}

/** Every place in the content of a plan file that the plan's fields describe. */
export function placesIn(
  content: unknown,
  field: Field = planField,
  path: readonly string[] = [],
  key = '',
): PlaceInFile[] {
  const below = () => {
    if (typeof content !== 'object' || content === null) return [];
    const parts = content as Content;
    if (field.kind === 'list') {
      return Object.entries(parts).flatMap(([i, item]) => placesIn(item, field.of, [...path, i]));
    }
    if (field.kind !== 'section') return [];
    return Object.entries(field.fields).flatMap(([inPlan, inner]) => {
      const name = String(fileKey(inPlan));
      return name in parts ? placesIn(parts[name], inner, [...path, name], inPlan) : [];
    });
  };
  return [{ path, key, field }, ...below()];
}

/** A copy of the content with one place changed, or taken away where the value is `undefined`. */
export function withPlace(content: unknown, path: readonly string[], value: unknown): unknown {
  const copy = structuredClone(content);
  const last = path.at(-1);
  if (last === undefined) return value;
  const parent = path.slice(0, -1).reduce((at, key) => at[key] as Content, copy as Content);
  if (value === undefined) delete parent[last];
  else parent[last] = value;
  return copy;
}

export const valueAt = (content: unknown, path: readonly string[]): unknown =>
  path.reduce<unknown>((at, key) => (at as Content)[key], content);
