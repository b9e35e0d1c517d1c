import { defineRule, requireChoice, requireInputs } from '@scantling/rules';
import {
  buildingDesignHandbook,
  nds2018,
  ndsCommentary1999,
  pilotHoleSizesPage,
  woodHandbook2021,
} from '@scantling/rules/sources';
import { drillingCare, largerInFineWork, tryOnAnOffcut } from '../cautions.ts';
import { ovendryInput, shankInput } from '../withdrawal-terms.ts';

const limits = {
  rootDiameterMm: { min: 0.5, max: 30 },
  shankDiameterMm: { min: 0.5, max: 30 },
  ovendrySpecificGravityRatio: { min: 0.1, max: 1.3 },
} as const;

export interface WoodScrewLeadHoleInput {
  /** Diameter of the screw between its threads, mm, 0.5 to 30. */
  readonly rootDiameterMm: number;
  /** Diameter of the unthreaded shank, mm, 0.5 to 30. */
  readonly shankDiameterMm: number;
  /** Specific gravity of the wood, ovendry mass and volume, 0.1 to 1.3. */
  readonly ovendrySpecificGravityRatio: number;
  /** Whether the screw is pulled along its axis or pushed sideways. */
  readonly load: 'withdrawal' | 'lateral';
}

export interface WoodScrewLeadHole {
  /** Hole for the threads, mm; `null` where the code asks for none. */
  readonly threadHoleMm: number | null;
  /** Hole for the unthreaded shank, mm; `null` where the rule names none. */
  readonly shankHoleMm: number | null;
}

/**
 * Lead holes for a wood screw by the density of the wood, as the American design code asks for them. Pulled out, a
 * screw holds best in a hole of 90 % of its root in wood denser than 0.6 and of 70 % between 0.5 and 0.6; lighter
 * wood needs none. Pushed sideways, its shank and its root both get their own diameter in dense wood, 7/8 of it in
 * lighter wood.
 *
 * @returns Both holes, mm, `null` where there is none.
 * @throws RangeError where an input is outside its limits or the load is neither of the two.
 * Source: NDS, sections 12.1.5.2 and 12.1.5.3, as a handbook of building design puts them.
 * @example
 * ```ts
 * import { woodScrewLeadHole } from '@scantling/fastening';
 * // A No. 10 screw pulled out of sugar maple, and pushed sideways in pine
 * woodScrewLeadHole({ rootDiameterMm: 3.3, shankDiameterMm: 4.83, ovendrySpecificGravityRatio: 0.66, load: 'withdrawal' }) // => { threadHoleMm: 2.97, shankHoleMm: null }
 * woodScrewLeadHole({ rootDiameterMm: 3.2, shankDiameterMm: 4.8, ovendrySpecificGravityRatio: 0.4, load: 'lateral' }) // => { threadHoleMm: 2.8, shankHoleMm: 4.2 }
 * ```
 */
export function woodScrewLeadHole(input: WoodScrewLeadHoleInput): WoodScrewLeadHole {
  requireInputs('woodScrewLeadHole', input, limits);
  const { rootDiameterMm, shankDiameterMm, ovendrySpecificGravityRatio, load } = input;
  requireChoice('woodScrewLeadHole', 'load', load, ['withdrawal', 'lateral']);
  const dense = ovendrySpecificGravityRatio > 0.6;
  if (load === 'lateral') {
    const share = dense ? 1 : 0.875;
    return { threadHoleMm: share * rootDiameterMm, shankHoleMm: share * shankDiameterMm };
  }
  const threadHoleMm = ovendrySpecificGravityRatio > 0.5 ? (dense ? 0.9 : 0.7) * rootDiameterMm : null;
  return { threadHoleMm, shankHoleMm: null };
}

export const woodScrewLeadHoleRule = /* @__PURE__ */ defineRule<WoodScrewLeadHoleInput, WoodScrewLeadHole>(
  () => ({
    id: 'fastening/wood-screw-lead-hole',
    title: 'Lead holes for a wood screw, by density',
    summary:
      'What to bore for the threads and for the shank of a wood screw, by the density of the wood and the way the screw is loaded.',
    basis: 'convention',
    inputs: {
      rootDiameterMm: {
        kind: 'number',
        label: 'Root diameter',
        unit: 'mm',
        ...limits.rootDiameterMm,
        help: 'Between the threads; about two thirds of the shank in most wood screws.',
      },
      shankDiameterMm: shankInput(limits.shankDiameterMm),
      ovendrySpecificGravityRatio: ovendryInput(limits.ovendrySpecificGravityRatio),
      load: {
        kind: 'choice',
        label: 'Load',
        options: { withdrawal: 'Along the screw, pulling it out', lateral: 'Across the screw, sideways' },
      },
    },
    outputs: {
      threadHoleMm: { label: 'Hole for the threads', unit: 'mm', help: 'None is asked for in light wood.' },
      shankHoleMm: {
        label: 'Hole for the shank',
        unit: 'mm',
        help: 'As deep as the shank goes. Named for sideways loads only; the screw must turn freely in the piece under its head.',
      },
    },
    compute: woodScrewLeadHole,
    formula: String.raw`d_t = k\,d_r, \qquad d_s = k\,D`,
    symbols: {
      d_t: 'hole for the threads',
      d_s: 'hole for the shank, for a sideways load',
      d_r: 'root diameter',
      D: 'shank diameter',
      k: 'pulled out 0.9 where the specific gravity is above 0.6, 0.7 where it is above 0.5; sideways 1 where it is above 0.6, else 7/8',
    },
    inSymbols: (input, { threadHoleMm, shankHoleMm }) => {
      const dense = input.ovendrySpecificGravityRatio > 0.6;
      const pulled = dense ? 0.9 : 0.7;
      return {
        ...(threadHoleMm !== null && {
          d_t: threadHoleMm,
          k: input.load === 'withdrawal' ? pulled : dense ? 1 : 7 / 8,
        }),
        ...(shankHoleMm !== null && { d_s: shankHoleMm }),
        d_r: input.rootDiameterMm,
        D: input.shankDiameterMm,
      };
    },
    sources: [
      {
        source: buildingDesignHandbook,
        at: 'wood screws: 90 % and 70 % of the root in withdrawal, none below 0.50; shank and root, or 7/8 of both, in lateral loading',
        confirmed: 'text',
        tier: 'reprint',
      },
      {
        source: nds2018,
        at: 'sections 12.1.5.2 and 12.1.5.3',
        confirmed: 'memory',
        erratum:
          'At the limits themselves the two differ: the code has "G > 0.6", "0.5 < G ≤ 0.6" and "G ≤ 0.5" (memory; taken here), the handbook "0.6 or more" and "less than 0.50".',
      },
      {
        source: ndsCommentary1999,
        at: '11.1.2.1: before 1962 by kind of wood, 90 % of the root in hardwoods and 70 % in softwoods, from tests of screws up to 24 gauge and 5 in',
        confirmed: 'text',
      },
      {
        source: woodHandbook2021,
        at: 'ch. 8, Eq. 8-10, p. 8-10: its withdrawal loads are for holes of about 70 % of the root in softwoods and 90 % in hardwoods',
        confirmed: 'text',
        tier: 'reprint',
      },
      {
        source: pilotHoleSizesPage,
        at: 'the table of drills by this rule, and what its keeper recommends',
        confirmed: 'text',
        erratum:
          'For fine work the page has larger holes: No. 8 with 3/32 in in softwood and 1/8 in in hardwood.',
      },
    ],
    examples: [
      {
        given: {
          rootDiameterMm: 3.3,
          shankDiameterMm: 4.83,
          ovendrySpecificGravityRatio: 0.66,
          load: 'withdrawal',
        },
        expect: { threadHoleMm: '2.970' },
        from: { workedByHand: 'denser than 0.6: 0.9 × 3.3 = 2.970 mm' },
      },
      {
        given: {
          rootDiameterMm: 3.3,
          shankDiameterMm: 4.83,
          ovendrySpecificGravityRatio: 0.55,
          load: 'withdrawal',
        },
        expect: { threadHoleMm: '2.310' },
        from: { workedByHand: 'between 0.5 and 0.6: 0.7 × 3.3 = 2.310 mm' },
      },
      {
        given: {
          rootDiameterMm: 3.2,
          shankDiameterMm: 4.8,
          ovendrySpecificGravityRatio: 0.66,
          load: 'lateral',
        },
        expect: { threadHoleMm: '3.200', shankHoleMm: '4.800' },
        from: { workedByHand: 'denser than 0.6: 1 × 3.2 = 3.200 mm and 1 × 4.8 = 4.800 mm' },
      },
      {
        given: {
          rootDiameterMm: 3.2,
          shankDiameterMm: 4.8,
          ovendrySpecificGravityRatio: 0.4,
          load: 'lateral',
        },
        expect: { threadHoleMm: '2.800', shankHoleMm: '4.200' },
        from: { workedByHand: '7 / 8 × 3.2 = 2.800 mm; 7 / 8 × 4.8 = 4.200 mm' },
      },
    ],
    laws: [
      {
        of: 'threadHoleMm',
        by: { rootDiameterMm: 'proportional', ovendrySpecificGravityRatio: 'increasing' },
      },
      {
        of: 'shankHoleMm',
        by: { shankDiameterMm: 'proportional', ovendrySpecificGravityRatio: 'increasing' },
      },
    ],
    cautions: [largerInFineWork, tryOnAnOffcut, drillingCare],
  }),
);
