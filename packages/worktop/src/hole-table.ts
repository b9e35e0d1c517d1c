import { csvFormatRows } from 'd3-dsv';
import { inches } from './lengths.ts';
import type { WorktopPlan } from './result.ts';

/**
 * The holes as a table for the shop: position of each centre from the datum, in millimetres and to the nearest
 * 1/64 in, with its clearance through the year.
 *
 * @param result - A computed plan.
 * @returns CSV (RFC 4180) with a heading row.
 * @example
 * ```ts
 * import { holeTable, planWorktop } from '@scantling/worktop';
 * import { binderyBench } from '@scantling/worktop/examples';
 * import { parsePlan } from '@scantling/worktop/schema';
 * holeTable(planWorktop(parsePlan(binderyBench))).split('\n')[0] // => 'row,column,x_mm,y_mm,x_in,y_in,clearance_mm,nearest'
 * ```
 */
export function holeTable({ holes }: Pick<WorktopPlan, 'holes'>): string {
  const heading = ['row', 'column', 'x_mm', 'y_mm', 'x_in', 'y_in', 'clearance_mm', 'nearest'];
  const rows = holes.map(({ row, column, xMm, yMm, clearanceMm, nearest }) => [
    String(row),
    String(column),
    xMm.toFixed(2),
    yMm.toFixed(2),
    inches(xMm),
    inches(yMm),
    clearanceMm.toFixed(2),
    nearest,
  ]);
  return `${csvFormatRows([heading, ...rows])}\n`;
}
