import { defineRule, plusZero, requireInputs, requireThat } from '@scantling/rules';
import { fasteningTabletops1987 } from '@scantling/rules/sources';
import { firmNotHard, notStructuralDesign } from '../cautions.ts';

const limits = {
  reachMm: { min: 1, max: 500 },
  angleDeg: { min: -90, max: 90 },
  mostAngleDeg: { min: 0, max: 90 },
  playMm: { min: 0, max: 20 },
} as const;

export interface PivotingPlateTravelInput {
  /** Between the centres of the plate's two screws, mm, 1 to 500. */
  readonly reachMm: number;
  /**
   * Angle of the plate on building day, −90° to 90°: 0 where it lies along the grain, square to the travel; positive
   * where its screw in the top stands farther from the fixed line than its screw in the base.
   */
  readonly angleDeg: number;
  /** How far the recess lets it turn from square, either way, 0° to 90°. */
  readonly mostAngleDeg: number;
  /** Play of both screws in the plate together, along the grain and either way, mm, 0 to 20. */
  readonly playMm: number;
}

export interface PivotingPlateTravel {
  /** How far the screw in the top may travel away from the fixed line, mm. */
  readonly roomToSwellMm: number;
  /** How far it may travel towards the fixed line, mm. */
  readonly roomToShrinkMm: number;
}

/**
 * How far a plate that turns on two screws lets a top travel straight across the grain: until the arc has drawn its screw
 * sideways by more than the play, or the recess stops it. Without play it lets nothing travel straight.
 *
 * @returns The room for travel both ways from building day, mm.
 * @throws RangeError where an input is outside its limits, or the plate already turned farther than the recess lets it.
 * Source: plates that turn are published practice; the travel is the geometry of the circle.
 * @example
 * ```ts
 * import { pivotingPlateTravel } from '@scantling/fastening';
 * // 13 mm between the screws, 1 mm of play in all: √(13² − 12²)
 * pivotingPlateTravel({ reachMm: 13, angleDeg: 0, mostAngleDeg: 45, playMm: 1 }) // => { roomToSwellMm: 5, roomToShrinkMm: 5 }
 * ```
 */
export function pivotingPlateTravel(input: PivotingPlateTravelInput): PivotingPlateTravel {
  requireInputs('pivotingPlateTravel', input, limits);
  const { reachMm, angleDeg, mostAngleDeg, playMm } = input;
  requireThat(
    'pivotingPlateTravel',
    Math.abs(angleDeg) <= mostAngleDeg,
    `angleDeg within mostAngleDeg of 0, got ${angleDeg} and ${mostAngleDeg}`,
  );
  const across = (deg: number) => reachMm * Math.sin((deg * Math.PI) / 180);
  const todayMm = across(Math.abs(angleDeg));
  const alongMm = across(90 - Math.abs(angleDeg));
  // The squares of how far from square the screw stands where it is drawn in, or pushed out, by all of the play.
  const drawnIn = todayMm ** 2 + playMm * (2 * alongMm - playMm);
  const pushedOut = todayMm ** 2 - playMm * (2 * alongMm + playMm);
  const stopMm = across(mostAngleDeg);
  const farMm = playMm < alongMm ? Math.min(stopMm, Math.sqrt(drawnIn)) : stopMm;
  const outMm = plusZero(farMm - todayMm);
  const backMm = plusZero(todayMm - (pushedOut > 0 ? Math.sqrt(pushedOut) : -farMm));
  return angleDeg < 0
    ? { roomToSwellMm: backMm, roomToShrinkMm: outMm }
    : { roomToSwellMm: outMm, roomToShrinkMm: backMm };
}

export const pivotingPlateTravelRule = /* @__PURE__ */ defineRule(() => ({
  id: 'fastening/pivoting-plate-travel',
  title: 'Travel that a plate that turns allows',
  summary:
    'How far a plate that turns on two screws lets a solid top travel: little, unless its screws have play, because its end moves on a circle.',
  basis: 'exact',
  inputs: {
    reachMm: {
      kind: 'number',
      label: 'Between the two screws',
      unit: 'mm',
      ...limits.reachMm,
      help: 'From centre to centre.',
    },
    angleDeg: {
      kind: 'number',
      label: 'Angle on building day',
      unit: '°',
      ...limits.angleDeg,
      help: '0 where the plate lies along the grain; positive where its screw in the top stands farther from the fixed line than that in the base.',
    },
    mostAngleDeg: {
      kind: 'number',
      label: 'Most that it turns',
      unit: '°',
      ...limits.mostAngleDeg,
      help: 'Either way from lying along the grain, as far as the recess is open.',
    },
    playMm: {
      kind: 'number',
      label: 'Play of the screws',
      unit: 'mm',
      ...limits.playMm,
      help: 'Of both screws in the plate together, along the grain, either way from where they stand on building day.',
    },
  },
  outputs: {
    roomToSwellMm: { label: 'Room to swell', unit: 'mm', help: 'Away from the fixed line.' },
    roomToShrinkMm: { label: 'Room to shrink', unit: 'mm', help: 'Towards the fixed line.' },
  },
  compute: pivotingPlateTravel,
  formula: String.raw`\begin{aligned}
u &= r \cos\varphi, \qquad v = r \sin|\varphi| \\
v_1 &= \min\left(r \sin\Phi,\ \sqrt{r^2 - \max(0,\ u - p)^2}\right) \\
v_2 &= \begin{cases} \sqrt{r^2 - (u + p)^2} & u + p < r \\ -v_1 & u + p \ge r \end{cases} \\
w &= \begin{cases} v_1 - v & \varphi \ge 0 \\ v - v_2 & \varphi < 0 \end{cases}, \qquad
s = \begin{cases} v - v_2 & \varphi \ge 0 \\ v_1 - v & \varphi < 0 \end{cases}
\end{aligned}`,
  symbols: {
    'w, s': 'room to swell, and to shrink',
    'u, v': 'from the screw in the base to that in the top on building day, along and across the grain, mm',
    'v_1, v_2': 'v at the end of the travel away from square, and at the end of that back and past it, mm',
    r: 'between the two screws',
    p: 'play of the screws',
    '\\varphi, \\Phi': 'angle of the plate on building day, and the most that it turns',
  },
  inSymbols: (input, output) => {
    const { reachMm, angleDeg, mostAngleDeg, playMm } = input;
    const across = (deg: number) => reachMm * Math.sin((deg * Math.PI) / 180);
    const { roomToSwellMm: w, roomToShrinkMm: s } = output;
    const v = across(Math.abs(angleDeg));
    return {
      w,
      s,
      u: across(90 - Math.abs(angleDeg)),
      v,
      v_1: v + (angleDeg < 0 ? s : w),
      v_2: v - (angleDeg < 0 ? w : s),
      r: reachMm,
      p: playMm,
      '\\varphi': angleDeg,
      '\\Phi': mostAngleDeg,
    };
  },
  requires: [
    {
      says: 'the plate stands within what its recess lets it turn',
      holds: ({ angleDeg, mostAngleDeg }) => Math.abs(angleDeg) <= mostAngleDeg,
    },
  ],
  sources: [
    {
      source: fasteningTabletops1987,
      at: 'summary: a fastener in the shape of a figure 8',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { reachMm: 13, angleDeg: 0, mostAngleDeg: 45, playMm: 1 },
      expect: { roomToSwellMm: '5.000', roomToShrinkMm: '5.000' },
      from: {
        workedByHand: '√(13² − (13 − 1)²) = 5.000 mm either way; the recess allows 13 × sin(45°) = 9.19 mm',
      },
    },
    {
      given: { reachMm: 25, angleDeg: 53.130102354, mostAngleDeg: 75, playMm: 5 },
      expect: { roomToSwellMm: '2.913', roomToShrinkMm: '5.000' },
      from: {
        workedByHand:
          '25 × sin(53.130102354°) = 20.000 mm across and 25 × cos(53.130102354°) = 15.000 mm along; drawn in: √(25² − (15 − 5)²) = 22.913 mm; 22.913 − 20 = 2.913 mm; pushed out: √(25² − (15 + 5)²) = 15.000 mm; 20 − 15 = 5.000 mm',
      },
    },
    {
      given: { reachMm: 20, angleDeg: 0, mostAngleDeg: 30, playMm: 10 },
      expect: { roomToSwellMm: '10.00', roomToShrinkMm: '10.00' },
      from: {
        workedByHand:
          'The recess stops it at 20 × sin(30°) = 10.00 mm; the play alone would allow √(20² − 10²) = 17.32 mm',
      },
    },
  ],
  laws: [
    { of: 'roomToSwellMm', by: { playMm: 'increasing', mostAngleDeg: 'increasing' } },
    { of: 'roomToShrinkMm', by: { playMm: 'increasing', mostAngleDeg: 'increasing' } },
  ],
  cautions: [notStructuralDesign, firmNotHard],
}));
