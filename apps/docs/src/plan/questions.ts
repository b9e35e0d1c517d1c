/** What can be asked beyond the checks, and how the page asks it. */
export const questions = {
  littleChanges: 'What is tightest, and what if?',
  secondLook: 'Check it once more by other code',
  purchases: 'What to buy, at what price',
} as const;

export type Question = keyof typeof questions;
