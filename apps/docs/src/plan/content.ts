import type { Field } from '@scantling/worktop/fields';
import type { LengthUnit } from '../calculator/lengths.ts';
import { CHOOSE, type Draft, fileKey, isSection } from './draft.ts';
import { lengthContent } from './lengths-as-typed.ts';
import { readPart } from './read.ts';

/** What a plan file says of one place, for a form that can be read. A length stays as it was typed. */
export function contentOf(key: string, field: Field, draft: Draft | undefined, unit: LengthUnit): unknown {
  if (draft === undefined || (field.open && draft === CHOOSE)) return draft;
  switch (field.kind) {
    case 'figure': {
      const { value } = readPart(key, field, draft, unit);
      return value !== undefined && key.endsWith('Mm') ? lengthContent(draft as string, unit) : value;
    }
    case 'figures':
      return readPart(key, field, draft, unit).value;
    case 'list':
      return (draft as readonly Draft[]).map((row) => contentOf('', field.of, row, unit));
    case 'section': {
      if (!isSection(draft)) return undefined;
      const parts = Object.entries(field.fields).map(([name, inner]) => [
        fileKey(name),
        contentOf(name, inner, draft[name], unit),
      ]);
      return Object.fromEntries(parts.filter(([, content]) => content !== undefined));
    }
    default:
      return draft;
  }
}
