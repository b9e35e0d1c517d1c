/** What everything else is for. */
export const planner = {
  href: '/plan/',
  title: 'Plan a top',
  says: 'Wood, holes, screws, finish and base together: checked as one plan before the first cut, drawn, and printed to take to the bench.',
};

/** What a maker wants from any page, in one tap: in the head of every page, and first in the menu. */
export const doors: readonly { readonly label: string; readonly href: string }[] = [
  { label: 'Plan', href: planner.href },
  { label: 'Calculators', href: '/calculators/' },
];

/** What else stands in the head of a page where there is room. */
export const sideDoors: readonly { readonly label: string; readonly href: string }[] = [
  { label: 'Worked examples', href: '/examples/' },
  { label: 'In code', href: '/in-code/' },
];
