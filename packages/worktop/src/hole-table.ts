import { holeTable as tableOf } from '@scantling/grids/export';
import { inches } from './lengths.ts';
import type { WorktopPlan } from './result.ts';

/** Finer than anybody marks out or drills. */
const RESOLUTION_MM = 0.01;

/**
 * The holes as a table for the shop: position of each centre from the datum, in millimetres and to the nearest
 * 1/64 in, with its clearance through the year, rounded down.
 *
 * @param result - A computed plan.
 * @returns CSV (RFC 4180) with a heading row; lines end in CR LF.
 * @example
 * ```ts
 * import { holeTable, planWorktop } from '@scantling/worktop';
 * import { binderyBench } from '@scantling/worktop/examples';
 * import { parsePlan } from '@scantling/worktop/schema';
 * holeTable(planWorktop(parsePlan(binderyBench))).split('\r\n')[0] // => 'row,column,x_mm,y_mm,x_in,y_in,diameter_mm,clearance_mm,nearest'
 * ```
 */
export const holeTable = ({ plan, holes }: Pick<WorktopPlan, 'plan' | 'holes'>): string =>
  tableOf({
    holes: holes.map((hole) => ({ ...hole, diameterMm: plan.holes.diameterMm })),
    resolutionMm: RESOLUTION_MM,
    alsoIn: { unit: 'in', write: inches },
  });
