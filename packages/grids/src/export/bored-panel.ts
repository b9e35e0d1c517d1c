import { type Limits, requireFields, requireThat } from '@scantling/rules';
import type { Point } from '../geometry.ts';
import { MOST_HOLES, place, side } from '../limits.ts';
import type { Panel, Shape } from '../shape.ts';

/** A round hole, as `layoutHoles` gives it, with its diameter. */
export interface BoredHole extends Point {
  /** Diameter, mm, 0.1 to 1000. */
  readonly diameterMm: number;
  /** Counted from 0 at the front, up to a million. */
  readonly row?: number;
  /** Counted from 0 at the left, up to a million. */
  readonly column?: number;
  /** From its rim to whatever is nearest, mm, −20 000 to 20 000. */
  readonly clearanceMm?: number;
  /** What is nearest. */
  readonly nearest?: string;
}

/** Something that holes miss, as `layoutHoles` takes it: where it is on building day, and its name. */
export type NamedShape = Shape & {
  /** Its name. */
  readonly id: string;
};

/** A panel with its holes, seen from above: x along the grain, y across it, from the front-left corner. */
export interface BoredPanel {
  /** What the drawing calls it. */
  readonly title?: string;
  readonly panel: Panel;
  /** At most 20 000, each with its centre on the panel. */
  readonly holes: readonly BoredHole[];
  /** At most 1000; those of the grid fit as they are. */
  readonly keepOuts?: readonly NamedShape[];
}

const counted: Limits = { min: 0, max: 1_000_000, integer: true };

export function requireText(caller: string, path: string, given: unknown): void {
  requireThat(caller, typeof given === 'string', `${path} to be a text, got ${typeof given}`);
}

export function requireItems(
  caller: string,
  path: string,
  given: unknown,
  fewest: number,
  most: number,
): void {
  requireThat(caller, Array.isArray(given), `${path} to be a list, got ${typeof given}`);
  const { length } = given as unknown[];
  requireThat(
    caller,
    length >= fewest && length <= most,
    `${path} to have ${fewest} to ${most} items, got ${length}`,
  );
}

/** Throws unless every hole has its place within the limits, a diameter, and nothing but numbers and texts besides. */
export function requireHoles(
  caller: string,
  holes: readonly BoredHole[],
  centre: { readonly xMm: Limits; readonly yMm: Limits },
  fewest = 0,
): void {
  requireItems(caller, 'holes', holes, fewest, MOST_HOLES);
  for (const [i, hole] of holes.entries()) {
    const path = `holes[${i}]`;
    requireFields(caller, path, hole, { ...centre, diameterMm: { min: 0.1, max: 1000 } });
    if (hole.row !== undefined) requireFields(caller, path, hole, { row: counted });
    if (hole.column !== undefined) requireFields(caller, path, hole, { column: counted });
    if (hole.clearanceMm !== undefined) requireFields(caller, path, hole, { clearanceMm: place });
    if (hole.nearest !== undefined) requireText(caller, `${path}.nearest`, hole.nearest);
  }
}

/** Throws unless there is a panel, and every hole is on it. */
export function requireBoredPanel(caller: string, input: BoredPanel, fewestHoles = 0): void {
  const { title, panel, holes } = input ?? {};
  if (title !== undefined) requireText(caller, 'title', title);
  requireFields(caller, 'panel', panel, { lengthMm: side, widthMm: side });
  const centre = { xMm: { min: 0, max: panel.lengthMm }, yMm: { min: 0, max: panel.widthMm } };
  requireHoles(caller, holes, centre, fewestHoles);
}
