/** The months by their number, as it stands in a link. */
export const monthNames: Readonly<Record<string, string>> = {
  1: 'January',
  2: 'February',
  3: 'March',
  4: 'April',
  5: 'May',
  6: 'June',
  7: 'July',
  8: 'August',
  9: 'September',
  10: 'October',
  11: 'November',
  12: 'December',
};

const MONTHS = 12;

interface KnownMonth {
  /** 0 for January. */
  readonly month: number;
  readonly moisturePct: number;
}

/** Every month of a year of which some are known, in their order: in straight lines between them, December to January too. */
export function throughTheYear(known: readonly KnownMonth[]): number[] {
  return Array.from({ length: MONTHS }, (_, month) => {
    const before = known.findLast((one) => one.month <= month) ?? known.at(-1);
    const after = known.find((one) => one.month >= month) ?? known[0];
    if (!before || !after) throw new RangeError('throughTheYear requires a month that is known');
    const since = (month - before.month + MONTHS) % MONTHS;
    const span = (after.month - before.month + MONTHS) % MONTHS || MONTHS;
    return before.moisturePct + (since / span) * (after.moisturePct - before.moisturePct);
  });
}
