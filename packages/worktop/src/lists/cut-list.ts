import { csvFormatRows } from 'd3-dsv';
import { inches } from '../lengths.ts';
import type { WorktopPlan } from '../result.ts';
import { cutRows } from './rows.ts';
import { shoppingPlan } from './shopping-plan.ts';

const fixed = (mm: number | null) => (mm === null ? '' : mm.toFixed(2));
const inInches = (mm: number | null) => (mm === null ? '' : inches(mm));

/**
 * Every part to cut, rough, with what it is cut from and where it lies there.
 *
 * @param result - A computed plan.
 * @param shopping - Its shopping plan, where that is at hand.
 * @returns CSV (RFC 4180) with a heading row, millimetres and inches to the nearest 1/64. `x_mm` and `y_mm` count from
 * the left end and the front edge of a board, or from the end of a bar as carried home. `carried` tells the lengths of
 * one section apart, as the yard cuts them. `from` is empty where the plan names nothing on offer that the part is cut
 * from.
 * @example
 * ```ts
 * import { cutList, planWorktop } from '@scantling/worktop';
 * import { binderyBench } from '@scantling/worktop/examples';
 * import { parsePlan } from '@scantling/worktop/schema';
 * cutList(planWorktop(parsePlan(binderyBench))).split('\n')[0] // => 'part,count,length_mm,width_mm,thickness_mm,length_in,width_in,thickness_in,from,carried,x_mm,y_mm'
 * ```
 */
export function cutList(result: WorktopPlan, shopping = shoppingPlan(result)): string {
  const sides = ['length', 'width', 'thickness'];
  const heading = [
    'part',
    'count',
    ...sides.map((side) => `${side}_mm`),
    ...sides.map((side) => `${side}_in`),
    'from',
    'carried',
    'x_mm',
    'y_mm',
  ];
  const rows = cutRows(shopping).map(
    ({ part, count, lengthMm, widthMm, thicknessMm, from, carried, xMm, yMm }) => [
      part,
      String(count),
      ...[lengthMm, widthMm, thicknessMm].map(fixed),
      ...[lengthMm, widthMm, thicknessMm].map(inInches),
      from,
      carried === null ? '' : String(carried),
      fixed(xMm),
      fixed(yMm),
    ],
  );
  return `${csvFormatRows([heading, ...rows])}\n`;
}
