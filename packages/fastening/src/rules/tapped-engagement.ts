import { defineRule, requireInputs, requireThat } from '@scantling/rules';
import { threadEngagementTutorial } from '@scantling/rules/sources';
import { makersDataFirst, notStructuralDesign } from '../cautions.ts';

const limits = {
  diameterMm: { min: 1, max: 64 },
  pitchMm: { min: 0.2, max: 6 },
  strengthRatio: { min: 0.05, max: 20 },
} as const;

export interface TappedEngagementInput {
  /** Diameter of the machine screw over its thread, mm, 1 to 64. */
  readonly diameterMm: number;
  /** Pitch of the thread, mm, 0.2 to 6, at most a half of the diameter. */
  readonly pitchMm: number;
  /** Tensile strength of the screw over that of the tapped metal, 0.05 to 20: 1 for mild steel in mild steel. */
  readonly strengthRatio: number;
}

export interface TappedEngagement {
  /** Least length of thread in the tapped metal so that the screw breaks before the thread strips, mm. */
  readonly leastEngagementMm: number;
}

const threadFits = ({ diameterMm, pitchMm }: TappedEngagementInput) => pitchMm <= diameterMm / 2;

/**
 * How long a machine screw has to engage in a tapped hole so that the screw breaks before its thread strips: the
 * sheared thread has twice the area of the screw's core, and more of it where the tapped metal is weaker.
 *
 * @returns Least length of engagement, mm.
 * @throws RangeError where an input is outside its limits or the thread is too coarse for the screw.
 * Source: the area equations of handbooks for threads of equal strength, as a tutorial gives them.
 * @example
 * ```ts
 * import { tappedEngagement } from '@scantling/fastening';
 * // M6 in metal as strong as the screw, and in metal half as strong
 * tappedEngagement({ diameterMm: 6, pitchMm: 1, strengthRatio: 1 }).leastEngagementMm // => 4.79
 * tappedEngagement({ diameterMm: 6, pitchMm: 1, strengthRatio: 2 }).leastEngagementMm // => 9.58
 * ```
 */
export function tappedEngagement(input: TappedEngagementInput): TappedEngagement {
  requireInputs('tappedEngagement', input, limits);
  const { diameterMm, pitchMm, strengthRatio } = input;
  requireThat(
    'tappedEngagement',
    threadFits(input),
    `pitchMm at most half of diameterMm, got ${pitchMm} and ${diameterMm}`,
  );
  const forEqualsMm = (diameterMm - 0.938194 * pitchMm) ** 2 / (diameterMm - 0.64952 * pitchMm);
  return { leastEngagementMm: forEqualsMm * Math.max(1, strengthRatio) };
}

/** Through the two areas: the core π/4 (D − 0.938194 p)², sheared thread half of the pitch cylinder. */
function byAreas({ diameterMm, pitchMm, strengthRatio }: TappedEngagementInput): number {
  const coreMm2 = (Math.PI / 4) * (diameterMm - 0.938194 * pitchMm) ** 2;
  const shearedMm2PerMm = 0.5 * Math.PI * (diameterMm - 0.64952 * pitchMm);
  return ((2 * coreMm2) / shearedMm2PerMm) * (strengthRatio > 1 ? strengthRatio : 1);
}

export const tappedEngagementRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/tapped-engagement',
  title: 'Engagement of a machine screw in tapped metal',
  summary:
    'How much thread of a machine screw has to be in tapped metal so that the screw breaks before the thread strips.',
  basis: 'derived',
  inputs: {
    diameterMm: { kind: 'number', label: 'Screw diameter', unit: 'mm', ...limits.diameterMm },
    pitchMm: { kind: 'number', label: 'Pitch', unit: 'mm', ...limits.pitchMm },
    strengthRatio: {
      kind: 'number',
      label: 'Strength, screw over tapped metal',
      unit: '1',
      ...limits.strengthRatio,
      help: 'Tensile strengths; below 1 nothing is taken off.',
    },
  },
  outputs: { leastEngagementMm: { label: 'Least engagement', unit: 'mm' } },
  compute: tappedEngagement,
  formula: String.raw`\begin{aligned}
L_e &= \frac{2 A_t}{\tfrac{1}{2} \pi (D - 0.64952\,p)} \max(1, J) \\
A_t &= \tfrac{\pi}{4} (D - 0.938194\,p)^2
\end{aligned}`,
  symbols: {
    L_e: 'least engagement',
    A_t: 'stress area of the screw, mm²',
    D: 'screw diameter',
    p: 'pitch',
    J: 'strength, screw over tapped metal',
  },
  inSymbols: ({ diameterMm, pitchMm, strengthRatio }, output) => ({
    L_e: output.leastEngagementMm,
    A_t: (Math.PI / 4) * (diameterMm - 0.938194 * pitchMm) ** 2,
    D: diameterMm,
    p: pitchMm,
    J: strengthRatio,
  }),
  requires: [{ says: 'the pitch is at most half of the diameter', holds: threadFits }],
  sources: [
    {
      source: threadEngagementTutorial,
      at: 'equations 1 to 3',
      confirmed: 'text',
      tier: 'reprint',
    },
  ],
  examples: [
    {
      given: { diameterMm: 6, pitchMm: 1, strengthRatio: 1 },
      expect: { leastEngagementMm: '4.789' },
      from: { workedByHand: '(6 − 0.938194)^2 / (6 − 0.64952) = 4.789 mm' },
    },
    {
      given: { diameterMm: 8, pitchMm: 1.25, strengthRatio: 1.6 },
      expect: { leastEngagementMm: '10.375' },
      from: { workedByHand: '(8 − 0.938194 × 1.25)^2 / (8 − 0.64952 × 1.25) × 1.6 = 10.375 mm' },
    },
  ],
  laws: [
    {
      of: 'leastEngagementMm',
      by: { diameterMm: 'increasing', pitchMm: 'decreasing', strengthRatio: 'increasing' },
    },
  ],
  peers: [
    {
      name: 'twice the stress area over the sheared area of a millimetre',
      of: 'leastEngagementMm',
      compute: byAreas,
      relative: 1e-9,
    },
  ],
  cautions: [makersDataFirst, notStructuralDesign],
}));
