import { type Limits, plusZero, requireInputs, requireThat } from '@scantling/rules';
import { place } from '../limits.ts';
import { type BoredHole, requireHoles, requireText } from './bored-panel.ts';
import { decimal } from './decimal.ts';

/** Holes, and how finely their positions are written. */
export interface HoleTableInput {
  /** At most 20 000, with centres from −20 000 to 20 000 mm. */
  readonly holes: readonly BoredHole[];
  /** Positions are written to the nearest multiple of this, mm, 0.001 to 10: a whole number of thousandths. */
  readonly resolutionMm: number;
  /** Positions in a second unit, beside those in millimetres. */
  readonly alsoIn?: {
    /** Symbol of the unit, for the heading. */
    readonly unit: string;
    /** Writes a length, given in mm. */
    readonly write: (lengthMm: number) => string;
  };
}

const CALLER = 'holeTable';
const resolution: Limits = { min: 0.001, max: 10 };

/** A clearance may miss a step by rounding errors of sums of converted inches. */
const SAME_STEP = 1e-6;

/** A field with a comma, a quote or a line break stands in quotes, with its own quotes doubled (RFC 4180, 2.6 and 2.7). */
const field = (text: string) => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

/** Writes so many steps of a resolution, with the decimals that its multiples need. */
function stepText(resolutionMm: number): (steps: number) => string {
  const thousandths = Math.round(resolutionMm * 1000);
  const decimals = [1000, 100, 10].findIndex((divisor) => thousandths % divisor === 0);
  return (steps) => ((plusZero(steps) * thousandths) / 1000).toFixed(decimals < 0 ? 3 : decimals);
}

function checkInput({ holes, resolutionMm, alsoIn }: HoleTableInput): void {
  requireHoles(CALLER, holes, { xMm: place, yMm: place });
  requireInputs(CALLER, { resolutionMm }, { resolutionMm: resolution });
  const thousandths = resolutionMm * 1000;
  requireThat(
    CALLER,
    Math.abs(thousandths - Math.round(thousandths)) < SAME_STEP,
    `resolutionMm to be a whole number of thousandths, got ${resolutionMm}`,
  );
  if (alsoIn === undefined) return;
  requireText(CALLER, 'alsoIn.unit', alsoIn?.unit);
  requireThat(
    CALLER,
    typeof alsoIn.write === 'function',
    `alsoIn.write to be a function, got ${typeof alsoIn.write}`,
  );
}

interface Column {
  readonly heading: string;
  /** Whether there is anything to write. */
  readonly given: boolean;
  readonly text: (hole: BoredHole) => string;
}

function columnsFor({ holes, resolutionMm, alsoIn }: HoleTableInput): Column[] {
  const write = stepText(resolutionMm);
  const position = (lengthMm: number) => write(Math.round(lengthMm / resolutionMm));
  const down = (lengthMm: number) => write(Math.floor(lengthMm / resolutionMm + SAME_STEP));
  const also = (lengthMm: number) => alsoIn?.write(lengthMm) ?? '';
  const some = (name: keyof BoredHole) => holes.some((hole) => hole[name] !== undefined);
  return [
    { heading: 'row', given: some('row'), text: ({ row }) => String(row ?? '') },
    { heading: 'column', given: some('column'), text: ({ column }) => String(column ?? '') },
    { heading: 'x_mm', given: true, text: ({ xMm }) => position(xMm) },
    { heading: 'y_mm', given: true, text: ({ yMm }) => position(yMm) },
    { heading: `x_${alsoIn?.unit}`, given: alsoIn !== undefined, text: ({ xMm }) => also(xMm) },
    { heading: `y_${alsoIn?.unit}`, given: alsoIn !== undefined, text: ({ yMm }) => also(yMm) },
    { heading: 'diameter_mm', given: true, text: ({ diameterMm }) => decimal(diameterMm) },
    {
      heading: 'clearance_mm',
      given: some('clearanceMm'),
      text: ({ clearanceMm }) => (clearanceMm === undefined ? '' : down(clearanceMm)),
    },
    { heading: 'nearest', given: some('nearest'), text: ({ nearest }) => nearest ?? '' },
  ];
}

/**
 * The holes as a table for the shop or a spreadsheet: CSV as RFC 4180 defines it, with a heading row and units in the
 * headings. Every position is rounded for itself, so that a row of holes never drifts; a clearance is rounded down.
 * Row, column, clearance and what is nearest have columns where at least one hole says them.
 *
 * @param input - The holes, the resolution of the positions in mm, and perhaps a second unit to write them in.
 * @returns CSV; lines end in CR LF.
 * @throws RangeError where a field is missing or outside its limits, by its path: `holes[3].xMm`.
 * @example
 * ```ts
 * import { holeTable } from '@scantling/grids/export';
 * const holes = [
 *   { row: 0, column: 0, xMm: 60, yMm: 56, diameterMm: 20, clearanceMm: 8.127, nearest: 'brass strip' },
 *   { row: 0, column: 1, xMm: 155.96, yMm: 56, diameterMm: 20, clearanceMm: 46, nearest: 'front edge' },
 * ];
 * holeTable({ holes, resolutionMm: 0.1 }).split('\r\n') // => ['row,column,x_mm,y_mm,diameter_mm,clearance_mm,nearest', '0,0,60.0,56.0,20,8.1,brass strip', '0,1,156.0,56.0,20,46.0,front edge', '']
 * ```
 */
export function holeTable(input: HoleTableInput): string {
  checkInput(input ?? {});
  const shown = columnsFor(input).filter(({ given }) => given);
  const lines = [
    shown.map(({ heading }) => heading),
    ...input.holes.map((hole) => shown.map(({ text }) => text(hole))),
  ];
  return lines.map((fields) => `${fields.map(field).join(',')}\r\n`).join('');
}
