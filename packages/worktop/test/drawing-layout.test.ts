import fc from 'fast-check';
import { jsPDF } from 'jspdf';
import { describe, expect, test } from 'vitest';
import { fitted, textWidth } from '../src/drawing/lettering.ts';
import type { Lettering, Scene, Shape, Spot } from '../src/drawing/scene.ts';
import { chooseSection } from '../src/drawing/section.ts';
import { sectionView } from '../src/drawing/section-view.ts';
import { worktopDrawing } from '../src/drawing/worktop-drawing.ts';
import { type Plan, planWorktop } from '../src/index.ts';
import { plainBench } from './plain-bench.ts';
import { readPdf } from './read-pdf.ts';

interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

const texts = ({ shapes }: Pick<Scene, 'shapes'>) =>
  shapes.filter((shape): shape is Lettering => shape.kind === 'text');

/** The room that a text takes, with a little for what hangs below the line. */
function boxOf({ at: [x, y], text, height, anchor, upwards }: Lettering): Box {
  const width = textWidth(text, height);
  const back = { start: 0, middle: width / 2, end: width }[anchor];
  return upwards
    ? { left: x - height, right: x, bottom: y + back, top: y + back - width }
    : { left: x - back, right: x - back + width, top: y - height, bottom: y };
}

const overlap = (a: Box, b: Box) =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

const spots = (shape: Shape): readonly Spot[] => {
  switch (shape.kind) {
    case 'line':
      return [shape.from, shape.to];
    case 'rectangle':
    case 'window':
      return [shape.corner, [shape.corner[0] + shape.size[0], shape.corner[1] + shape.size[1]]];
    case 'circle':
      return [-1, 1].map((side) => [
        shape.centre[0] + side * shape.radius,
        shape.centre[1] + side * shape.radius,
      ]);
    case 'arrowhead':
      return [shape.tip];
    case 'text': {
      const { left, top, right, bottom } = boxOf(shape);
      return [
        [left, top],
        [right, bottom],
      ];
    }
  }
};

/** The frame of ISO 5457 on A3: 20 mm at the filing edge, 10 mm elsewhere. */
const FRAME: Box = { left: 20, top: 10, right: 410, bottom: 287 };

const words = fc
  .string({ unit: 'grapheme', minLength: 1, maxLength: 60 })
  .map((text) => `W${text}`.slice(0, 60));

/** Tops of every size and shape, with bases under them or beside them, and names as long as they may be. */
const plans = fc
  .record({
    name: words.filter((text) => !/\p{Cc}/u.test(text)),
    lengthMm: fc.double({ min: 1, max: 10_000, noNaN: true }),
    widthMm: fc.double({ min: 1, max: 10_000, noNaN: true }),
    thicknessMm: fc.double({ min: 5, max: 300, noNaN: true }),
    pitchMm: fc.double({ min: 20, max: 2000, noNaN: true }),
    firstX: fc.double({ min: 0, max: 1, noNaN: true }),
    firstY: fc.double({ min: 0, max: 1, noNaN: true }),
    columns: fc.integer({ min: 1, max: 40 }),
    rows: fc.integer({ min: 1, max: 20 }),
    fixedLineMm: fc.double({ min: -10_000, max: 10_000, noNaN: true }),
    cablesX: fc.double({ min: -10_000, max: 10_000, noNaN: true }),
    memberX: fc.double({ min: -10_000, max: 10_000, noNaN: true }),
    memberY: fc.double({ min: -10_000, max: 10_000, noNaN: true }),
  })
  .map(
    ({ name, lengthMm, widthMm, thicknessMm, pitchMm, firstX, firstY, columns, rows, ...others }): Plan => {
      const { base, top, holes } = plainBench;
      const member = {
        name: 'stray',
        xMm: others.memberX,
        yMm: 0,
        lengthMm: 50,
        widthMm: 500,
        clearanceMm: 0,
      };
      return {
        ...plainBench,
        name,
        top: { ...top, lengthMm, widthMm, thicknessMm },
        base: { ...base, fixedLineMm: others.fixedLineMm, members: [...base.members, member] },
        holes: {
          ...holes,
          ...{ pitchXMm: pitchMm, pitchYMm: pitchMm, columns, rows, edgeMarginMm: 0, blocked: 'leave out' },
          first: { xMm: firstX * lengthMm, yMm: firstY * widthMm },
        },
        cables: {
          ...{ holeDiameterMm: 60, xMm: others.cablesX, yMm: 300, mostFillPct: 40, heldBelowMm: 700 },
          ...{ cableLengthMm: 1500, slackPct: 10, bundle: [{ name: 'lamp', diameterMm: 7, count: 2 }] },
        },
      };
    },
  );

describe('lettering', () => {
  // A PDF reader by other people knows the widths of the standard fonts, each sign here between two x.
  test('is as wide as Helvetica', async () => {
    const signs = Array.from({ length: 95 }, (_, i) => String.fromCharCode(32 + i));
    const pdf = new jsPDF({ unit: 'pt', format: [200, 2000] });
    pdf.setFont('helvetica');
    pdf.setFontSize(10);
    for (const [i, sign] of signs.entries()) pdf.text(`x${sign}x`, 10, 20 + 20 * i);
    const [page] = await readPdf(new Uint8Array(pdf.output('arraybuffer')));
    expect(page?.texts.map(({ text }) => text)).toEqual(signs.map((sign) => `x${sign}x`));
    for (const { text, width } of page?.texts ?? []) {
      expect((textWidth(text, 0.72) * 10 * 25.4) / 72).toBeCloseTo(width, 6);
    }
  });

  test('that is cut fits, and is cut no more than it must be', () => {
    const room = fc.double({ min: 5, max: 200, noNaN: true });
    fc.assert(
      fc.property(words, room, (text, mm) => {
        const cut = fitted(text, 2.5, mm);
        expect(textWidth(cut, 2.5)).toBeLessThanOrEqual(mm);
        if (cut === text) return;
        const kept = [...cut].length - 1;
        const longer = `${[...text]
          .slice(0, kept + 1)
          .join('')
          .trimEnd()}…`;
        if (longer.length > cut.length && !/\p{M}|\s/u.test(text))
          expect(textWidth(longer, 2.5)).toBeGreaterThan(mm);
      }),
    );
  });
});

describe('a drawing', () => {
  const scene = (plan: Plan) => worktopDrawing(planWorktop(plan));

  test('keeps everything in its frame, and no text on another, whatever the plan', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const { shapes } = scene(plan);
        for (const [x, y] of shapes.flatMap(spots)) {
          expect(x).toBeGreaterThanOrEqual(FRAME.left - 0.001);
          expect(x).toBeLessThanOrEqual(FRAME.right + 0.001);
          expect(y).toBeGreaterThanOrEqual(FRAME.top - 0.001);
          expect(y).toBeLessThanOrEqual(FRAME.bottom + 0.001);
        }
        const written = texts({ shapes });
        expect(written.length).toBeGreaterThan(20);
        const boxes = written.map(boxOf);
        boxes.forEach((box, i) => {
          boxes.slice(i + 1).forEach((other, j) => {
            const pair = `${written[i]?.text} | ${written[i + 1 + j]?.text}`;
            expect(overlap(box, other) ? pair : '').toBe('');
          });
        });
      }),
      { numRuns: 100 },
    );
  });

  test('says on each dimension what lies between its arrowheads, times the scale', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const { shapes, description } = scene(plan);
        const [above = 0, cut = 0] = [...description.matchAll(/1:(\d+)/g)].map(([, scale]) => Number(scale));
        let looked = 0;
        shapes.forEach((shape, i) => {
          const [second, figure] = [shapes[i + 1], shapes[i + 2]];
          if (shape.kind !== 'arrowhead' || second?.kind !== 'arrowhead' || figure?.kind !== 'text') return;
          const apart = Math.hypot(shape.tip[0] - second.tip[0], shape.tip[1] - second.tip[1]);
          const scale = shape.tip[1] > 195 ? cut : above;
          expect(Math.abs(apart * scale - Number(figure.text.split('= ').at(-1)))).toBeLessThanOrEqual(
            0.05 + 1e-6,
          );
          looked += 1;
        });
        expect(looked).toBeGreaterThanOrEqual(4);
      }),
    );
  });
});

describe('the section', () => {
  const strip = {
    ...{ inlay: 'brass cutting guide', thicknessMm: 6, rabbetWidthMm: 26.4, rabbetDepthMm: 6.5 },
    ...{ expansionUmPerMK: 19, densityKgPerM3: 8500, buildingDayC: 20, toleranceMm: 2, endDistanceMm: 30 },
    ...{ mostPitchMm: 350, fixedScrew: 'middle' as const, shankDiameterMm: 4, headDiameterMm: 8 },
    ...{
      headHeightMm: 2.4,
      headBelowFaceMm: 0.2,
      screwLengthMm: 25,
      slotClearanceMm: 0.3,
      endClearanceMm: 0.5,
    },
  };
  const result = planWorktop({ ...plainBench, strip });
  const section = chooseSection(result);
  const { shapes, scale } = sectionView(result, section);

  test('goes through a column of holes, both rails and the strip, near the middle', () => {
    expect(section.xMm).toBe(68 + 6 * 112);
    expect(section.holes).toHaveLength(5);
    section.holes.forEach(({ fromMm, toMm }, i) => {
      expect((fromMm + toMm) / 2).toBeCloseTo(160 + i * 104, 9);
      expect(toMm - fromMm).toBeCloseTo(15.875, 9);
    });
    expect(section.members).toEqual([
      { fromMm: 95, toMm: 135 },
      { fromMm: 505, toMm: 545 },
    ]);
    expect(section.strip?.rabbet.depthMm).toBe(6.5);
  });

  const slanted = shapes.flatMap((shape) => {
    if (shape.kind !== 'line') return [];
    const [dx, dy] = [shape.to[0] - shape.from[0], shape.to[1] - shape.from[1]];
    return Math.abs(Math.abs(dx) - Math.abs(dy)) < 1e-9 && Math.abs(dx) > 1e-9
      ? [{ ...shape, rises: dx * dy < 0, length: Math.hypot(dx, dy) }]
      : [];
  });
  const face = Math.min(
    ...shapes.flatMap((shape) =>
      shape.kind === 'line' && shape.line === 'outline' ? [shape.from[1], shape.to[1]] : [],
    ),
  );
  const inWood = slanted.filter(({ rises }) => rises);

  // Lines at 45° so far apart cover an area: their lengths together, times 2 mm on paper, is about that area.
  test('hatches the end grain, all of it and nothing else, at 45°', () => {
    const woodMm2 = (640 - 5 * 15.875) * 44.45 - 26.4 * 6.5;
    const hatchedMm2 = inWood.reduce((sum, { length }) => sum + length, 0) * 2 * scale ** 2;
    expect(Math.abs(hatchedMm2 / woodMm2 - 1)).toBeLessThan(0.02);
    const start = (60 + 384 - 640 / scale) / 2;
    for (const { from, to } of inWood) {
      const [yMm, zMm] = [((from[0] + to[0]) / 2 - start) * scale, ((from[1] + to[1]) / 2 - face) * scale];
      expect(yMm).toBeGreaterThan(0);
      expect(yMm).toBeLessThan(640);
      expect(zMm).toBeGreaterThan(0);
      expect(zMm).toBeLessThan(44.45);
      for (const hole of section.holes) expect(yMm > hole.fromMm && yMm < hole.toMm).toBe(false);
    }
  });

  test('hatches base and strip the other way, so that parts are told apart', () => {
    expect(slanted.length - inWood.length).toBeGreaterThan(20);
  });
});
