import { figure } from '../checks/check.ts';
import { needed } from '../lengths.ts';
import type { SettledPlan } from '../plan/plan.ts';
import type { Check, Status } from '../result.ts';
import type { BarPurchase } from './bars.ts';
import type { BoardPurchase } from './boards.ts';
import type { LiquidPurchase } from './liquids.ts';

/** What a price may be above the least there is, where that is not proven. */
const gap = ({
  totalPrice,
  boundPrice,
  proven,
}: Pick<BarPurchase, 'totalPrice' | 'boundPrice' | 'proven'>) =>
  proven
    ? `${totalPrice.toFixed(2)} is proven to be the least price.`
    : `${totalPrice.toFixed(2)} is the least price that was found; not proven, none is below ${boundPrice.toFixed(2)}.`;

const verdict = (missing: boolean, proven: boolean): Status => (missing ? 'fail' : proven ? 'pass' : 'warn');

/** The top's boards come out of those on offer. */
export function checkBoards(boards: BoardPurchase | null): Check | null {
  if (!boards?.offer) return null;
  const { count, lengthMm, widthMm, thicknessMm } = boards.needed;
  const { buy, missingCount, tooThin, totalPrice, proven } = boards.offer;
  const size = `${needed(lengthMm)} × ${needed(widthMm)}, ${needed(thicknessMm)} thick`;
  const thin = tooThin.length ? [`Too thin for it: ${tooThin.join(', ')}.`] : [];
  const found = `All ${count} boards, rough ${size}, come out of ${buy.length} on offer. ${gap(boards.offer)}`;
  const short = `stock.boards: ${missingCount} of ${count} boards can't be had from those on offer; each needs ${size}, clear of knots and splits, inside the trims. Offer more, or change glueUp.boardCount.`;
  return {
    id: 'boards',
    title: 'The boards on offer are enough',
    status: verdict(missingCount > 0, proven),
    says: [missingCount ? short : found, ...thin].join('\n'),
    figures: [
      figure('boards needed', count, '1'),
      figure('boards missing', missingCount, '1'),
      figure('price', totalPrice, '¤'),
    ],
    margin: { given: count - missingCount, min: count, unit: '1' },
    rules: [],
  };
}

/** Every part of bar stock comes out of the bars on offer. */
export function checkBars(bars: readonly BarPurchase[]): Check | null {
  if (bars.length === 0) return null;
  const long = bars.flatMap(({ section, tooLong }) =>
    tooLong.map(
      ({ name, lengthMm }) =>
        `stock.bars.parts, ${name}: ${needed(lengthMm)} comes out of no bar ${section} on offer as it is carried home.`,
    ),
  );
  const fine = bars
    .filter(({ buy }) => buy.length > 0)
    .map(
      (bar) =>
        `${bar.section}: ${bar.buy.map(({ name, count }) => `${count} × ${name}`).join(', ')}. ${gap(bar)}`,
    );
  return {
    id: 'bars',
    title: 'The bars on offer are enough',
    status: verdict(
      long.length > 0,
      bars.every(({ proven }) => proven),
    ),
    says: [...long, ...fine].join('\n'),
    figures: bars.map(({ section, totalPrice }) => figure(`price of ${section}`, totalPrice, '¤')),
    rules: [],
  };
}

/** Every liquid that is short can be bought. */
export function checkLiquids(liquids: readonly LiquidPurchase[], { stock }: SettledPlan): Check | null {
  if (!stock) return null;
  const lacking = liquids.filter(({ buy }) => buy === null);
  const short = liquids.filter(({ buy }) => buy !== null && buy.length > 0);
  const says = [
    ...lacking.map(
      ({ name, missingMl }) =>
        `stock.containers: ${Math.ceil(missingMl)} mL of ${name} is missing, and no container of it is on offer.`,
    ),
    ...short.map(
      ({ name, buy, totalPrice, leftMl }) =>
        `${name}: ${(buy ?? []).map(({ count, volumeMl }) => `${count} × ${volumeMl} mL`).join(', ')} for ${totalPrice.toFixed(2)}, the least price; ${Math.floor(leftMl)} mL stays over.`,
    ),
  ];
  return {
    id: 'liquids',
    title: 'What is short of the finish can be bought',
    status: lacking.length ? 'fail' : 'pass',
    says: says.length ? says.join('\n') : 'There is enough of everything on hand.',
    figures: liquids.map(({ name, missingMl }) => figure(`${name} to buy`, missingMl, 'mL')),
    rules: [],
  };
}
