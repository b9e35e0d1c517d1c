import type { Rect, Sheet } from './job.ts';

/** Where a part begins. */
export interface Place {
  readonly u: number;
  readonly v: number;
}

const overlap = (a: Rect, u: number, v: number, du: number, dv: number): boolean =>
  a.u0 < u + du && u < a.u1 && a.v0 < v + dv && v < a.v1;

/**
 * Every place from u and v on in a sheet where a part misses the defects and cannot be pushed back along u or v: wherever
 * else it may lie, one of these lies no further along either. A part that is pushed back stops at u, at v or at a defect.
 */
export function placesIn(sheet: Sheet, fromU: number, fromV: number, du: number, dv: number): Place[] {
  if (fromU + du > sheet.u1 || fromV + dv > sheet.v1) return [];
  const ahead = sheet.defects.filter(({ u1, v1 }) => u1 > fromU && v1 > fromV);
  const levels = [fromV, ...ahead.map(({ v1 }) => v1)].sort((a, b) => a - b);
  const places: Place[] = [];
  let least = sheet.u1 - du + 1;
  for (const v of levels) {
    if (v + dv > sheet.v1) break;
    let u = fromU;
    const hits = (one: Rect): boolean => overlap(one, u, v, du, dv);
    for (let hit = ahead.find(hits); hit && u < least; hit = ahead.find(hits)) u = hit.u1;
    if (u >= least) continue;
    least = u;
    places.push({ u, v });
  }
  return places;
}
