import { worst } from '../checks/index.ts';
import type { Check, Status, WorktopPlan } from '../result.ts';
import { inMoney } from './answer.ts';
import { type BarPurchase, barPurchases } from './bars.ts';
import { type BoardPurchase, boardPurchase } from './boards.ts';
import { checkBars, checkBoards, checkLiquids } from './checks.ts';
import { type LiquidPurchase, liquidPurchases } from './liquids.ts';

/** Screws that are alike. */
export interface NeededScrews {
  /** What they are for. */
  readonly name: string;
  readonly count: number;
  readonly diameterMm: number;
  /** `null` where the plan says nothing of these screws but their diameter. */
  readonly lengthMm: number | null;
}

/** The strip, finished size. */
export interface NeededStrip {
  readonly name: string;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
}

/** What to buy, what it costs, and how it is cut. */
export interface ShoppingPlan {
  /** `null` where the plan does not say how the top is glued up. */
  readonly boards: BoardPurchase | null;
  /** One for each section. */
  readonly bars: readonly BarPurchase[];
  /** `null` without a strip, or where it is one of the parts that are cut from bars. */
  readonly strip: NeededStrip | null;
  readonly screws: readonly NeededScrews[];
  readonly glue: { readonly name: string; readonly massG: number } | null;
  readonly liquids: readonly LiquidPurchase[];
  /** All that has a price; `null` where the plan names nothing on offer. */
  readonly totalPrice: number | null;
  /** No shopping list for these parts costs less; `null` with the total. */
  readonly boundPrice: number | null;
  /** Whether the total is proven to be the least. */
  readonly proven: boolean;
  readonly status: Status;
  readonly checks: readonly Check[];
}

function screwsOf({ plan, fixings, screws, strip }: WorktopPlan): NeededScrews[] {
  const top = {
    name: 'screws that hold the top',
    count: fixings.length,
    diameterMm: plan.base.shankDiameterMm,
    lengthMm: screws?.lengthMm ?? null,
  };
  if (!strip || !plan.strip) return [top];
  const { shankDiameterMm: diameterMm, screwLengthMm: lengthMm } = plan.strip;
  return [top, { name: `screws of ${strip.name}`, count: strip.screws.length, diameterMm, lengthMm }];
}

function stripOf({ plan, strip }: WorktopPlan): NeededStrip | null {
  if (!strip || !plan.strip || plan.stock?.bars?.parts.some(({ name }) => name === strip.name)) return null;
  const { name, lengthMm, widthMm } = strip;
  return { name, lengthMm, widthMm, thicknessMm: plan.strip.thicknessMm };
}

/**
 * What to buy for a plan, at the least price that is found, and how to cut it. It stands apart from the plan, because to
 * prove a price may take up to a second where many parts come from many boards or bars.
 *
 * @param result - A computed plan. Where it names nothing on offer, the list says what is needed, without prices.
 * @returns Purchases with their price, what no price can be below, and checks that everything can be had.
 * @example
 * ```ts
 * import { planWorktop, shoppingPlan } from '@scantling/worktop';
 * import { binderyBench } from '@scantling/worktop/examples';
 * import { parsePlan } from '@scantling/worktop/schema';
 * const { screws, liquids } = shoppingPlan(planWorktop(parsePlan(binderyBench)));
 * screws[0].count // => 6
 * liquids.map(({ name }) => name) // => ['varnish', 'mineral spirits']
 * ```
 */
export function shoppingPlan(result: WorktopPlan): ShoppingPlan {
  const { plan, glueUp } = result;
  const boards = boardPurchase(result);
  const bars = barPurchases(plan);
  const liquids = liquidPurchases(result);
  const priced = [...(boards?.offer ? [boards.offer] : []), ...bars];
  const containers = liquids.reduce((sum, { totalPrice }) => sum + totalPrice, 0);
  const sum = (of: 'totalPrice' | 'boundPrice') =>
    plan.stock ? inMoney(priced.reduce((total, one) => total + one[of], containers)) : null;
  const checks = [checkBoards(boards), checkBars(bars), checkLiquids(liquids, plan)].filter(
    (check) => check !== null,
  );
  return {
    boards,
    bars,
    strip: stripOf(result),
    screws: screwsOf(result),
    glue: glueUp && plan.glueUp ? { name: plan.glueUp.glue.name, massG: glueUp.glueMassG } : null,
    liquids,
    totalPrice: sum('totalPrice'),
    boundPrice: sum('boundPrice'),
    proven: priced.every(({ proven }) => proven),
    status: worst(checks),
    checks,
  };
}
