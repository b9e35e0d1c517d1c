import { type FixingPlan, type FixingsInput, lineY, planAbout, requireFixings } from './plan-fixings.ts';
import { SAME_MM } from './screw-opening.ts';

/** A line where the top may be held, with the whole plan that follows. */
export interface FixedLineChoice {
  /** `middle`, midway between the front and the back row, whether a row lies there or not; else `front row`, `row 2` … */
  readonly line: string;
  readonly plan: FixingPlan;
}

/** Every choice from front to back. */
export interface FixedLineComparison {
  readonly choices: readonly FixedLineChoice[];
  /** Of the choices whose plan has a screw that holds the top, the one whose longest swing is least; `null` where none has. */
  readonly leastSwing: FixedLineChoice | null;
}

/**
 * The same top held at each row of its fixings, and midway between the first row and the last: every slot and both
 * overhangs for each. The longest swing, and the longest slot that has to be cut anew, is least in the middle, since both
 * grow with the distance and some extreme row lies at least half of their spacing away from any line. But a line holds the
 * top only where a screw stands on it.
 *
 * @param input - As for `planFixings`, without the fixed line.
 * @returns Each choice with its plan, from front to back, and the one that swings least among those that hold the top.
 * @throws RangeError where a field is missing or outside its limits, naming its path.
 * Source: where to hold a top is published practice (Attaching Tabletops, 2007, p. 38–39): in the middle where it is used
 *   from all sides, at the back against a wall, at the front of a desk.
 * @example
 * ```ts
 * import { compareFixedLines } from '@scantling/fastening';
 * const screw = (name, yMm) => ({ name, xMm: 0, yMm, by: { kind: 'screw' } });
 * const { choices, leastSwing } = compareFixedLines({
 *   top: { frontYMm: 0, backYMm: 600 },
 *   base: { frontYMm: 50, backYMm: 550 },
 *   fixings: [screw('a', 75), screw('b', 175), screw('c', 475)],
 *   swellPct: 1,
 *   shrinkPct: 0.5,
 *   shankDiameterMm: 6,
 *   clearanceMm: 0.5,
 * });
 * choices.map(({ line }) => line) // => ['front row', 'row 2', 'middle', 'back row']
 * choices.map(({ plan }) => plan.longestSwingMm) // => [6, 4.5, 3, 6]
 * choices.map(({ plan }) => plan.holding) // => [['a'], ['b'], [], ['c']]
 * leastSwing.line // => 'row 2'
 * ```
 */
export function compareFixedLines(input: Omit<FixingsInput, 'fixedLine'>): FixedLineComparison {
  requireFixings('compareFixedLines', input);
  const ascending = input.fixings.map(({ yMm }) => yMm).sort((a, b) => a - b);
  const rows = ascending.filter((yMm, i) => i === 0 || yMm - (ascending[i - 1] as number) > SAME_MM);
  const at = (line: string, yMm: number): FixedLineChoice => ({ line, plan: planAbout(yMm, input) });
  const name = (i: number) => {
    if (i === 0) return 'front row';
    return i === rows.length - 1 ? 'back row' : `row ${i + 1}`;
  };
  const middle = at('middle', lineY('compareFixedLines', 'middle', input.fixings));
  const beyondMm = ({ plan }: FixedLineChoice) => plan.fixedLineYMm - middle.plan.fixedLineYMm;
  const byRow = rows.map((yMm, i) => at(name(i), yMm));
  const choices = [
    ...byRow.filter((choice) => beyondMm(choice) < -SAME_MM),
    middle,
    ...byRow.filter((choice) => beyondMm(choice) > SAME_MM),
  ];
  const [leastSwing = null] = choices
    .filter(({ plan }) => plan.holding.length > 0)
    .sort((a, b) => a.plan.longestSwingMm - b.plan.longestSwingMm);
  return { choices, leastSwing };
}
