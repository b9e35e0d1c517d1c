import { defineRule, requireInputs } from '@scantling/rules';
import { circlePackingArticle, circlePackings1998, cylinderPackings1967 } from '@scantling/rules/sources';
import { cablesThatMove, mainsWiring, plugsAreWider } from '../cable-cautions.ts';

const limits = {
  cableDiameterMm: { min: 0.1, max: 300 },
  cableCount: { min: 1, max: 20, integer: true },
} as const;

export interface BundleDiameterInput {
  /** Of one cable, mm, 0.1 to 300. */
  readonly cableDiameterMm: number;
  /** How many cables, all alike, 1 to 20. */
  readonly cableCount: number;
}

export interface BundleDiameter {
  /** Diameter of the smallest round hole that they all fit in side by side, mm. */
  readonly bundleDiameterMm: number;
}

/** Diameter of the smallest circle known around 1, 2, 3 … circles of diameter 1, rounded up. */
const ratios = [
  1, 2, 2.1547006, 2.4142136, 2.7013017, 3, 3, 3.3047649, 3.613126, 3.8130257, 3.9238045, 4.029602, 4.236068,
  4.3284286, 4.521357, 4.6154256, 4.7920338, 4.8637034, 4.8637034, 5.1223208,
];

/**
 * The smallest round hole that equal round cables fit in side by side. For 1 to 14 and 19 cables it is proved that no
 * smaller hole takes them; for the others it is the smallest known. The cables lie as close as they can: a bundle that
 * is to be drawn through wants room besides.
 *
 * @returns The diameter of the hole, mm.
 * @throws RangeError where an input is outside its limits.
 * Source: packings of equal circles in a circle, collected by Graham, Lubachevsky, Nurmela and Östergård 1998.
 * @example
 * ```ts
 * import { bundleDiameter } from '@scantling/worktop';
 * bundleDiameter({ cableDiameterMm: 8, cableCount: 7 }) // => { bundleDiameterMm: 24 }
 * bundleDiameter({ cableDiameterMm: 8, cableCount: 5 }).bundleDiameterMm // => 21.61
 * bundleDiameter({ cableDiameterMm: 8, cableCount: 21 }) // throws bundleDiameter requires cableCount a whole number between 1 and 20, got 21
 * ```
 */
export function bundleDiameter(input: BundleDiameterInput): BundleDiameter {
  requireInputs('bundleDiameter', input, limits);
  return { bundleDiameterMm: input.cableDiameterMm * (ratios[input.cableCount - 1] as number) };
}

/** Cables that all touch the rim, each beside the next: as wide as the ring of their centres and one cable. */
const ring = (cables: number, cableDiameterMm: number) =>
  cableDiameterMm * (1 + 1 / Math.sin(Math.PI / cables));

export const bundleDiameterRule = /* @__PURE__ */ defineRule(() => {
  const article = (count: number, proof: string) => ({
    source: circlePackingArticle,
    at: `table, n = ${count}: ${proof}`,
    confirmed: 'text' as const,
    tier: 'reprint' as const,
  });
  const quoted = (cables: string, share: string) => ({
    source: cylinderPackings1967,
    at: `${cables}: radius ${share} in a circle of radius 1, as a model of an optimization library quotes it`,
    confirmed: 'text' as const,
    tier: 'reprint' as const,
  });
  return {
    id: 'worktop/bundle-diameter',
    title: 'Hole for a bundle of equal cables',
    summary: 'The smallest round hole that a number of equal cables fit in side by side.',
    basis: 'derived',
    inputs: {
      cableDiameterMm: {
        kind: 'number',
        label: 'Diameter of a cable',
        unit: 'mm',
        ...limits.cableDiameterMm,
        help: 'Over its sheath.',
      },
      cableCount: { kind: 'number', label: 'Cables', unit: '1', ...limits.cableCount },
    },
    outputs: {
      bundleDiameterMm: {
        label: 'Smallest hole',
        unit: 'mm',
        help: 'Proved for 1 to 14 and 19 cables, the smallest known for the others.',
      },
    },
    compute: bundleDiameter,
    formula: String.raw`D = k_n \, d`,
    symbols: {
      D: 'diameter of the hole',
      d: 'diameter of a cable',
      k_n: 'diameter of the smallest circle around n circles of diameter 1: 1, 2, 2.155 and so on',
    },
    inSymbols: (input, output) => ({
      D: output.bundleDiameterMm,
      d: input.cableDiameterMm,
      k_n: ratios[input.cableCount - 1] as number,
    }),
    sources: [
      {
        source: circlePackings1998,
        at: 'abstract: the best packings found of up to 65 circles',
        confirmed: 'text',
      },
      article(13, 'enclosing radius to three decimals, and who proved which of 1 to 14'),
      quoted('18 and 19', '0.2056046'),
    ],
    examples: [
      {
        given: { cableDiameterMm: 1, cableCount: 5 },
        expect: { bundleDiameterMm: '2.701' },
        from: article(5, 'proved by Graham 1968'),
      },
      {
        given: { cableDiameterMm: 1, cableCount: 10 },
        expect: { bundleDiameterMm: '3.813' },
        from: article(10, 'proved by Pirl 1969'),
      },
      {
        given: { cableDiameterMm: 1, cableCount: 13 },
        expect: { bundleDiameterMm: '4.236' },
        from: article(13, 'proved by Fodor 2003'),
      },
      {
        given: { cableDiameterMm: 0.221_172_539_09, cableCount: 15 },
        expect: { bundleDiameterMm: '1.0000000' },
        from: quoted('15', '0.22117253909'),
      },
      {
        given: { cableDiameterMm: 0.205_604_6, cableCount: 19 },
        expect: { bundleDiameterMm: '1.000000' },
        from: quoted('19', '0.2056046'),
      },
      {
        given: { cableDiameterMm: 0.195_22, cableCount: 20 },
        expect: { bundleDiameterMm: '1.0000' },
        from: quoted('20', '0.19522'),
      },
      {
        given: { cableDiameterMm: 8, cableCount: 7 },
        expect: { bundleDiameterMm: '24.0' },
        from: { workedByHand: 'Six around one, three in a row across the middle: 3 × 8 = 24.0 mm' },
      },
    ],
    laws: [{ of: 'bundleDiameterMm', by: { cableDiameterMm: 'proportional', cableCount: 'increasing' } }],
    peers: [
      {
        name: 'a ring of cables along the rim, for two to six',
        of: 'bundleDiameterMm',
        compute: ({ cableDiameterMm, cableCount }) => ring(cableCount, cableDiameterMm),
        relative: 3e-8,
        over: { cableCount: [2, 6] },
      },
      {
        name: 'the same around one cable in the middle, for seven to nine',
        of: 'bundleDiameterMm',
        compute: ({ cableDiameterMm, cableCount }) => ring(cableCount - 1, cableDiameterMm),
        relative: 3e-8,
        over: { cableCount: [7, 9] },
      },
    ],
    cautions: [plugsAreWider, cablesThatMove, mainsWiring],
  };
});
