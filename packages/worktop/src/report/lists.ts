import type { CutBar, CutPiece } from '@scantling/stock';
import { bothUnits, millimetres, neededInBoth, thereIs } from '../lengths.ts';
import { cutsOf } from '../lists/cuts.ts';
import { shoppingRows } from '../lists/rows.ts';
import type { ShoppingPlan } from '../lists/shopping-plan.ts';
import type { SettledPlan } from '../plan/plan.ts';
import { checkLines } from './checks.ts';
import { columns, section } from './text.ts';

function boardLines({ boards }: ShoppingPlan, stock: SettledPlan['stock']): string[] {
  if (!boards) return [];
  const { name, count, lengthMm, widthMm, thicknessMm } = boards.needed;
  const size = [lengthMm, widthMm, thicknessMm].map(neededInBoth).join(' × ');
  const lines = [`${count} × ${name}, rough at least ${size}`];
  if (!boards.offer || !stock) return lines;
  const { buy, missingCount } = boards.offer;
  return [
    ...lines,
    `off each board first: ${millimetres(stock.boardEndTrimMm)} at each end, ${millimetres(stock.boardEdgeTrimMm)} at each edge`,
    ...buy.map(({ boardId, blank, parts }) => {
      const cuts = cutsOf(blank);
      return `${boardId}: ${parts.length} of them; ${cuts.join(', then ')}`;
    }),
    ...(missingCount ? [`${missingCount} can't be had from the boards on offer`] : []),
  ];
}

const piecesOf = (pieces: readonly CutPiece[]) =>
  pieces.map(({ name, lengthMm }) => `${name} ${bothUnits(lengthMm)}`).join(', ');

const barLine = ({ name, lengthMm, count, pieces, offcutMm }: CutBar, i: number) =>
  `  ${i + 1}. ${count} × ${thereIs(lengthMm)} of ${name}: ${piecesOf(pieces) || 'stays whole'}; ${thereIs(offcutMm)} left`;

/** `null` where the plan names nothing that is cut. */
export function cutSection(shopping: ShoppingPlan, { stock }: SettledPlan): string | null {
  const { bars, strip } = shopping;
  const lines = [
    ...boardLines(shopping, stock),
    ...bars.flatMap(({ section: name, cuts, tooLong }) => [
      `${name}:`,
      ...cuts.map(barLine),
      ...tooLong.map((part) => `  ${part.count} × ${part.name} ${bothUnits(part.lengthMm)}: longer than any`),
    ]),
    ...(strip
      ? [
          `1 × ${strip.name}, ${bothUnits(strip.lengthMm)} × ${bothUnits(strip.widthMm)} × ${millimetres(strip.thicknessMm)}`,
        ]
      : []),
  ];
  return lines.length ? section('Cut list', lines) : null;
}

export function shoppingSection(shopping: ShoppingPlan): string {
  const { totalPrice, boundPrice, proven, status, checks } = shopping;
  const money = (price: number | null) => (price === null ? '' : price.toFixed(2).padStart(8));
  const rows = shoppingRows(shopping).map(({ item, count, size, price }) => [
    count === null ? '' : `${count} ×`,
    item,
    size,
    money(price),
  ]);
  const proof = proven
    ? ', the least there is'
    : `; not proven to be the least, none is below ${boundPrice?.toFixed(2)}`;
  return section('Shopping list', [
    ...columns(rows),
    ...(totalPrice === null
      ? ['Without prices: the plan names nothing on offer.']
      : [
          `${status === 'fail' ? 'What can be had' : 'All that has a price'}: ${totalPrice.toFixed(2)}${proof}`,
        ]),
    ...checks.filter(({ status }) => status !== 'pass').map(checkLines),
  ]);
}
