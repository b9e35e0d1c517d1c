import { XMLParser, XMLValidator } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import { planDrawing, planWorktop } from '../src/index.ts';
import { bench } from './bindery-bench.ts';

type Attributes = Record<string, string>;
interface Group {
  circle?: Attributes[];
  rect?: Attributes[];
  text?: (Attributes & { '#text': string })[];
}
interface Svg {
  svg: Attributes & { title: string; g: [Group, Group] };
}

const result = planWorktop(bench());
const xml = new XMLParser({ ignoreAttributes: false, attributeNamePrefix: '', parseTagValue: false });
const read = (svg: string) => (xml.parse(svg) as Svg).svg;

describe('drawing', () => {
  const svg = read(planDrawing(result));
  const [lines, letters] = svg.g;
  const number = (shape: Attributes, name: string) => Number(shape[name]);
  const scale = 5;

  test('is an A3 sheet (ISO 216: 420 × 297 mm) with one unit a millimetre', () => {
    expect([svg.width, svg.height, svg.viewBox]).toEqual(['420mm', '297mm', '0 0 420 297']);
  });

  test('says its scale, one of ISO 5455, and shows the top at that scale', () => {
    expect(letters.text?.map((text) => text['#text'])).toContain(`1:${scale}, A–A 1:2`);
    const top = lines.rect?.find((rect) => Math.abs(number(rect, 'width') - 1479.55 / scale) < 0.002);
    expect(number(top as Attributes, 'height')).toBeCloseTo(640 / scale, 2);
  });

  test('has a circle for each hole, and its centre is where the plan says', () => {
    const top = lines.rect?.find(
      (rect) => Math.abs(number(rect, 'width') - 1479.55 / scale) < 0.002,
    ) as Attributes;
    const [left, bottom] = [number(top, 'x'), number(top, 'y') + number(top, 'height')];
    const radius = 15.875 / 2 / scale;
    const drawn = (lines.circle ?? []).filter((circle) => Math.abs(number(circle, 'r') - radius) < 0.001);
    expect(drawn).toHaveLength(65);
    for (const { xMm, yMm } of result.holes) {
      const near = drawn.filter(
        (circle) =>
          Math.abs((number(circle, 'cx') - left) * scale - xMm) < 0.02 &&
          Math.abs((bottom - number(circle, 'cy')) * scale - yMm) < 0.02,
      );
      expect(near).toHaveLength(1);
    }
  });

  test('keeps text as text, whatever it says', () => {
    const name = '</title><script>alert("x")</script>\u0000 & Söhne';
    const result = planWorktop(bench());
    const hostile = planDrawing({ ...result, plan: { ...result.plan, name } });
    expect(XMLValidator.validate(hostile)).toBe(true);
    expect(hostile).not.toContain('<script');
    expect(hostile).toContain('&lt;script&gt;');
  });

  test('shows each member dashed, each inlay wide, and each slot around its screw with room on both sides', () => {
    const top = lines.rect?.find(
      (rect) => Math.abs(number(rect, 'width') - 1479.55 / scale) < 0.002,
    ) as Attributes;
    const [left, bottom] = [number(top, 'x'), number(top, 'y') + number(top, 'height')];
    const drawn = (lines.rect ?? []).map((rect) => ({
      dashed: 'stroke-dasharray' in rect,
      wide: rect['stroke-width'] === '0.5',
      xMm: (number(rect, 'x') - left) * scale,
      yMm: (bottom - number(rect, 'y') - number(rect, 'height')) * scale,
      lengthMm: number(rect, 'width') * scale,
      widthMm: number(rect, 'height') * scale,
    }));
    const at = (one: { xMm: number; yMm: number; lengthMm: number; widthMm: number }) =>
      drawn.filter((rect) =>
        (['xMm', 'yMm', 'lengthMm', 'widthMm'] as const).every(
          (key) => Math.abs(rect[key] - one[key]) < 0.02,
        ),
      );
    for (const member of result.plan.base.members) expect(at(member)).toMatchObject([{ dashed: true }]);
    for (const inlay of result.plan.top.inlays)
      expect(at(inlay)).toMatchObject([{ dashed: false, wide: true }]);
    const slots = drawn.filter(({ lengthMm }) => Math.abs(lengthMm - 6) < 0.02);
    expect(slots).toHaveLength(6);
    for (const { xMm, yMm, swellMm, shrinkMm } of result.fixings) {
      const slot = slots.find(
        (one) => Math.abs(one.xMm + 3 - xMm) < 0.02 && one.yMm < yMm && yMm < one.yMm + one.widthMm,
      );
      const [below, above] = [yMm - (slot?.yMm ?? yMm), (slot?.yMm ?? 0) + (slot?.widthMm ?? 0) - yMm];
      // Half the shank and the clearance, 3.5 mm, besides the way that the screw goes on this side of the fixed line.
      const [inner, outer] = yMm >= 320 ? [below, above] : [above, below];
      expect(inner).toBeGreaterThanOrEqual(3.5 + shrinkMm - 0.02);
      expect(outer).toBeGreaterThanOrEqual(3.5 + swellMm - 0.02);
    }
  });

  test('draws a grid that begins in the corner, or that has one hole, without a dimension of no length', () => {
    const plan = bench();
    const corner = { first: { xMm: 0, yMm: 0 }, blocked: 'leave out' as const };
    for (const change of [corner, { columns: 1, rows: 1 }]) {
      const drawing = planDrawing(planWorktop({ ...plan, holes: { ...plan.holes, ...change } }));
      expect(drawing).not.toMatch(/NaN|Infinity/);
      expect(drawing).not.toMatch(/>0</);
    }
  });

  test('finds a standard scale for the largest top that a plan allows, inside the frame', () => {
    const plan = bench();
    const huge = planDrawing(
      planWorktop({ ...plan, top: { ...plan.top, lengthMm: 10_000, widthMm: 10_000 } }),
    );
    const rects = read(huge).g[0].rect ?? [];
    expect(rects.length).toBeGreaterThan(5);
    for (const rect of rects) {
      expect(number(rect, 'x')).toBeGreaterThanOrEqual(20);
      expect(number(rect, 'x') + number(rect, 'width')).toBeLessThanOrEqual(410.001);
      expect(number(rect, 'y') + number(rect, 'height')).toBeLessThanOrEqual(287.001);
    }
    expect(huge).toContain('1:100');
  });
});
