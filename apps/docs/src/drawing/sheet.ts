/**
 * Width of a drawing's box in its own units. On a phone one of them is about 0.7 px, on a desk 1.6 px: lettering is set
 * for both in `drawing.css`.
 */
export const SHEET_WIDTH = 480;

/** A place on the sheet: x to the right, y down. */
export type Place = readonly [x: number, y: number];

/** A number short enough for a path. */
export const short = (value: number): string => `${Math.round(value * 100) / 100}`;

/** Millimetres on the sheet. */
export interface View {
  /** Sheet units for a millimetre. */
  readonly scale: number;
  /** Where a point lies on the sheet. */
  at(xMm: number, yMm: number): Place;
  /** For a group whose coordinates are millimetres, y away from whoever stands at the front. */
  readonly transform: string;
}

/** Room on the sheet that a view may fill. */
export interface Room {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** What is drawn at one scale: from `leftMm` to `rightMm`, from `frontMm` up to `backMm`, in the middle of its room. */
export function viewOf(
  { left, top, width, height }: Room,
  leftMm: number,
  frontMm: number,
  rightMm: number,
  backMm: number,
): View {
  const [lengthMm, depthMm] = [Math.max(1e-6, rightMm - leftMm), Math.max(1e-6, backMm - frontMm)];
  const scale = Math.min(width / lengthMm, height / depthMm);
  const x0 = left + (width - scale * lengthMm) / 2 - scale * leftMm;
  const y0 = top + (height - scale * depthMm) / 2 + scale * backMm;
  const at = (xMm: number, yMm: number): Place => [x0 + scale * xMm, y0 - scale * yMm];
  const factor = scale.toPrecision(6);
  return { scale, at, transform: `translate(${short(x0)} ${short(y0)}) scale(${factor} -${factor})` };
}

/** A path through places; `closed` goes back to the first. */
export const through = (places: readonly Place[], closed = false): string =>
  places.map(([x, y], i) => `${i ? 'L' : 'M'}${short(x)} ${short(y)}`).join('') + (closed ? 'Z' : '');
