import type { jsPDF } from 'jspdf';
import { printable } from '../pdf.ts';
import { CAPITAL_SHARE } from './lettering.ts';
import type { Lettering, Line, Shape, Spot } from './scene.ts';
import { arrowheadCorners, pens } from './strokes.ts';

const POINTS_PER_MM = 72 / 25.4;

function write(pdf: jsPDF, { at: [x, y], text, height, anchor, upwards }: Lettering): void {
  const line = printable(text);
  const sizeMm = height / CAPITAL_SHARE;
  pdf.setFontSize(sizeMm * POINTS_PER_MM);
  const widthMm = pdf.getStringUnitWidth(line, { doKerning: false }) * sizeMm;
  const back = { start: 0, middle: widthMm / 2, end: widthMm }[anchor];
  if (upwards) pdf.text(line, x, y + back, { angle: 90 });
  else pdf.text(line, x - back, y);
}

function take(pdf: jsPDF, line: Line): void {
  const { widthMm, dashesMm } = pens[line];
  pdf.setLineWidth(widthMm);
  pdf.setLineDashPattern([...dashesMm], 0);
}

const between = (from: Spot, to: Spot): [number, number] => [to[0] - from[0], to[1] - from[1]];

/** Draws a shape on the page at hand. */
function drawShape(pdf: jsPDF, shape: Shape): void {
  switch (shape.kind) {
    case 'line':
      take(pdf, shape.line);
      pdf.line(...shape.from, ...shape.to);
      return;
    case 'rectangle':
      take(pdf, shape.line);
      pdf.rect(...shape.corner, ...shape.size);
      return;
    case 'circle':
      take(pdf, shape.line);
      pdf.circle(...shape.centre, shape.radius);
      return;
    case 'window':
      pdf.saveGraphicsState();
      pdf.rect(...shape.corner, ...shape.size, null);
      pdf.clip();
      pdf.discardPath();
      for (const inside of shape.shapes) drawShape(pdf, inside);
      pdf.restoreGraphicsState();
      return;
    case 'arrowhead': {
      const [tip, left, right] = arrowheadCorners(shape.tip, shape.towards);
      pdf.lines([between(tip, left), between(left, right)], ...tip, [1, 1], 'F', true);
      return;
    }
    case 'text':
      write(pdf, shape);
  }
}

export function drawShapes(pdf: jsPDF, shapes: readonly Shape[]): void {
  for (const shape of shapes) drawShape(pdf, shape);
}
