import type { Source } from '../citation.ts';

export const nds2018: Source = {
  id: 'nds-2018',
  title: 'National Design Specification for Wood Construction',
  author: 'American Wood Council',
  year: 2018,
  url: 'https://github.com/rohreng/anderson-rohr-calcs/blob/9ade05a66fc273047dfbab5212b13be296eb8c4b/docs/plans/2026-09-19-wood-connection-schedule-nds-crosscheck.md',
  note: 'Seen as an office of structural engineers quotes it clause by clause, at the address; single cells of its tables stand in the specification beside those notes. Table 12.3.3A was also seen in the source of an open structural library. The NDS itself was not seen.',
};
