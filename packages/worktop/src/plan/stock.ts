import { figure, list, optional, section, text } from './field.ts';
import { gap, named } from './limits.ts';

/** What is on offer, and what it costs, in one currency. */
export interface Stock {
  /** Rough boards. */
  readonly boards: readonly OfferedBoard[];
  readonly boardKerfMm: number;
  /** Off each end, and each edge, of a rough board first, mm. */
  readonly boardEndTrimMm: number;
  readonly boardEdgeTrimMm: number;
  /** Bar stock for the strip and the base, and the parts to cut from it. */
  readonly bars?: BarStock | undefined;
  /** Containers that liquids are sold in, by the liquid's name. */
  readonly containers: readonly OfferedContainer[];
}

export interface OfferedBoard {
  readonly name: string;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
  /** Price of the whole board. */
  readonly eachPrice: number;
  readonly defects: readonly BoardDefect[];
}

export interface BoardDefect {
  readonly xMm: number;
  readonly yMm: number;
  readonly lengthMm: number;
  readonly widthMm: number;
}

export interface BarStock {
  readonly kerfMm: number;
  readonly endTrimMm: number;
  /** Longest piece that can be carried home, mm; left out, any. */
  readonly longestCarriedMm?: number | undefined;
  readonly parts: readonly BarPart[];
  readonly bars: readonly OfferedBar[];
}

/** Parts of one section: only bars of the same section serve. */
export interface BarPart {
  readonly name: string;
  readonly section: string;
  readonly lengthMm: number;
  readonly count: number;
}

export interface OfferedBar {
  readonly name: string;
  readonly section: string;
  readonly lengthMm: number;
  readonly eachPrice: number;
}

export interface OfferedContainer {
  readonly liquid: string;
  readonly volumeMl: number;
  readonly eachPrice: number;
}

const long = { min: 1, max: 20_000 };
const upTo20m = { min: 0, max: 20_000 };
const price = { min: 0.01, max: 1_000_000 };
const kerf = { min: 0, max: 50 };

const board = section<OfferedBoard>('A rough board on offer.', {
  ...named,
  lengthMm: figure('Along its grain.', long),
  widthMm: figure('At its narrowest.', { min: 1, max: 2000 }),
  thicknessMm: figure('At its thinnest.', { min: 1, max: 500 }),
  eachPrice: figure('Price of the whole board.', price),
  defects: list(
    'What no part may hold.',
    section<BoardDefect>('A knot, a split.', {
      xMm: figure('Along the board from its left end.', upTo20m),
      yMm: figure('Across the board from its front edge.', upTo20m),
      lengthMm: figure('Along the board.', upTo20m),
      widthMm: figure('Across the board.', upTo20m),
    }),
    0,
    30,
  ),
});

const bars = section<BarStock>('Bar stock, and the parts to cut from it.', {
  kerfMm: figure('Width of a saw cut.', kerf),
  endTrimMm: figure('Off each end of a bar first.', gap),
  longestCarriedMm: optional(figure('Longest piece that can be carried home.', long)),
  parts: list(
    'Parts to cut.',
    section<BarPart>('Parts that are alike.', {
      ...named,
      section: text('The section of bar that it is cut from.'),
      lengthMm: figure('Finished length.', long),
      count: figure('How many.', { min: 1, max: 1000, integer: true }),
    }),
    1,
    100,
  ),
  bars: list(
    'Bars on offer.',
    section<OfferedBar>('Bars that are alike.', {
      ...named,
      section: text('Its section.'),
      lengthMm: figure('As sold.', long),
      eachPrice: figure('Price of one.', price),
    }),
    1,
    20,
  ),
});

export const stockField = section<Stock>('What is on offer, in one currency.', {
  boards: list('Rough boards.', board, 0, 40),
  boardKerfMm: figure('Width of a saw cut.', kerf),
  boardEndTrimMm: figure('Off each end of a board first.', gap),
  boardEdgeTrimMm: figure('Off each edge of a board first.', gap),
  bars: optional(bars),
  containers: list(
    'Containers that liquids are sold in.',
    section<OfferedContainer>('A container.', {
      liquid: text('The name of the liquid.'),
      volumeMl: figure('As its label says.', { min: 1, max: 200_000, integer: true }),
      eachPrice: figure('Price of one.', { min: 0.01, max: 1_000_000 }),
    }),
    0,
    40,
  ),
});
