import type { AnyCalculation, Field, Fields, FirstTexts, RowsField, SimpleField } from './calculation.ts';
import { type FieldValue, readField, restateField } from './field.ts';
import { LENGTH_UNIT, type LengthUnit, printOtherwise } from './lengths.ts';

/** The text of each field, by its name; in a row it is `rails.0.widthMm`. */
export type Texts = Readonly<Record<string, string>>;

export const nameInRow = (rows: string, row: number | string, name: string) => `${rows}.${row}.${name}`;

/** The texts to begin with, one for each field. */
export function flatTexts(first: FirstTexts): Record<string, string> {
  const texts: Record<string, string> = {};
  for (const [name, given] of Object.entries(first)) {
    if (typeof given === 'string') texts[name] = given;
    else {
      for (const [i, row] of given.entries()) {
        for (const [field, text] of Object.entries(row)) texts[nameInRow(name, i, field)] = text;
      }
    }
  }
  return texts;
}

/** How many rows the texts speak of, no more than one above what is allowed. */
export function countRows(name: string, { maxRows, fields }: RowsField, texts: Texts): number {
  let count = 0;
  const isRow = (i: number) =>
    Object.keys(fields).some((field) => Object.hasOwn(texts, nameInRow(name, i, field)));
  while (count <= maxRows && isRow(count)) count += 1;
  return count;
}

/** Every single field of a form, by its full name. */
export function singleFields(fields: Fields, texts: Texts): [string, SimpleField][] {
  return Object.entries<Field>(fields).flatMap(([name, field]): [string, SimpleField][] => {
    if (field.kind !== 'rows') return [[name, field]];
    return Array.from({ length: Math.min(countRows(name, field, texts), field.maxRows) }, (_, i) =>
      Object.entries(field.fields).map(([inRow, one]): [string, SimpleField] => [
        nameInRow(name, i, inRow),
        one,
      ]),
    ).flat();
  });
}

/** What a form says, or what is wrong with it. */
export interface ReadForm {
  /** What is wrong, by the name of the field. */
  readonly problems: Record<string, string>;
  /** Each length in the other unit, by the name of its field. */
  readonly lengths: Record<string, string>;
  readonly values: Record<string, FieldValue | Record<string, FieldValue>[]>;
}

export function readForm({ fields }: AnyCalculation, texts: Texts, lengthUnit: LengthUnit): ReadForm {
  const form: ReadForm = { problems: {}, lengths: {}, values: {} };
  const read = (name: string, field: SimpleField): FieldValue | undefined => {
    const reading = readField(field, texts[name] ?? '', lengthUnit);
    if ('problem' in reading) {
      form.problems[name] = reading.problem;
      return;
    }
    if ('unit' in field && field.unit === 'mm' && reading.value !== null) {
      form.lengths[name] = printOtherwise(reading.value as number | readonly number[], lengthUnit);
    }
    return reading.value;
  };

  for (const [name, field] of Object.entries<Field>(fields)) {
    if (field.kind !== 'rows') {
      const value = read(name, field);
      if (value !== undefined) form.values[name] = value;
      continue;
    }
    const count = countRows(name, field, texts);
    if (count < field.minRows || count > field.maxRows) {
      form.problems[name] = `Give ${field.minRows} to ${field.maxRows}.`;
      continue;
    }
    form.values[name] = Array.from({ length: count }, (_, i) =>
      Object.fromEntries(
        Object.entries(field.fields).map(([inRow, one]) => [
          inRow,
          read(nameInRow(name, i, inRow), one) as FieldValue,
        ]),
      ),
    );
  }
  return form;
}

/** All texts, with bare lengths said again in another unit. */
export function restateLengths(fields: Fields, texts: Texts, from: LengthUnit, to: LengthUnit): Texts {
  const restated = singleFields(fields, texts).map(([name, field]) => [
    name,
    restateField(field, texts[name] ?? '', from, to),
  ]);
  return { ...texts, ...Object.fromEntries(restated) };
}

/** A link can carry any text: fields show its beginning, which is enough to be refused. */
const LONGEST_TEXT = 2100;

/** The texts that a link asks for: its own where it speaks of a field that there is, else those to begin with. */
export function linkedTexts(fields: Fields, first: Texts, link: URLSearchParams): Texts {
  const inRows = (name: string) => {
    const [rows = '', row = '', field = ''] = name.split('.');
    const spec = Object.hasOwn(fields, rows) ? fields[rows] : undefined;
    return spec?.kind === 'rows' && /^\d{1,3}$/.test(row) && Object.hasOwn(spec.fields, field)
      ? rows
      : undefined;
  };
  const isSingle = (name: string) => Object.hasOwn(fields, name) && fields[name]?.kind !== 'rows';
  const known = [...link].filter(
    ([name]) => name === LENGTH_UNIT || isSingle(name) || inRows(name) !== undefined,
  );
  // Of rows that the link speaks of, all are its own; where it names them alone there are none.
  const none = [...link].flatMap(([name]) => (fields[name]?.kind === 'rows' ? [name] : []));
  const taken = new Set([...none, ...known.map(([name]) => inRows(name))]);
  const kept = Object.entries(first).filter(([name]) => !taken.has(inRows(name)) || !inRows(name));
  return Object.fromEntries([
    ...kept,
    ...known.map(([name, text]) => [name, text.slice(0, LONGEST_TEXT)] as const),
  ]);
}

/** The link that brings back what a form says. */
export function linkOf(fields: Fields, texts: Texts): string {
  const none = Object.entries<Field>(fields).flatMap(([name, field]) =>
    field.kind === 'rows' && countRows(name, field, texts) === 0 ? [[name, ''] as const] : [],
  );
  return `?${new URLSearchParams({ ...texts, ...Object.fromEntries(none) })}`;
}
