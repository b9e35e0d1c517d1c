import { spreadingRate, thinnedSolids } from '@scantling/finishing';
import { type Claim, claim, oneOf, ordered, ownNames } from './claim.ts';
import type { Plan } from './plan.ts';
import type { OfferedBoard, Stock } from './stock.ts';

/** Sums of hours and of millimetres are off by less. */
const ROUNDING = 1e-9;

/** Less than this would be a coat of 5 mm, m²/L. */
const LEAST_SPREADING = 0.2;

export function finishClaims({ finish: { product, thinner, dryFilmUm } }: Plan): Claim[] {
  const { volumeSolidsPct } = product;
  const thinnerPct = (100 * (thinner?.parts ?? 0)) / product.parts;
  const parts = thinner?.parts ?? 0;
  if (!(thinnerPct <= 1000)) {
    const allowed = `at most ten times the parts of the product, ${10 * product.parts}`;
    return [claim('finish.thinner.parts', false, allowed, parts)];
  }
  const { thinnedSolidsPct } = thinnedSolids({ volumeSolidsPct, thinnerPct });
  if (!(thinnedSolidsPct >= 1)) {
    return [claim('finish.thinner.parts', false, 'so few that the mix has 1 % solids', parts)];
  }
  const { spreadingRateM2PerL } = spreadingRate({ volumeSolidsPct: thinnedSolidsPct, dryFilmUm });
  const thinEnough = `so thin that a litre of the mix, with ${thinnedSolidsPct.toFixed(2)} % solids, covers ${LEAST_SPREADING} m²`;
  return [
    claim('finish.dryFilmUm', spreadingRateM2PerL >= LEAST_SPREADING, thinEnough, dryFilmUm),
    ...(thinner
      ? [claim('finish.thinner.name', thinner.name !== product.name, 'a name of its own', thinner.name)]
      : []),
  ];
}

export function calendarClaims({ calendar }: Plan): Claim[] {
  if (!calendar) return [];
  const { opensHours, layHours, closesHours } = calendar;
  return [
    ordered('calendar', calendar, 'recoatHours', 'recoatWithinHours'),
    claim(
      'calendar.closesHours',
      opensHours + layHours <= closesHours + ROUNDING,
      `so late that a coat begun at calendar.opensHours, ${opensHours}, is done: at least ${Number((opensHours + layHours).toFixed(9))}`,
      closesHours,
    ),
  ];
}

function boardClaims(path: string, board: OfferedBoard, stock: Stock): Claim[] {
  const { boardKerfMm, boardEndTrimMm, boardEdgeTrimMm } = stock;
  const more = (key: 'lengthMm' | 'widthMm', trimMm: number) => {
    const lostMm = 2 * trimMm + boardKerfMm;
    const allowed = `more than both trims and a saw cut, ${Number(lostMm.toFixed(6))} mm`;
    return claim(`${path}.${key}`, board[key] - lostMm > ROUNDING, allowed, board[key]);
  };
  return [
    more('lengthMm', boardEndTrimMm),
    more('widthMm', boardEdgeTrimMm),
    ...board.defects.flatMap((defect, j) => {
      const at = `${path}.defects.${j}`;
      const onBoard = (key: 'lengthMm' | 'widthMm', startMm: number) =>
        claim(
          `${at}.${key}`,
          startMm + defect[key] <= board[key],
          `within the board, which has ${board[key]} mm; it begins at ${startMm}`,
          defect[key],
        );
      return [onBoard('lengthMm', defect.xMm), onBoard('widthMm', defect.yMm)];
    }),
  ];
}

function barClaims({ kerfMm, parts, bars }: NonNullable<Stock['bars']>): Claim[] {
  const sections = [...new Set(bars.map((bar) => bar.section))].map((name) => ({ name }));
  return [
    ...ownNames('stock.bars.parts', parts),
    ...ownNames('stock.bars.bars', bars),
    ...parts.map((part, i) =>
      oneOf(`stock.bars.parts.${i}.section`, part.section, sections, 'a section of stock.bars.bars'),
    ),
    ...bars.map(({ lengthMm }, i) =>
      claim(
        `stock.bars.bars.${i}.lengthMm`,
        kerfMm < lengthMm,
        `more than stock.bars.kerfMm, ${kerfMm}`,
        lengthMm,
      ),
    ),
  ];
}

/** Most sizes of container that one liquid may be on offer in. */
const MOST_SIZES = 20;

export function stockClaims({ finish, stock }: Plan): Claim[] {
  if (!stock) return [];
  const liquids = finish.thinner ? [finish.product, finish.thinner] : [finish.product];
  const before = (i: number) =>
    stock.containers.slice(0, i).filter(({ liquid }) => liquid === stock.containers[i]?.liquid).length;
  return [
    ...ownNames('stock.boards', stock.boards),
    ...stock.boards.flatMap((board, i) => boardClaims(`stock.boards.${i}`, board, stock)),
    ...(stock.bars ? barClaims(stock.bars) : []),
    ...stock.containers.flatMap(({ liquid, eachPrice }, i) => [
      oneOf(`stock.containers.${i}.liquid`, liquid, liquids, 'one of the liquids of finish'),
      claim(
        `stock.containers.${i}.liquid`,
        before(i) < MOST_SIZES,
        `one of at most ${MOST_SIZES} of a liquid`,
        liquid,
      ),
      claim(
        `stock.containers.${i}.eachPrice`,
        Math.round(eachPrice * 100) / 100 === eachPrice,
        'a price of at most two decimals',
        eachPrice,
      ),
    ]),
  ];
}
