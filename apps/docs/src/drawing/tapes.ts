import type { Drawing, Say } from '../calculator/calculation.ts';
import { piece } from '../calculator/piece.ts';
import { along } from './axis.ts';
import { dimension } from './dimension.ts';
import { SHEET_WIDTH, short } from './sheet.ts';

const LINE = 26;
const LEFT = 12;
/** Short lengths have their figure beside them. */
const RIGHT = SHEET_WIDTH - 100;

/** Lengths set end to end, each from where the one before it ended, and their sum with the marks that divide it. */
export function drawTapes(
  lengthsMm: readonly number[],
  sumMm: number,
  marksMm: readonly number[],
  say: Say,
): Drawing {
  const ends = [0];
  for (const mm of lengthsMm) ends.push((ends.at(-1) as number) + mm);
  const at = along(Math.min(...ends), Math.max(...ends), LEFT, RIGHT);
  const bottom = LINE * (lengthsMm.length + 1);
  const reach = (from: number, to: number, y: number) => {
    const [left, right] = [Math.min(from, to), Math.max(from, to)];
    return { from: [at(left), y] as const, to: [at(right), y] as const };
  };
  const chain = lengthsMm.map((mm, i) => {
    const { from, to } = reach(ends[i] as number, ends[i + 1] as number, LINE * (i + 1) + 10);
    return dimension(from, to, -10, say(mm));
  });
  const joints = ends.slice(1).map((mm, i) => `M${short(at(mm))} ${LINE * (i + 1) + 3}V${LINE * (i + 2)}`);
  const left = at(Math.min(0, sumMm));
  const width = Math.abs(at(sumMm) - at(0));
  const ticks = marksMm.map((mm) => `M${short(at(mm))} ${short(bottom)}v18`).join('');
  const { from, to } = reach(0, sumMm, bottom + 18);
  return {
    title: `${lengthsMm.length} readings end to end, and their sum${marksMm.length > 0 ? ` in ${marksMm.length + 1} equal parts` : ''}`,
    box: [0, 0, SHEET_WIDTH, bottom + 60],
    shapes: [
      piece('path', { class: 'centre', d: joints.join('') }),
      ...chain,
      piece('path', {
        class: 'outline wood',
        d: `M${short(left)} ${bottom}h${short(width)}v18h${short(-width)}Z`,
      }),
      piece('path', { class: 'thin', d: ticks }),
      dimension(from, to, 26, say(sumMm)),
    ],
  };
}
