import { type Field, planField, type Section } from '@scantling/worktop/fields';
import type { LengthUnit } from '../calculator/lengths.ts';
import { type Draft, draftOf, type Path } from './draft.ts';
import { withUnits } from './lengths-as-typed.ts';

/** What may stand in a place of a plan, by its path. */
export function fieldAt(path: Path): Field {
  return path.reduce<Field>((field, key) => {
    const inner = field.kind === 'list' ? field.of : (field as Section).fields?.[key];
    if (!inner) throw new RangeError(`A plan has no place ${path.join('.')}.`);
    return inner;
  }, planField);
}

/** What a form says for a value in millimetres, where bare lengths may be inches. */
export function draftIn(path: Path, content: unknown, unit: LengthUnit): Draft | undefined {
  const field = fieldAt(path);
  const draft = content === undefined ? undefined : draftOf(field, content);
  return unit === 'mm' ? draft : withUnits(`${path.at(-1)}`, field, draft, 'mm');
}
