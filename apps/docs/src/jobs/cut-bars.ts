import { type CutBars, type CutBarsInput, cutBars } from '@scantling/stock';
import { defineJob, type Outcome } from '../calculator/calculation.ts';
import { asking } from '../workers/ask.ts';

const count = { kind: 'number', label: 'How many', unit: '1', min: 1, max: 1000, integer: true } as const;
const name = { kind: 'text', label: 'Name', longest: 60 } as const;

const ask = asking<CutBarsInput, CutBars>(
  () => new Worker(new URL('../workers/cut-bars.ts', import.meta.url), { type: 'module' }),
);

function inWords(plan: CutBars): Outcome {
  return {
    figures: [
      { name: 'totalPrice', label: 'Price', value: plan.totalPrice, unit: '¤' },
      { name: 'buy', label: 'Buy', text: plan.buy.map((bar) => `${bar.count} × ${bar.name}`).join(', ') },
      { name: 'longestOffcutMm', label: 'Longest offcut', value: plan.longestOffcutMm, unit: 'mm' },
    ],
    tables: [
      {
        caption: 'How to cut them',
        columns: [
          { label: 'Bars' },
          { label: 'of' },
          { label: 'Length', unit: 'mm' },
          { label: 'Pieces, in order' },
          { label: 'Offcut', unit: 'mm' },
        ],
        rows: plan.bars.map((bar) => [
          bar.count,
          bar.name,
          bar.lengthMm,
          bar.pieces.map((piece) => piece.name).join(', ') || 'stays whole',
          bar.offcutMm,
        ]),
      },
    ],
    reasons: [
      plan.proven
        ? 'Proven: no way of buying and cutting costs less.'
        : `Not proven to be the least: none can cost less than ${plan.boundPrice}.`,
    ],
    steps: [],
  };
}

export default defineJob({
  title: 'Cut bars',
  summary: 'Which bars to buy for a list of parts, at the least price, and how to cut them.',
  group: 'Measure and buy',
  rules: [],
  fields: {
    parts: {
      kind: 'rows',
      label: 'Parts to cut',
      row: 'Part',
      minRows: 1,
      maxRows: 30,
      fields: {
        name,
        lengthMm: { kind: 'number', label: 'Length', unit: 'mm', min: 0.1, max: 100_000 },
        count,
      },
    },
    bars: {
      kind: 'rows',
      label: 'Bars on offer',
      row: 'Bar',
      minRows: 1,
      maxRows: 8,
      fields: {
        name,
        lengthMm: { kind: 'number', label: 'Length', unit: 'mm', min: 1, max: 100_000 },
        eachPrice: { kind: 'number', label: 'Price of one', unit: '¤', min: 0.01, max: 1_000_000 },
        available: { ...count, label: 'How many there are', blank: true, help: 'Blank: as many as needed.' },
      },
    },
    kerfMm: { kind: 'number', label: 'Saw cut', unit: 'mm', min: 0, max: 50 },
    endTrimMm: { kind: 'number', label: 'Off each end of a bar', unit: 'mm', min: 0, max: 1000 },
    longestCarriedMm: {
      kind: 'number',
      label: 'Longest that can be carried',
      unit: 'mm',
      min: 1,
      max: 100_000,
      blank: true,
      help: 'Blank: any. The yard cuts longer bars into equal lengths.',
    },
  },
  first: {
    parts: [
      { name: 'leg', lengthMm: '860', count: '4' },
      { name: 'foot', lengthMm: '560', count: '2' },
      { name: 'rail', lengthMm: '1180', count: '2' },
      { name: 'cross rail', lengthMm: '480', count: '4' },
    ],
    bars: [
      { name: 'tube 6 m', lengthMm: '6000', eachPrice: '42', available: '' },
      { name: 'tube 3 m', lengthMm: '3000', eachPrice: '25', available: '' },
    ],
    kerfMm: '3',
    endTrimMm: '5',
    longestCarriedMm: '',
  },
  compute({ parts, bars, kerfMm, endTrimMm, longestCarriedMm }) {
    const question: CutBarsInput = {
      parts: parts.map((part, i) => ({ ...part, name: part.name || `part ${i + 1}` })),
      bars: bars.map(({ available, ...bar }, i) => ({
        ...bar,
        name: bar.name || `bar ${i + 1}`,
        ...(available === null ? {} : { count: available }),
      })),
      kerfMm,
      endTrimMm,
      ...(longestCarriedMm === null ? {} : { longestCarriedMm }),
    };
    // To prove a least price may take up to a second: an open page has it done by a worker.
    if (import.meta.env.SSR) return inWords(cutBars(question));
    return { figures: [], steps: [], later: async () => inWords(await ask(question)) };
  },
});
