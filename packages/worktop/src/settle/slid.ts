import type { Base, SlidingPart } from '../plan/base.ts';
import type { Point } from '../plan/place.ts';

/** What a part has to know of itself to be slid. */
export type Slides = Omit<SlidingPart, 'slideMm'>;

/** The step along x and y of a part that slides by one millimetre. */
const steps: Readonly<Record<SlidingPart['widensTowards'], Point>> = {
  left: { xMm: -1, yMm: 0 },
  right: { xMm: 1, yMm: 0 },
  front: { xMm: 0, yMm: -1 },
  back: { xMm: 0, yMm: 1 },
};

export const slidesAcross = ({ widensTowards }: Slides): boolean => steps[widensTowards].yMm !== 0;

const shifted = <T extends Point>(thing: T, { xMm, yMm }: Point, byMm: number): T => ({
  ...thing,
  xMm: thing.xMm + xMm * byMm,
  yMm: thing.yMm + yMm * byMm,
});

/** The base with each of its sliding parts so far the way that widens, in the order of the parts. */
export function slid<B extends Pick<Base, 'members' | 'fixings'>>(
  base: B,
  parts: readonly Slides[],
  slidesMm: readonly number[],
): B {
  const moved = <T extends Point & { readonly name: string }>(
    list: 'members' | 'fixings',
    things: readonly T[],
  ) =>
    things.map((thing) => {
      const i = parts.findIndex((part) => part[list].includes(thing.name));
      const part = parts[i];
      return part ? shifted(thing, steps[part.widensTowards], slidesMm[i] as number) : thing;
    });
  return { ...base, members: moved('members', base.members), fixings: moved('fixings', base.fixings) };
}
