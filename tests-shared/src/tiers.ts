const SEEN_TIERS = ['publication', 'reprint'];

/** Whether what was seen fits how a figure was confirmed: only `text` was seen, the publication or a reprint. */
export const tierFits = (confirmed: string, tier: string): boolean =>
  (confirmed === 'text' ? SEEN_TIERS : [confirmed]).includes(tier);
