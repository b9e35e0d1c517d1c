import type { Line, Scene, Shape, Spot } from './scene.ts';

/** Line group 0.5 of ISO 128-2: wide lines 0.5 mm, narrow ones 0.25 mm; dashes are multiples of the width. */
const NARROW = 0.25;
const WIDE = 0.5;
const dashes = (...widths: number[]) => widths.map((width) => width * NARROW).join(' ');

const strokes: Record<Line, string> = {
  outline: `stroke-width="${WIDE}"`,
  hidden: `stroke-width="${NARROW}" stroke-dasharray="${dashes(12, 3)}"`,
  centre: `stroke-width="${NARROW}" stroke-dasharray="${dashes(24, 3, 0.5, 3)}"`,
  thin: `stroke-width="${NARROW}"`,
};

/** Capitals are this share of the size that SVG calls font-size, in common sans-serif faces. */
const CAPITAL_SHARE = 0.72;
const ARROW_LENGTH = 3;
const ARROW_HALF_WIDTH = 0.4;

const escapes: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
// XML 1.0 allows no control characters, no half of a surrogate pair and no non-characters, not even escaped.
const forbidden = /[\p{Cc}\p{Cs}\ufffe\uffff]/gu;
const escaped = (text: string) => text.replace(forbidden, '').replace(/[&<>"]/g, (c) => escapes[c] as string);

const n = (value: number) => String(Math.round(value * 1000) / 1000 + 0);

function arrowhead(tip: Spot, towards: Spot): string {
  const [dx, dy] = [tip[0] - towards[0], tip[1] - towards[1]];
  const length = Math.hypot(dx, dy);
  const [ux, uy] = [dx / length, dy / length];
  const [bx, by] = [tip[0] - ux * ARROW_LENGTH, tip[1] - uy * ARROW_LENGTH];
  const [wx, wy] = [-uy * ARROW_HALF_WIDTH, ux * ARROW_HALF_WIDTH];
  const points = [tip, [bx + wx, by + wy], [bx - wx, by - wy]].map(
    ([x, y]) => `${n(x as number)},${n(y as number)}`,
  );
  return `<polygon points="${points.join(' ')}" fill="currentColor" stroke="none"/>`;
}

function shapeSvg(shape: Shape): string {
  switch (shape.kind) {
    case 'line': {
      const [[x1, y1], [x2, y2]] = [shape.from, shape.to];
      return `<line x1="${n(x1)}" y1="${n(y1)}" x2="${n(x2)}" y2="${n(y2)}" ${strokes[shape.line]}/>`;
    }
    case 'rectangle': {
      const [[x, y], [width, height]] = [shape.corner, shape.size];
      return `<rect x="${n(x)}" y="${n(y)}" width="${n(width)}" height="${n(height)}" ${strokes[shape.line]}/>`;
    }
    case 'circle': {
      const [x, y] = shape.centre;
      return `<circle cx="${n(x)}" cy="${n(y)}" r="${n(shape.radius)}" ${strokes[shape.line]}/>`;
    }
    case 'arrowhead':
      return arrowhead(shape.tip, shape.towards);
    case 'text': {
      const [x, y] = shape.at;
      const turn = shape.upwards ? ` transform="rotate(-90 ${n(x)} ${n(y)})"` : '';
      const size = n(shape.height / CAPITAL_SHARE);
      return `<text x="${n(x)}" y="${n(y)}" font-size="${size}" text-anchor="${shape.anchor}"${turn}>${escaped(shape.text)}</text>`;
    }
  }
}

/** The scene as an SVG file whose user unit is one millimetre on paper. */
export function sceneSvg({ size: [width, height], title, description, shapes }: Scene): string {
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${n(width)}mm" height="${n(height)}mm" viewBox="0 0 ${n(width)} ${n(height)}" role="img">`,
    `<title>${escaped(title)}</title>`,
    `<desc>${escaped(description)}</desc>`,
    `<rect width="${n(width)}" height="${n(height)}" fill="#fff"/>`,
    '<g fill="none" stroke="currentColor" color="#000">',
    ...shapes.filter(({ kind }) => kind !== 'text').map(shapeSvg),
    '</g>',
    '<g fill="#000" font-family="Liberation Sans, Helvetica, Arial, sans-serif">',
    ...shapes.filter(({ kind }) => kind === 'text').map(shapeSvg),
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}
