import { defineRule, requireInputs, requireThat } from '@scantling/rules';
import { guideBushingAnswer, guideBushingThread, guideBushThread2004 } from '@scantling/rules/sources';
import { centreTheBushing, routingCare } from '../cautions.ts';

const limits = {
  finishedDiameterMm: { min: 1, max: 5000 },
  bushingDiameterMm: { min: 1, max: 200 },
  bitDiameterMm: { min: 1, max: 200 },
} as const;

export interface TemplateHoleInput {
  /** Diameter that the hole is to have, mm, 1 to 5000, at least bitDiameterMm. */
  readonly finishedDiameterMm: number;
  /** Outside diameter of the guide bushing, mm, 1 to 200. */
  readonly bushingDiameterMm: number;
  /** Diameter of the router bit, mm, 1 to 200, smaller than bushingDiameterMm. */
  readonly bitDiameterMm: number;
}

export interface TemplateHole {
  /** From the template's edge to the cut, mm. */
  readonly offsetMm: number;
  /** Diameter of the hole in the template, mm. */
  readonly templateDiameterMm: number;
}

const bitFits = ({ finishedDiameterMm, bushingDiameterMm, bitDiameterMm }: TemplateHoleInput) =>
  bitDiameterMm < bushingDiameterMm && bitDiameterMm <= finishedDiameterMm;

/**
 * How large a hole in a template has to be for a router with a guide bushing to cut a hole of a given diameter. A hole
 * of any other shape is cut smaller by the offset all round, and a template followed on its outside larger.
 *
 * @returns The offset between template and cut, and the diameter of the hole in the template, mm.
 * @throws RangeError where an input is outside its limits or the bit fits neither the bushing nor the hole.
 * Source: an answer to a woodworker on the offset; two forum threads on the template.
 * @example
 * ```ts
 * import { templateHole } from '@scantling/grids';
 * // A 20 mm hole with a 10 mm bit in a 16 mm bushing
 * templateHole({ finishedDiameterMm: 20, bushingDiameterMm: 16, bitDiameterMm: 10 }) // => { offsetMm: 3, templateDiameterMm: 26 }
 * templateHole({ finishedDiameterMm: 20, bushingDiameterMm: 16, bitDiameterMm: 16 }) // throws templateHole requires bitDiameterMm below
 * ```
 */
export function templateHole(input: TemplateHoleInput): TemplateHole {
  requireInputs('templateHole', input, limits);
  const { finishedDiameterMm, bushingDiameterMm, bitDiameterMm } = input;
  requireThat(
    'templateHole',
    bitFits(input),
    `bitDiameterMm below bushingDiameterMm ${bushingDiameterMm} and no larger than the hole of ${finishedDiameterMm}, got ${bitDiameterMm}`,
  );
  const widerMm = bushingDiameterMm - bitDiameterMm;
  return { offsetMm: widerMm / 2, templateDiameterMm: finishedDiameterMm + widerMm };
}

export const templateHoleRule = /* @__PURE__ */ defineRule(() => ({
  id: 'grids/template-hole',
  title: 'Template hole for a guide bushing',
  summary:
    'How large a hole in a template has to be for a router with a guide bushing to cut a hole of a given diameter.',
  basis: 'derived',
  inputs: {
    finishedDiameterMm: {
      kind: 'number',
      label: 'Finished hole',
      unit: 'mm',
      ...limits.finishedDiameterMm,
      help: 'Its diameter.',
    },
    bushingDiameterMm: {
      kind: 'number',
      label: 'Guide bushing',
      unit: 'mm',
      ...limits.bushingDiameterMm,
      help: 'Outside diameter of the collar that runs along the template.',
    },
    bitDiameterMm: { kind: 'number', label: 'Router bit', unit: 'mm', ...limits.bitDiameterMm },
  },
  outputs: {
    offsetMm: {
      label: 'Offset',
      unit: 'mm',
      help: 'From the edge of the template to the cut, for a template of any shape.',
    },
    templateDiameterMm: { label: 'Hole in the template', unit: 'mm', help: 'Its diameter.' },
  },
  compute: templateHole,
  formula: String.raw`o = \frac{B - b}{2}, \qquad D_T = D + 2\,o`,
  symbols: {
    o: 'offset',
    B: 'outside diameter of the guide bushing',
    b: 'diameter of the bit',
    D_T: 'hole in the template',
    D: 'finished hole',
  },
  requires: [{ says: 'the bit fits through the bushing and into the hole', holds: bitFits }],
  sources: [
    { source: guideBushingAnswer, at: 'figuring the offset', confirmed: 'text' },
    {
      source: guideBushThread2004,
      at: 'first message and its answer: template hole less guide bush plus cutter is the finished hole',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { finishedDiameterMm: 20, bushingDiameterMm: 15, bitDiameterMm: 9 },
      expect: { offsetMm: '3' },
      from: {
        source: guideBushThread2004,
        at: 'a 9 mm bit in a 15 mm guide bush: half the difference, 3 mm',
        confirmed: 'text',
      },
    },
    {
      given: { finishedDiameterMm: 152.4, bushingDiameterMm: 19.05, bitDiameterMm: 12.7 },
      expect: { offsetMm: { printed: '0.125', unit: 'in', times: 25.4 } },
      from: {
        source: guideBushingAnswer,
        at: 'a bit of 1/2 in in a bushing of 3/4 in: 1/8 in',
        confirmed: 'text',
      },
    },
    {
      given: { finishedDiameterMm: 8 * 25.4, bushingDiameterMm: 19.05, bitDiameterMm: 6.35 },
      expect: { templateDiameterMm: { printed: '8.5', unit: 'in', times: 25.4 } },
      from: {
        source: guideBushingThread,
        at: 'a cut-out of 8 by 4 in, guide of 3/4 in, cutter of 1/4 in: 8-1/2 by 4-1/2 in in the template',
        confirmed: 'text',
      },
    },
  ],
  laws: [
    { of: 'templateDiameterMm', by: { finishedDiameterMm: 'linear', bushingDiameterMm: 'linear' } },
    { of: 'offsetMm', by: { bushingDiameterMm: 'increasing', bitDiameterMm: 'decreasing' } },
  ],
  cautions: [routingCare, centreTheBushing],
}));
