import { type BoughtBar, type CutBar, cutBars } from '@scantling/stock';
import type { SettledPlan } from '../plan/plan.ts';
import type { BarPart, BarStock } from '../plan/stock.ts';
import { answerOf } from './answer.ts';

/** Bars to buy. */
export interface BarsToBuy extends BoughtBar {
  readonly eachPrice: number;
}

/** Bars of one section, and the parts that are cut from them. */
export interface BarPurchase {
  readonly section: string;
  readonly parts: readonly BarPart[];
  readonly buy: readonly BarsToBuy[];
  readonly cuts: readonly CutBar[];
  /** Parts that no bar on offer gives, as it is carried home. */
  readonly tooLong: readonly BarPart[];
  readonly totalPrice: number;
  /** No way to cut these parts costs less. */
  readonly boundPrice: number;
  readonly proven: boolean;
}

function ofSection(section: string, stock: BarStock): BarPurchase {
  const { kerfMm, endTrimMm, longestCarriedMm } = stock;
  const parts = stock.parts.filter((part) => part.section === section);
  const bars = stock.bars.filter((bar) => bar.section === section);
  const cut = (some: readonly BarPart[]) =>
    answerOf('cutBars', () =>
      cutBars({
        parts: some,
        bars,
        ...{ kerfMm, endTrimMm },
        ...(longestCarriedMm == null ? {} : { longestCarriedMm }),
      }),
    );
  const cuttable = parts.filter((part) => cut([{ ...part, count: 1 }]) !== null);
  const plan = cuttable.length ? cut(cuttable) : null;
  return {
    section,
    parts,
    buy: (plan?.buy ?? []).map((bought) => ({
      ...bought,
      eachPrice: bars.find(({ name }) => name === bought.name)?.eachPrice ?? 0,
    })),
    cuts: plan?.bars ?? [],
    tooLong: parts.filter((part) => !cuttable.includes(part)),
    totalPrice: plan?.totalPrice ?? 0,
    boundPrice: plan?.boundPrice ?? 0,
    proven: plan?.proven ?? true,
  };
}

/** What to buy and cut of each section, in the order in which the parts name them. */
export function barPurchases({ stock }: SettledPlan): BarPurchase[] {
  const bars = stock?.bars;
  if (!bars) return [];
  return [...new Set(bars.parts.map(({ section }) => section))].map((section) => ofSection(section, bars));
}
