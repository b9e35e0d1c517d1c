import { defineRule, requireChoice } from '@scantling/rules';
import { metalFurnitureCoatingRule, sprayEquipmentPage } from '@scantling/rules/sources';
import { productSheet, solvents } from '../cautions.ts';

/** A way to put finish on for which a rule states a transfer efficiency. */
export type ApplicationMethod =
  | 'air-spray'
  | 'airless-spray'
  | 'high-volume-low-pressure-spray'
  | 'electrostatic-spray'
  | 'dip-or-flow';

export interface TransferEfficiencyInput {
  /** How the finish is put on. */
  readonly method: ApplicationMethod;
}

export interface TransferEfficiency {
  /** Share of the solids that ends on the piece, %. */
  readonly efficiencyPct: number;
  /** The rest: a loss to reckon with where nothing better is known, %. */
  readonly lossPct: number;
}

/**
 * How much of a finish ends on the piece, by the way it is put on, as rules on air pollution take it. For brush, roller
 * and pad no published figure was found: use what your own jars tell.
 *
 * @returns Efficiency and loss, %.
 * @throws RangeError where the method is none of those named.
 * Source: 40 CFR 60.313, Table 1, as a state's rule repeats it; a district's page on spray equipment.
 * @example
 * ```ts
 * import { transferEfficiency } from '@scantling/finishing';
 * transferEfficiency({ method: 'air-spray' }) // => { efficiencyPct: 25, lossPct: 75 }
 * ```
 */
export function transferEfficiency(input: TransferEfficiencyInput): TransferEfficiency {
  const pct: Readonly<Record<ApplicationMethod, number>> = {
    'air-spray': 25,
    'airless-spray': 25,
    'high-volume-low-pressure-spray': 65,
    'electrostatic-spray': 60,
    'dip-or-flow': 90,
  };
  requireChoice('transferEfficiency', 'method', input?.method, Object.keys(pct));
  const efficiencyPct = pct[input.method];
  return { efficiencyPct, lossPct: 100 - efficiencyPct };
}

export const transferEfficiencyRule = /* @__PURE__ */ defineRule<TransferEfficiencyInput, TransferEfficiency>(
  () => {
    const table1 = (method: ApplicationMethod, row: string, share: string) => ({
      given: { method },
      expect: { efficiencyPct: { printed: share, unit: '1', times: 100 } },
      from: {
        source: metalFurnitureCoatingRule,
        at: `Table 1, row ${row}`,
        confirmed: 'text' as const,
        tier: 'reprint' as const,
      },
    });
    return {
      id: 'finishing/transfer-efficiency',
      title: 'Lost on the way, by method',
      summary:
        'How much of a finish ends on the piece when it is sprayed or dipped, as rules on air pollution take it.',
      basis: 'convention',
      inputs: {
        method: {
          kind: 'choice',
          label: 'Put on by',
          options: {
            'air-spray': 'air spray',
            'airless-spray': 'airless spray',
            'high-volume-low-pressure-spray': 'high-volume, low-pressure spray',
            'electrostatic-spray': 'electrostatic spray by hand',
            'dip-or-flow': 'dipping or flow coating',
          },
        },
      },
      outputs: {
        efficiencyPct: { label: 'On the piece', unit: '%' },
        lossPct: { label: 'Lost', unit: '%' },
      },
      compute: transferEfficiency,
      formula: String.raw`\ell = 1 - T`,
      symbols: {
        '\\ell': 'lost, as a fraction',
        T: 'transfer efficiency, as a fraction',
      },
      inSymbols: (_, output) => ({ '\\ell': output.lossPct / 100, T: output.efficiencyPct / 100 }),
      sources: [
        {
          source: metalFurnitureCoatingRule,
          at: 'Table 1: a, b, c and f',
          confirmed: 'text',
          tier: 'reprint',
          erratum:
            'Its figures are for metal furniture in a factory; a skilled hand on a wide top does better, a slender leg worse.',
        },
        {
          source: sprayEquipmentPage,
          at: 'second paragraph: 65 percent, or as good as high-volume, low-pressure equipment',
          confirmed: 'text',
        },
      ],
      examples: [
        table1('air-spray', 'a', '0.25'),
        table1('airless-spray', 'b', '0.25'),
        table1('electrostatic-spray', 'c', '0.60'),
        table1('dip-or-flow', 'f', '0.90'),
        {
          given: { method: 'high-volume-low-pressure-spray' },
          expect: { efficiencyPct: '65' },
          from: { source: sprayEquipmentPage, at: 'second paragraph', confirmed: 'text' },
        },
        {
          given: { method: 'air-spray' },
          expect: { efficiencyPct: '25', lossPct: '75' },
          from: { workedByHand: 'Of a share of 0.25, 25 %, the rest is 100 − 25 = 75' },
        },
      ],
      cautions: [
        'Overspray is breathed in and can burn: extract it, wear what the label asks for, keep sparks away.',
        solvents,
        productSheet,
      ],
    };
  },
);
