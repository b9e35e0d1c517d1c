/** Plans to start from, as the page offers them. */
export const starts = {
  binderyBench: 'the bindery bench',
  smallTop: 'a small top, no more than every plan needs',
  gildersSquareTable: 'a gilder’s square table',
  marblersLongBench: 'a marbler’s long bench',
  conservatorsRisingTable: 'a conservator’s rising table',
  trialThatFails: 'a trial that fails',
} as const;

export type Start = keyof typeof starts;

export const isStart = (name: string): name is Start => Object.hasOwn(starts, name);
