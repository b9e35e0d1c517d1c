import { xmlText } from '@scantling/grids/export';
import { CAPITAL_SHARE } from './lettering.ts';
import type { Line, Scene, Shape } from './scene.ts';
import { arrowheadCorners, pens } from './strokes.ts';

const stroke = (line: Line) => {
  const { widthMm, dashesMm } = pens[line];
  return `stroke-width="${widthMm}"${dashesMm.length ? ` stroke-dasharray="${dashesMm.join(' ')}"` : ''}`;
};

const n = (value: number) => String(Math.round(value * 1000) / 1000 + 0);

function shapeSvg(shape: Shape): string {
  switch (shape.kind) {
    case 'line': {
      const [[x1, y1], [x2, y2]] = [shape.from, shape.to];
      return `<line x1="${n(x1)}" y1="${n(y1)}" x2="${n(x2)}" y2="${n(y2)}" ${stroke(shape.line)}/>`;
    }
    case 'rectangle': {
      const [[x, y], [width, height]] = [shape.corner, shape.size];
      return `<rect x="${n(x)}" y="${n(y)}" width="${n(width)}" height="${n(height)}" ${stroke(shape.line)}/>`;
    }
    case 'circle': {
      const [x, y] = shape.centre;
      return `<circle cx="${n(x)}" cy="${n(y)}" r="${n(shape.radius)}" ${stroke(shape.line)}/>`;
    }
    case 'window': {
      const [[x, y], [width, height]] = [shape.corner.map(n), shape.size.map(n)];
      // An inner SVG shows what lies within its own box.
      return `<svg x="${x}" y="${y}" width="${width}" height="${height}" viewBox="${x} ${y} ${width} ${height}">${shape.shapes.map(shapeSvg).join('')}</svg>`;
    }
    case 'arrowhead': {
      const points = arrowheadCorners(shape.tip, shape.towards).map((spot) => spot.map(n).join(','));
      return `<polygon points="${points.join(' ')}" fill="currentColor" stroke="none"/>`;
    }
    case 'text': {
      const [x, y] = shape.at;
      const turn = shape.upwards ? ` transform="rotate(-90 ${n(x)} ${n(y)})"` : '';
      const size = n(shape.height / CAPITAL_SHARE);
      return `<text x="${n(x)}" y="${n(y)}" font-size="${size}" text-anchor="${shape.anchor}"${turn}>${xmlText(shape.text)}</text>`;
    }
  }
}

/** The scene as an SVG file whose user unit is one millimetre on paper. */
export function sceneSvg({ size: [width, height], title, description, shapes }: Scene): string {
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${n(width)}mm" height="${n(height)}mm" viewBox="0 0 ${n(width)} ${n(height)}" role="img">`,
    `<title>${xmlText(title)}</title>`,
    `<desc>${xmlText(description)}</desc>`,
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
