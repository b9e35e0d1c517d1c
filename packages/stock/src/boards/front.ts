import type { Filled, Rect, Sheet } from './job.ts';
import { placesIn } from './places.ts';

/**
 * How far a sheet is cut up, and the part that came last. The first cuts divide the sheet along u into sections, the
 * second a section along v into strips, the third a strip along u into lengths, and a fourth brings a length to size.
 */
export interface Front {
  /** The section being filled, along u. */
  readonly s0: number;
  readonly s1: number;
  /** The strip being filled, along v. */
  readonly t0: number;
  readonly t1: number;
  /** The part that came last. */
  readonly u: number;
  readonly v: number;
  readonly du: number;
  readonly dv: number;
  /** What it began: 1 a section, 2 a strip, 3 nothing new. */
  readonly level: 1 | 2 | 3;
}

/** Sides of a part along u and v. */
export interface Sides {
  readonly u: number;
  readonly v: number;
}

/** The fronts after one more part of these sides; on a fresh sheet where there is no front. */
export function nextFronts(front: Front | null, sheet: Sheet, kerf: number, side: Sides): Front[] {
  const { u: du, v: dv } = side;
  const fronts: Front[] = [];
  const s0 = front ? front.s1 + kerf : sheet.u0;
  for (const { u, v } of placesIn(sheet, s0, sheet.v0, du, dv)) {
    fronts.push({ s0, s1: u + du, t0: sheet.v0, t1: v + dv, u, v, du, dv, level: 1 });
  }
  if (!front) return fronts;
  const t0 = front.t1 + kerf;
  for (const { u, v } of placesIn(sheet, front.s0, t0, du, dv)) {
    const s1 = Math.max(front.s1, u + du);
    fronts.push({ s0: front.s0, s1, t0, t1: v + dv, u, v, du, dv, level: 2 });
  }
  for (const { u, v } of placesIn(sheet, front.u + front.du + kerf, front.t0, du, dv)) {
    const [s1, t1] = [Math.max(front.s1, u + du), Math.max(front.t1, v + dv)];
    fronts.push({ s0: front.s0, s1, t0: front.t0, t1, u, v, du, dv, level: 3 });
  }
  return fronts;
}

/** Area that can hold no more parts: the sections before, and in this one the strips before and the strip so far. */
export const frontArea = ({ s0, s1, t0, t1, u, du }: Front, { u0, v0, v1 }: Rect): number =>
  (s0 - u0) * (v1 - v0) + (s1 - s0) * (t0 - v0) + (u + du - s0) * (t1 - t0);

/** Area of the sections, as far as this one is filled with strips. */
export const sectionArea = ({ s0, s1, t1 }: Front, { u0, v0, v1 }: Rect): number =>
  (s0 - u0) * (v1 - v0) + (s1 - s0) * (t1 - v0);

/**
 * Area that parts still to come can cover, each with a kerf on two of its sides: every line along u, or along v, crosses
 * whole parts.
 */
export function roomLeft(
  front: Front,
  { u1, v0, v1 }: Rect,
  kerf: number,
  alongU: Filled,
  alongV: Filled,
): number {
  const { s0, s1, t0, t1, u, du } = front;
  const past = u + du;
  const byU =
    alongU(u1 - s1) * (t0 - v0) + alongU(u1 - past) * (t1 - t0 + kerf) + alongU(u1 - s0 + kerf) * (v1 - t1);
  const byV =
    alongV(v1 - t1) * (past - s0 + kerf) +
    alongV(v1 - t0 + kerf) * (s1 - past) +
    alongV(v1 - v0 + kerf) * (u1 - s1);
  return Math.min(byU, byV);
}

/** Whether every part that can come after `b` can come after `a` in the same place. */
export const covers = (a: Front, b: Front): boolean =>
  a.s0 <= b.s0 && a.s1 <= b.s1 && a.t0 <= b.t0 && a.t1 <= b.t1 && a.u + a.du <= b.u + b.du;
