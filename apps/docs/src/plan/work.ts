import type { Plan, WorktopPlan } from '@scantling/worktop';
import { planField } from '@scantling/worktop/fields';
import type { LengthUnit } from '../calculator/lengths.ts';
import { contentOf } from './content.ts';
import { type Draft, type DraftSection, draftOf, type Path, put } from './draft.ts';
import { withUnits } from './lengths-as-typed.ts';
import { type Problems, type Reading, readPart } from './read.ts';

/** What a form says, and which unit its bare lengths are in. */
export interface Sheet {
  readonly unit: LengthUnit;
  readonly plan: DraftSection;
}

/** A sheet at work, with the sheets before it. */
export interface Work {
  readonly sheet: Sheet;
  readonly before: readonly Sheet[];
  /** The field that was typed into last: what is typed there in one run is undone at once. */
  readonly run: string;
}

/** What comes of a sheet. */
export interface Outcome {
  readonly reading: Reading;
  /** What is wrong with fields, each by itself or with another, by their paths. */
  readonly problems: Problems;
  /** `null` where there is a problem. */
  readonly result: WorktopPlan | null;
}

/** So many changes can be undone. */
const MOST_BEFORE = 100;

export const sheetOf = (content: unknown, unit: LengthUnit = 'mm'): Sheet => ({
  unit,
  plan: draftOf(planField, content) as DraftSection,
});

export const begun = (sheet: Sheet): Work => ({ sheet, before: [], run: '' });

/** After a change; changes of one run count as one. */
export function changed(work: Work, sheet: Sheet, run = ''): Work {
  const goesOn = run !== '' && run === work.run;
  const before = goesOn ? work.before : [...work.before.slice(1 - MOST_BEFORE), work.sheet];
  return { sheet, before, run };
}

/** Without the last change. */
export function undone(work: Work): Work {
  const sheet = work.before.at(-1);
  return sheet ? { sheet, before: work.before.slice(0, -1), run: '' } : work;
}

export const filledIn = ({ unit, plan }: Sheet, path: Path, draft: Draft | undefined): Sheet => ({
  unit,
  plan: put(plan, path, draft) as DraftSection,
});

/** With another unit for bare lengths: those that are there say theirs from now on, so that the plan stays the same. */
export const inUnit = (sheet: Sheet, unit: LengthUnit): Sheet =>
  unit === sheet.unit
    ? sheet
    : { unit, plan: withUnits('', planField, sheet.plan, sheet.unit) as DraftSection };

/** The plan as a plan file has it, for a sheet that can be read. */
export const planContent = ({ plan, unit }: Sheet): object => ({
  version: 2,
  ...(contentOf('', planField, plan, unit) as object),
});

/** A refusal names the place that it is about: `planWorktop requires top.species to be …`. */
function refusal(message: string): Problems {
  const [, path = '', rest = message] = /^\w+ requires ([\w.[\]]+) (.*)$/s.exec(message) ?? [];
  return { [path]: path === '' ? `${rest}.` : `Has ${rest}.` };
}

/** What a sheet asks for, or what is wrong with its fields. */
export function asked({ plan, unit }: Sheet): { readonly reading: Reading; readonly plan: Plan | null } {
  const reading = readPart('', planField, plan, unit);
  const wrong = Object.keys(reading.problems).length > 0;
  return { reading, plan: wrong ? null : { version: 2, ...(reading.value as Omit<Plan, 'version'>) } };
}

/** What comes of a sheet that can't be planned: for its fields, or because they do not go together. */
export function unplanned(reading: Reading, refused?: unknown): Outcome {
  if (refused === undefined) return { reading, problems: reading.problems, result: null };
  if (!(refused instanceof RangeError)) throw refused;
  return { reading, problems: refusal(refused.message), result: null };
}

/** Reads a sheet and plans the top. */
export function outcome(sheet: Sheet, planned: (plan: Plan) => WorktopPlan): Outcome {
  const { reading, plan } = asked(sheet);
  if (plan === null) return unplanned(reading);
  try {
    return { reading, problems: reading.problems, result: planned(plan) };
  } catch (error) {
    return unplanned(reading, error);
  }
}
