import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Piece } from '../src/calculator/piece.ts';
import { along, roundSteps } from '../src/drawing/axis.ts';
import { dimension } from '../src/drawing/dimension.ts';
import { SHEET_WIDTH, viewOf } from '../src/drawing/sheet.ts';

const size = fc.double({ min: 0.01, max: 20_000, noNaN: true });
const place = fc.double({ min: -5000, max: 5000, noNaN: true });

test('a view fits its room, at one scale, with the back at the top', () => {
  const room = { left: 40, top: 30, width: 400, height: 250 };
  fc.assert(
    fc.property(place, place, size, size, (left, front, length, depth) => {
      const view = viewOf(room, left, front, left + length, front + depth);
      const [x1, y1] = view.at(left, front);
      const [x2, y2] = view.at(left + length, front + depth);
      expect(x1).toBeGreaterThanOrEqual(room.left - 1e-6);
      expect(x2).toBeLessThanOrEqual(room.left + room.width + 1e-6);
      expect(y2).toBeGreaterThanOrEqual(room.top - 1e-6);
      expect(y1).toBeLessThanOrEqual(room.top + room.height + 1e-6);
      expect(x2 - x1).toBeCloseTo(view.scale * length, 6);
      expect(y1 - y2).toBeCloseTo(view.scale * depth, 6);
      // One of the two directions fills the room.
      expect(Math.max((x2 - x1) / room.width, (y1 - y2) / room.height)).toBeCloseTo(1, 6);
    }),
  );
  expect(room.left + room.width).toBeLessThanOrEqual(SHEET_WIDTH);
});

test('steps of an axis are round, even and within its range', () => {
  expect(roundSteps(0, 1, 5)).toEqual([0, 0.2, 0.4, 0.6, 0.8, 1]);
  expect(roundSteps(-3, 14, 6)).toEqual([0, 5, 10]);
  fc.assert(
    fc.property(place, size, fc.integer({ min: 1, max: 12 }), (from, length, most) => {
      const steps = roundSteps(from, from + length, most);
      expect(steps.length).toBeLessThanOrEqual(most + 1);
      for (const [i, step] of steps.entries()) {
        expect(step).toBeGreaterThanOrEqual(from - 1e-6 * length);
        expect(step).toBeLessThanOrEqual(from + length * (1 + 1e-6));
        if (i > 1) {
          const [a, b] = [steps[i - 2] as number, steps[i - 1] as number];
          expect(step - b).toBeCloseTo(b - a, 6);
        }
      }
    }),
  );
});

test('values lie along an axis in proportion', () => {
  const at = along(10, 20, 100, 300);
  expect([at(10), at(15), at(20)]).toEqual([100, 200, 300]);
  expect(along(5, 5, 0, 8)(5)).toBe(4);
});

test('a dimension stands over its line, reads from below or from the right, and has arrows outside where it is short', () => {
  const parts = (one: Piece) => one.children.map((child) => (child as Piece).attributes);
  const wide = dimension([40, 100], [240, 100], 30, '1600 mm');
  expect(wide.attributes.transform).toBe('translate(40 100) rotate(0) translate(0 30)');
  const [lines, heads, text] = parts(wide);
  expect(lines?.d).toBe('M0 -27V3M200 -27V3M0 0H200');
  expect(heads?.d).toBe('M0 0l9 -2.2v4.4zM200 0l-9 -2.2v4.4z');
  expect(text).toEqual({ x: '100', y: '-4' });

  expect(dimension([40, 300], [40, 100], -30, '700 mm').attributes.transform).toBe(
    'translate(40 300) rotate(-90) translate(0 -30)',
  );
  const narrow = parts(dimension([40, 100], [50, 100], 30, '96 mm'));
  expect(narrow[0]?.d).toContain('M-18 0H28');
  expect(narrow[1]?.d).toBe('M0 0l-9 -2.2v4.4zM10 0l9 -2.2v4.4z');
  expect(narrow[2]).toMatchObject({ class: 'start' });
});
