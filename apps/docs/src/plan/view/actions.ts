import type { LengthUnit } from '../../calculator/lengths.ts';
import type { Draft, Path } from '../draft.ts';

/** What can be asked for on the page. */
export interface Actions {
  /** Puts something into a place of the form; changes of one run are undone at once. */
  fill(path: Path, draft: Draft | undefined, run?: string): void;
  /** Leaves a place to the planner, or takes what it chose. */
  choose(path: Path, chosen: boolean): void;
  addRow(path: Path): void;
  removeRow(path: Path, index: number): void;
  /** Plans a section that was left out, with the figures of an example. */
  addSection(path: Path): void;
  setUnit(unit: LengthUnit): void;
}

/** What everything in the form is given. */
export interface InForm {
  readonly act: Actions;
  readonly unit: LengthUnit;
}
