const DIGITS = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9];

/** With one decimal at most. */
export const one = (value: number): string => `${Number(value.toFixed(1)) + 0}`;

/** Two figures that are not the same, with as many decimals, from one on, as it takes to tell them apart. */
export function toldApart(a: number, b: number): readonly [string, string] {
  const digits = DIGITS.slice(1).find((many) => Number(a.toFixed(many)) !== Number(b.toFixed(many)));
  const told = (value: number) => `${digits === undefined ? value : Number(value.toFixed(digits)) + 0}`;
  return [told(a), told(b)];
}

/**
 * A limit rounded to its safe side, up where it is a least and down where it is a most, with as few decimals as leave it
 * inside the window, but no fewer than asked for; `null` where the limit itself is outside.
 */
export function safeSide(
  limit: number,
  side: 'least' | 'most',
  [least, most]: readonly [number, number],
  fewestDecimals: 0 | 1,
): number | null {
  if (limit < least || limit > most) return null;
  const up = side === 'least' ? 1 : -1;
  const rounded = DIGITS.slice(fewestDecimals).map((digits) => {
    const near = Number(limit.toFixed(digits));
    return (near - limit) * up >= 0 ? near : Number((near + up * 10 ** -digits).toFixed(digits));
  });
  return (rounded.find((value) => value >= least && value <= most) ?? limit) + 0;
}
