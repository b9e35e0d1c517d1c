import type { Source } from '../citation.ts';

export const nailWithdrawalNote1965: Source = {
  id: 'nail-withdrawal-note-1965',
  title: 'Nail-Withdrawal Resistance of American Woods',
  author: 'Forest Products Laboratory',
  year: 1965,
  identifier: 'Research Note FPL-093',
  note: 'A slight revision of Technical Note 236 of 1958, whose stored copy shows the exponent of G unreadably.',
};
