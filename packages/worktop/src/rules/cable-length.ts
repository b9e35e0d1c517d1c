import { defineRule, requireInputs, requireThat } from '@scantling/rules';
import { cablesThatMove, mainsWiring } from '../cable-cautions.ts';

const limits = {
  heldBelowMm: { min: 0, max: 20_000 },
  asideMm: { min: 0, max: 20_000 },
  riseMm: { min: 0, max: 5000 },
  slackPct: { min: 0, max: 100 },
} as const;

export interface CableLengthInput {
  /** From the hole straight to where the cable is held below, with the base lowered, mm, 0 to 20 000. */
  readonly heldBelowMm: number;
  /** Sideways part of that way, mm, 0 to heldBelowMm: 0 where it is held right below the hole. */
  readonly asideMm: number;
  /** How far the base rises, mm, 0 to 5000. */
  readonly riseMm: number;
  /** What stays slack when it stands highest, % of the distance then, 0 to 100. */
  readonly slackPct: number;
}

export interface CableLength {
  /** Between hole and hold with the base raised, mm. */
  readonly farthestMm: number;
  /** That the cable needs between the two, mm. */
  readonly lengthMm: number;
}

const reaches = ({ asideMm, heldBelowMm }: CableLengthInput) => asideMm <= heldBelowMm;

/**
 * How long a cable has to be between the hole of a top and where it is held below, so that it stays slack when the base
 * has risen. A cable held right below its hole needs the most: with `asideMm` 0 the length is enough wherever it is held.
 *
 * @returns The distance with the base raised and the length of cable, mm.
 * @throws RangeError where an input is outside its limits or asideMm is longer than heldBelowMm.
 * Common practice, no source: the distance is Pythagoras’, how much slack is custom.
 * @example
 * ```ts
 * import { cableLength } from '@scantling/worktop';
 * // Held 650 mm right below; the base rises by 400 mm
 * cableLength({ heldBelowMm: 650, asideMm: 0, riseMm: 400, slackPct: 20 }) // => { farthestMm: 1050, lengthMm: 1260 }
 * cableLength({ heldBelowMm: 500, asideMm: 501, riseMm: 400, slackPct: 20 }) // throws cableLength requires asideMm up to heldBelowMm, got 501
 * ```
 */
export function cableLength(input: CableLengthInput): CableLength {
  requireInputs('cableLength', input, limits);
  const { heldBelowMm, asideMm, riseMm, slackPct } = input;
  requireThat('cableLength', reaches(input), `asideMm up to heldBelowMm, got ${asideMm}`);
  const down = Math.sqrt((heldBelowMm - asideMm) * (heldBelowMm + asideMm));
  const farthestMm = Math.hypot(asideMm, down + riseMm);
  return { farthestMm, lengthMm: farthestMm * (1 + slackPct / 100) };
}

export const cableLengthRule = /* @__PURE__ */ defineRule(() => ({
  id: 'worktop/cable-length',
  title: 'Cable for a base that rises',
  summary:
    'How long a cable has to be between a top and where it is held below, so that it stays slack when the base has risen.',
  basis: 'convention',
  inputs: {
    heldBelowMm: {
      kind: 'number',
      label: 'From the hole to where it is held',
      unit: 'mm',
      ...limits.heldBelowMm,
      help: 'Along the shortest way, with the base lowered.',
    },
    asideMm: {
      kind: 'number',
      label: 'How far aside it is held',
      unit: 'mm',
      ...limits.asideMm,
      help: 'Level, from right below the hole; 0 is on the safe side.',
    },
    riseMm: { kind: 'number', label: 'The base rises by', unit: 'mm', ...limits.riseMm },
    slackPct: {
      kind: 'number',
      label: 'Slack that stays',
      unit: '%',
      ...limits.slackPct,
      help: 'Of the distance with the base raised.',
    },
  },
  outputs: {
    farthestMm: { label: 'Distance with the base raised', unit: 'mm' },
    lengthMm: { label: 'Length of cable', unit: 'mm' },
  },
  compute: cableLength,
  formula: String.raw`L = (1 + s) \, m, \qquad m = \sqrt{a^2 + \left(\sqrt{h^2 - a^2} + r\right)^2}`,
  symbols: {
    L: 'length of cable',
    m: 'distance from the hole to the hold, base raised',
    h: 'distance from the hole to the hold, base lowered',
    a: 'its sideways part',
    r: 'rise of the base',
    s: 'slack, as a share',
  },
  inSymbols: (input, output) => ({
    L: output.lengthMm,
    m: output.farthestMm,
    h: input.heldBelowMm,
    a: input.asideMm,
    r: input.riseMm,
    s: input.slackPct / 100,
  }),
  requires: [{ says: 'It is held no farther aside than away.', holds: reaches }],
  sources: [],
  examples: [
    {
      given: { heldBelowMm: 650, asideMm: 0, riseMm: 400, slackPct: 20 },
      expect: { farthestMm: '1050.0', lengthMm: '1260.0' },
      from: {
        workedByHand: '650 + 400 = 1050.0 mm, with nothing aside: 0; 1050 × (1 + 20 / 100) = 1260.0 mm',
      },
    },
    {
      given: { heldBelowMm: 500, asideMm: 300, riseMm: 320, slackPct: 10 },
      expect: { farthestMm: '780.0', lengthMm: '858.0' },
      from: {
        workedByHand:
          'sqrt(500² − 300²) = 400; 400 + 320 = 720; sqrt(300² + 720²) = 780.0 mm; 780 × (1 + 10 / 100) = 858.0 mm',
      },
    },
  ],
  laws: [
    {
      of: 'lengthMm',
      by: { heldBelowMm: 'increasing', asideMm: 'decreasing', riseMm: 'increasing', slackPct: 'linear' },
    },
  ],
  cautions: [cablesThatMove, mainsWiring],
}));
