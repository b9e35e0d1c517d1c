import { type Piece, piece } from '../calculator/piece.ts';
import { type Place, short } from './sheet.ts';

/** How far a centre line runs past what it is the centre of. */
const PAST = 4;

/** The centre lines of a round thing. */
export const centreMark = ([x, y]: Place, radius: number): Piece =>
  piece('path', {
    class: 'centre',
    d: `M${short(x - radius - PAST)} ${short(y)}h${short(2 * (radius + PAST))}M${short(x)} ${short(
      y - radius - PAST,
    )}v${short(2 * (radius + PAST))}`,
  });

/** Section lining (ISO 128): to be referred to as `fill: url(#id)`, each part beside another at another angle. */
export const hatching = (id: string, angleDeg = 45, apart = 7): Piece =>
  piece(
    'pattern',
    {
      id,
      width: apart,
      height: apart,
      patternUnits: 'userSpaceOnUse',
      patternTransform: `rotate(${angleDeg})`,
    },
    piece('path', { class: 'hatch', d: `M0 0V${apart}` }),
  );

/** The corner that everything is measured from. */
export const datumMark = ([x, y]: Place): Piece =>
  piece(
    'g',
    { class: 'datum', transform: `translate(${short(x)} ${short(y)})` },
    piece('circle', { r: 5 }),
    piece('path', { class: 'arrow', d: 'M0 0V-5A5 5 0 0 1 5 0ZM0 0V5A5 5 0 0 1 -5 0Z' }),
  );

/** Words on a drawing. */
export const label = (
  [x, y]: Place,
  text: string,
  anchor: 'start' | 'middle' | 'end' = 'middle',
  classes = '',
): Piece => piece('text', { x: short(x), y: short(y), class: `${anchor} ${classes}`.trim() }, text);
