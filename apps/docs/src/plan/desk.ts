import type { WorktopPlan } from '@scantling/worktop';
import { planField } from '@scantling/worktop/fields';
import { at, CHOOSE, type Draft, dotted, type Path } from './draft.ts';
import { pathIn, placeOf } from './labels.ts';
import { draftIn, fieldAt } from './places.ts';
import { withoutRow, withRow } from './rows.ts';
import { filledIn, type Sheet } from './work.ts';

/** What the planner chose for a place, as it would stand in a plan. */
function chosenAt(path: Path, sheet: Sheet, result: WorktopPlan | null): unknown {
  const place = dotted(path);
  return result?.chosen.find(
    (one) => dotted(placeOf(planField.fields, sheet.plan, pathIn(one.path))) === place,
  )?.value;
}

/** With a place left to the planner, or with what it chose there taken over. */
export const withChoice = (sheet: Sheet, path: Path, left: boolean, result: WorktopPlan | null): Sheet => {
  const field = fieldAt(path);
  const taken = draftIn(path, chosenAt(path, sheet, result) ?? {}, sheet.unit);
  return filledIn(sheet, path, left && field.open ? CHOOSE : taken);
};

const rowsAt = (sheet: Sheet, path: Path): readonly Draft[] => {
  const rows = at(sheet.plan, path);
  return Array.isArray(rows) ? rows : [];
};

/** With one more row, like the last, or where there is none like one of an example. */
export function withAnotherRow(sheet: Sheet, path: Path, example: unknown): Sheet {
  const field = fieldAt(path);
  if (field.kind !== 'list') return sheet;
  const like = draftIn(path, example, sheet.unit);
  return filledIn(sheet, path, withRow(field, rowsAt(sheet, path), like));
}

export const withoutOneRow = (sheet: Sheet, path: Path, index: number): Sheet =>
  filledIn(sheet, path, withoutRow(rowsAt(sheet, path), index));

/** With a section that was left out, as an example has it. */
export const withSection = (sheet: Sheet, path: Path, example: unknown): Sheet =>
  filledIn(sheet, path, draftIn(path, example ?? {}, sheet.unit));
