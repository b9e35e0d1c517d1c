import { filledBy } from './filled.ts';
import {
  type Filled,
  type Job,
  type Kind,
  type Rect,
  type Sheet,
  sidesOf,
  TICKS_PER_MM,
  turned,
} from './job.ts';
import { placesIn } from './places.ts';

/** Room for rounding, so that a bound stays on the safe side. */
const SLACK = 1e-9;

/** Area of a part with the kerf on two of its sides, mm². Such enlarged parts do not overlap. */
export const enlargedArea = ({ along, across }: Kind, kerf: number): number =>
  ((along + kerf) / TICKS_PER_MM) * ((across + kerf) / TICKS_PER_MM);

const fits = (kind: Kind, sheet: Sheet): boolean =>
  sidesOf(kind, sheet.firstCut).some(({ u, v }) => placesIn(sheet, sheet.u0, sheet.v0, u, v).length > 0);

/** Lengths along u that are free of defects in a line through v. */
function freeAt(sheet: Sheet, blocked: readonly Rect[]): number[] {
  const free: number[] = [];
  let from = sheet.u0;
  for (const { u0, u1 } of [...blocked].sort((a, b) => a.u0 - b.u0)) {
    if (u0 > from) free.push(u0 - from);
    from = Math.max(from, u1);
  }
  if (sheet.u1 > from) free.push(sheet.u1 - from);
  return free;
}

/**
 * Most enlarged area that a sheet can give, mm²: every line along u crosses whole parts, each with its kerf, and between
 * two defects no more of it is filled than rows of whole parts can fill.
 */
function filledAlongU(filled: Filled, sheet: Sheet, kerf: number): number {
  // An enlarged part below a defect reaches a kerf into it.
  const heights = sheet.defects.flatMap(({ v0, v1 }) => [v0 + kerf, v1]);
  const levels = [sheet.v0, ...heights, sheet.v1 + kerf].sort((a, b) => a - b);
  let area = 0;
  for (const [i, from] of levels.entries()) {
    const to = levels[i + 1] ?? from;
    if (to <= from) continue;
    const blocked = sheet.defects.filter(({ v0, v1 }) => v0 + kerf <= from && to <= v1);
    const length = freeAt(sheet, blocked).reduce((sum, free) => sum + filled(free + kerf), 0);
    area += (length / TICKS_PER_MM) * ((to - from) / TICKS_PER_MM);
  }
  return area;
}

const otherWay = (sheet: Sheet): Sheet => ({
  ...turned(sheet),
  firstCut: sheet.firstCut === 'across' ? 'along' : 'across',
  defects: sheet.defects.map(turned),
});

/** Most enlarged area of parts of these kinds that each blank can give, mm². */
export function capacities(kinds: readonly Kind[], { blanks, kerf, longest }: Job): number[] {
  const known = new Map<string, Filled>();
  const rows = (fitting: readonly Kind[], { firstCut }: Sheet): Filled => {
    const key = [firstCut, ...fitting.map((kind) => kinds.indexOf(kind))].join();
    const filled = known.get(key) ?? filledBy(fitting, firstCut, kerf, longest);
    known.set(key, filled);
    return filled;
  };
  return blanks.map(({ sheets }) => {
    const sheet = sheets[0] as Sheet;
    const fitting = kinds.filter((kind) => fits(kind, sheet));
    const wanted = fitting.reduce((sum, kind) => sum + kind.ids.length * enlargedArea(kind, kerf), 0);
    const filled = [sheet, otherWay(sheet)].map((way) => filledAlongU(rows(fitting, way), way, kerf));
    return Math.min(wanted, ...filled) * (1 + SLACK);
  });
}

/** Most value from so much area, and least area for so much value: parts of most value for their area first, shares allowed. */
export interface Exchange {
  /** `left` says how many of each kind there are, in the order of the kinds. */
  readonly valueOf: (area: number, left: (kind: number) => number) => number;
  readonly areaFor: (value: number, left: (kind: number) => number) => number;
}

/** The exchange of value for area among some kinds. */
export function exchangeOf(kinds: readonly Kind[], kerf: number): Exchange {
  const rows = kinds
    .map((kind, index) => ({ index, value: kind.value, area: enlargedArea(kind, kerf) }))
    .sort((a, b) => b.value / b.area - a.value / a.area);
  return {
    valueOf(area, left) {
      let [room, value] = [area, 0];
      for (const row of rows) {
        const count = Math.min(left(row.index), room / row.area);
        value += count * row.value;
        room -= count * row.area;
        if (room <= 0) break;
      }
      return value;
    },
    areaFor(wanted, left) {
      let [missing, area] = [wanted, 0];
      for (const row of rows) {
        if (missing <= 0) break;
        const count = Math.min(left(row.index), missing / row.value);
        missing -= count * row.value;
        area += count * row.area;
      }
      return area * (1 - SLACK);
    },
  };
}
