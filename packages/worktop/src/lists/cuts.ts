import type { Cut, Piece } from '@scantling/stock';
import { needed } from '../lengths.ts';

const says = ({ direction, distanceMm, measuredFrom }: Cut) =>
  `${direction === 'across' ? 'crosscut' : 'rip'} ${needed(distanceMm)} from the ${measuredFrom}`;

/** The cuts of a board, each in a few words, in an order in which each piece is there before it is cut. */
export const cutsOf = ({ cut }: Piece): string[] => (cut ? [says(cut), ...cut.pieces.flatMap(cutsOf)] : []);
