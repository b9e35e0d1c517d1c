import type { Cut, Piece } from '@scantling/stock';

/** The cuts of a board in an order in which each piece is there before it is cut. */
export const cutsOf = ({ cut }: Piece): Cut[] => (cut ? [cut, ...cut.pieces.flatMap(cutsOf)] : []);
