/** What a maker wants from any page, in one tap: in the head of every page, and first in the menu. */
export const doors: readonly { readonly label: string; readonly href: string }[] = [
  { label: 'Calculators', href: '/calculators/' },
];

/** What else stands in the head of a page where there is room. */
export const sideDoors: readonly { readonly label: string; readonly href: string }[] = [
  { label: 'Worked examples', href: '/examples/' },
  { label: 'In code', href: '/in-code/' },
];
