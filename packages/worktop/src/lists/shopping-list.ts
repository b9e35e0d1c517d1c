import { csvFormatRows } from 'd3-dsv';
import type { WorktopPlan } from '../result.ts';
import { shoppingRows } from './rows.ts';
import { shoppingPlan } from './shopping-plan.ts';

/**
 * Everything to get for a plan: boards, glue, bars, the strip, screws, and what is short of the finish.
 *
 * @param result - A computed plan.
 * @param shopping - Its shopping plan, where that is at hand.
 * @returns CSV (RFC 4180) with a heading row. Prices stand where the plan names what is on offer, in its currency; the
 * last row is their total.
 * @example
 * ```ts
 * import { planWorktop, shoppingList } from '@scantling/worktop';
 * import { binderyBench } from '@scantling/worktop/examples';
 * import { parsePlan } from '@scantling/worktop/schema';
 * shoppingList(planWorktop(parsePlan(binderyBench))).split('\n')[0] // => 'item,count,size,price_each,price'
 * ```
 */
export function shoppingList(result: WorktopPlan, shopping = shoppingPlan(result)): string {
  const money = (price: number | null) => (price === null ? '' : price.toFixed(2));
  const rows = shoppingRows(shopping).map(({ item, count, size, eachPrice, price }) => [
    item,
    count === null ? '' : String(count),
    size,
    money(eachPrice),
    money(price),
  ]);
  const { totalPrice } = shopping;
  const total = totalPrice === null ? [] : [['total', '', '', '', money(totalPrice)]];
  return `${csvFormatRows([['item', 'count', 'size', 'price_each', 'price'], ...rows, ...total])}\n`;
}
