/** Capitals are this share of the size of type, in Helvetica and the faces made to its measures. */
export const CAPITAL_SHARE = 0.72;

/**
 * Advance widths of Helvetica, in thousandths of the size of type, from the space (32) to the tilde (126). Helvetica,
 * Arial and Liberation Sans share them.
 */
const widths = [
  278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556,
  556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278,
  500, 667, 556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469,
  556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500,
  278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584,
];

/** Of a sign beyond them: as wide as it is high, which few are. */
const OTHER_WIDTH = 1000;

/** How wide a text is whose capitals are so high; never less, where a sign is not among the common ones. */
export function textWidth(text: string, height: number): number {
  const signs = [...text.normalize('NFD').replace(/\p{M}/gu, '')];
  const sum = signs.reduce(
    (total, sign) => total + (widths[(sign.codePointAt(0) ?? 0) - 32] ?? OTHER_WIDTH),
    0,
  );
  return ((sum / 1000) * height) / CAPITAL_SHARE;
}

/** The text as far as there is room for it, an ellipsis where it is cut. */
export function fitted(text: string, height: number, room: number): string {
  if (textWidth(text, height) <= room) return text;
  const signs = [...text];
  const kept = signs.findIndex((_, i) => textWidth(`${signs.slice(0, i + 1).join('')}…`, height) > room);
  return `${signs.slice(0, Math.max(0, kept)).join('').trimEnd()}…`;
}
