import { defineRule, requireChoice, requireInputs } from '@scantling/rules';
import { nds2018, woodCouncilAnswer2006, woodHandbook2021 } from '@scantling/rules/sources';
import { notStructuralDesign } from '../cautions.ts';
import { shankInput } from '../withdrawal-terms.ts';

const limits = { shankDiameterMm: { min: 0.5, max: 40 } } as const;

/** Least and full penetration of each fastener, in diameters. */
const diameters = { woodScrew: [6, 10], lagScrew: [4, 8], nail: [6, 10] } as const;

export interface LeastPenetrationInput {
  /** Diameter of the shank, mm, 0.5 to 40. */
  readonly shankDiameterMm: number;
  readonly fastener: keyof typeof diameters;
}

export interface LeastPenetration {
  /** Least depth in the wood that takes the point, mm; the tip counts for screws and nails, not for lag screws. */
  readonly leastMm: number;
  /** Depth that the tabulated sideways loads are computed for, mm, counted in the same way. */
  readonly tabulatedMm: number;
}

/**
 * How far a fastener has to go into the wood before the American design code gives it any sideways load, and how far
 * for the loads of its tables.
 *
 * @returns Least and tabulated penetration, mm.
 * @throws RangeError where the diameter is outside its limits or the fastener is none of the three.
 * Source: American Wood Council, on the NDS of 2001 and later.
 * @example
 * ```ts
 * import { leastPenetration } from '@scantling/fastening';
 * leastPenetration({ shankDiameterMm: 5, fastener: 'woodScrew' }) // => { leastMm: 30, tabulatedMm: 50 }
 * leastPenetration({ shankDiameterMm: 8, fastener: 'lagScrew' }) // => { leastMm: 32, tabulatedMm: 64 }
 * ```
 */
export function leastPenetration(input: LeastPenetrationInput): LeastPenetration {
  requireInputs('leastPenetration', input, limits);
  const { shankDiameterMm, fastener } = input;
  requireChoice('leastPenetration', 'fastener', fastener, Object.keys(diameters));
  const [least, tabulated] = diameters[fastener];
  return { leastMm: least * shankDiameterMm, tabulatedMm: tabulated * shankDiameterMm };
}

export const leastPenetrationRule = /* @__PURE__ */ defineRule<LeastPenetrationInput, LeastPenetration>(
  () => ({
    id: 'fastening/least-penetration',
    title: 'Least penetration for a sideways load',
    summary:
      'How deep a wood screw, lag screw or nail has to go before the American design code gives it a sideways load, and for the loads of its tables.',
    basis: 'convention',
    inputs: {
      shankDiameterMm: shankInput(limits.shankDiameterMm),
      fastener: {
        kind: 'choice',
        label: 'Fastener',
        options: {
          woodScrew: 'Wood screw, tip included',
          lagScrew: 'Lag screw, tip not included',
          nail: 'Nail, tip included',
        },
      },
    },
    outputs: {
      leastMm: { label: 'Least penetration', unit: 'mm' },
      tabulatedMm: { label: 'Penetration of the tables', unit: 'mm', help: 'For their full loads.' },
    },
    compute: leastPenetration,
    formula: String.raw`p_{\mathrm{min}} = k_1 D, \qquad p = k_2 D`,
    symbols: {
      'p_{\\mathrm{min}}': 'least penetration',
      p: 'penetration of the tables',
      D: 'diameter',
      'k_1, k_2': '6 and 10 for screws and nails, 4 and 8 for lag screws',
    },
    inSymbols: ({ shankDiameterMm, fastener }, output) => ({
      'p_{\\mathrm{min}}': output.leastMm,
      p: output.tabulatedMm,
      D: shankDiameterMm,
      k_1: diameters[fastener][0],
      k_2: diameters[fastener][1],
    }),
    sources: [
      {
        source: woodCouncilAnswer2006,
        at: 'lag screws 4D excluding the tip, nails and screws 6D including it; tables with 8D, 10D and 10D',
        confirmed: 'text',
      },
      {
        source: nds2018,
        at: '§ 12.1.4.6, § 12.1.5.6 and § 12.1.6.4, p. 74 and 75',
        confirmed: 'text',
        tier: 'reprint',
      },
      {
        source: woodHandbook2021,
        at: 'ch. 8, Eq. 8-13, p. 8-11: the loads before 1991 ask for threads in the wood for 7 diameters or more',
        confirmed: 'text',
        tier: 'reprint',
        erratum: 'Seven diameters of thread by the handbook, six of the screw with its tip by the code.',
      },
    ],
    examples: [
      {
        given: { shankDiameterMm: 5, fastener: 'woodScrew' },
        expect: { leastMm: '30.00', tabulatedMm: '50.00' },
        from: { workedByHand: '6 × 5 = 30.00 mm; 10 × 5 = 50.00 mm' },
      },
      {
        given: { shankDiameterMm: 12.7, fastener: 'lagScrew' },
        expect: { leastMm: '50.80', tabulatedMm: '101.60' },
        from: { workedByHand: '4 × 12.7 = 50.80 mm; 8 × 12.7 = 101.60 mm' },
      },
      {
        given: { shankDiameterMm: 3.3, fastener: 'nail' },
        expect: { leastMm: '19.80', tabulatedMm: '33.00' },
        from: { workedByHand: '6 × 3.3 = 19.80 mm; 10 × 3.3 = 33.00 mm' },
      },
    ],
    laws: [
      { of: 'leastMm', by: { shankDiameterMm: 'proportional' } },
      { of: 'tabulatedMm', by: { shankDiameterMm: 'proportional' } },
    ],
    cautions: [notStructuralDesign],
  }),
);
