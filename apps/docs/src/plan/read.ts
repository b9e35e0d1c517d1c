import { type NumberInput, type NumberListInput, type Unit, unitOf } from '@scantling/rules';
import type { Field, Figure, Figures, List, Section } from '@scantling/worktop/fields';
import { notAChoice, readField } from '../calculator/field.ts';
import type { LengthUnit } from '../calculator/lengths.ts';
import { CHOOSE, type Draft, dotted, isSection } from './draft.ts';

/** What is wrong, by the path of the field: `members[2].widthMm`. */
export type Problems = Readonly<Record<string, string>>;

/** What a part of a form says as a plan has it, or what is wrong with it. */
export interface Reading {
  readonly value: unknown;
  readonly problems: Problems;
}

const NONE: Problems = {};
const LONGEST_NAME = 60;

const fine = (value: unknown): Reading => ({ value, problems: NONE });
const wrong = (problem: string): Reading => ({ value: undefined, problems: { '': problem } });

/** The field as a calculator's input: one way to read what is typed. */
export function inputOf(key: string, field: Figure | Figures): NumberInput | NumberListInput {
  const unit: Unit = unitOf(key);
  const common = { label: '', unit, ...field.limits };
  return field.kind === 'figure'
    ? { kind: 'number', ...common }
    : { kind: 'numbers', ...common, minItems: field.minItems, maxItems: field.maxItems };
}

function readText(text: string): Reading {
  if (text.trim() === '') return wrong('Give a name.');
  return text.length > LONGEST_NAME ? wrong(`Longer than ${LONGEST_NAME} characters.`) : fine(text);
}

function readNumbers(key: string, field: Figure | Figures, text: string, unit: LengthUnit): Reading {
  if (field.optional && text.trim() === '') return fine(undefined);
  const reading = readField(inputOf(key, field), text, unit);
  return 'problem' in reading ? wrong(reading.problem) : fine(reading.value);
}

/** Readings of parts, with their problems under the parts' names. */
function together(parts: readonly (readonly [string | number, Reading])[]): Problems {
  const problems: Record<string, string> = {};
  for (const [key, reading] of parts) {
    for (const [path, problem] of Object.entries(reading.problems)) {
      const inner = path === '' || path.startsWith('[') ? path : `.${path}`;
      problems[`${dotted([key])}${inner}`] = problem;
    }
  }
  return Object.keys(problems).length > 0 ? problems : NONE;
}

function readList({ of, minItems }: List, rows: readonly Draft[], unit: LengthUnit): Reading {
  const readings = rows.map((row) => readPart('', of, row, unit));
  const problems = together(readings.map((reading, i) => [i, reading]));
  return rows.length < minItems
    ? { value: undefined, problems: { ...problems, '': `At least ${minItems} needed.` } }
    : { value: readings.map(({ value }) => value), problems };
}

function readSection({ fields }: Section, draft: Draft, unit: LengthUnit): Reading {
  const content = isSection(draft) ? draft : {};
  const readings = Object.entries(fields).map(
    ([key, field]) => [key, readPart(key, field, content[key], unit)] as const,
  );
  const there = readings.filter(([, { value }]) => value !== undefined);
  return {
    value: Object.fromEntries(there.map(([key, { value }]) => [key, value])),
    problems: together(readings),
  };
}

/** What was read from a part that has not changed since. */
const remembered = new WeakMap<object, Reading & { readonly unit: LengthUnit; readonly field: Field }>();

/** Reads what a form says of one place, and everything in it. */
export function readPart(key: string, field: Field, draft: Draft | undefined, unit: LengthUnit): Reading {
  if (field.open && draft === CHOOSE) return fine(CHOOSE);
  if (draft === undefined && field.optional) return fine(undefined);
  if (field.kind === 'list' || field.kind === 'section') {
    const part = typeof draft === 'object' ? draft : field.kind === 'list' ? [] : {};
    const before = remembered.get(part);
    if (before && before.unit === unit && before.field === field) return before;
    const reading =
      field.kind === 'list'
        ? readList(field, part as readonly Draft[], unit)
        : readSection(field, part, unit);
    const known = { ...reading, unit, field };
    remembered.set(part, known);
    return known;
  }
  const text = typeof draft === 'string' ? draft : '';
  switch (field.kind) {
    case 'text':
      return readText(text);
    case 'choice':
      return field.names.includes(text) ? fine(text) : wrong(notAChoice(text));
    default:
      return readNumbers(key, field, text, unit);
  }
}
