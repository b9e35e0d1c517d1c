import { type Piece, piece } from '../calculator/piece.ts';
import { type Place, short } from './sheet.ts';

const ARROW = 9;
/** Width of a letter at the largest size, on a phone. */
const LETTER = 8;

const head = (tip: number, back: number) => `M${short(tip)} 0l${back} -2.2v4.4z`;

/**
 * A dimension after ISO 129-1: extension lines from two places, between them a line with closed arrowheads, the value
 * over it. Give places from left to right, or from below upwards: then it reads from the right-hand side. The line lies
 * `away` to the right of that way, which is below or to the right; negative, on the other side.
 */
export function dimension([x1, y1]: Place, [x2, y2]: Place, away: number, text: string): Piece {
  const span = Math.hypot(x2 - x1, y2 - y1);
  const angle = (Math.atan2(y2 - y1, x2 - x1) * 180) / Math.PI;
  const side = Math.sign(away) || 1;
  const roomy = span > 3 * ARROW;
  const beside = text.length * LETTER > span + 2 * ARROW;
  const extension = (x: number) => `M${short(x)} ${short(3 * side - away)}V${short(3 * side)}`;
  const line = roomy ? `M0 0H${short(span)}` : `M${-2 * ARROW} 0H${short(span + 2 * ARROW)}`;
  const heads = roomy ? head(0, ARROW) + head(span, -ARROW) : head(0, -ARROW) + head(span, ARROW);
  const at = beside ? span + 2.4 * ARROW : span / 2;
  return piece(
    'g',
    {
      class: 'measure',
      transform: `translate(${short(x1)} ${short(y1)}) rotate(${short(angle)}) translate(0 ${short(away)})`,
    },
    piece('path', { d: extension(0) + extension(span) + line }),
    piece('path', { class: 'arrow', d: heads }),
    piece('text', { x: short(at), y: beside ? 4 : -4, class: beside && 'start' }, text),
  );
}

/** A leader from a place, with an arrowhead at it, and a remark at its other end. */
export function leader([x1, y1]: Place, [x2, y2]: Place, text: string): Piece {
  const angle = (Math.atan2(y2 - y1, x2 - x1) * 180) / Math.PI;
  const right = x2 >= x1;
  return piece(
    'g',
    { class: 'measure' },
    piece('path', { d: `M${short(x1)} ${short(y1)}L${short(x2)} ${short(y2)}h${right ? 8 : -8}` }),
    piece('path', {
      class: 'arrow',
      d: head(0, ARROW),
      transform: `translate(${short(x1)} ${short(y1)}) rotate(${short(angle)})`,
    }),
    piece(
      'text',
      { x: short(x2 + (right ? 12 : -12)), y: short(y2 + 5), class: right ? 'start' : 'end' },
      text,
    ),
  );
}
