import type { WorktopPlan } from '../result.ts';
import { agree, type Finding, holds, same } from './finding.ts';
import { apartMm } from './neighbours.ts';

/** The parts of a screw laid end to end from its head: layers, shank, thread, tip. */
export function recheckScrews({ plan, screws, strip }: WorktopPlan): Finding[] {
  const asked = plan.screws;
  if (!screws || !asked) return same('screws', screws === null, asked == null);
  const { top, base } = plan;
  const layersMm = asked.layersMm.reduce((sum, mm) => sum + mm, 0);
  const threadedMm = asked.threadShare * asked.lengthMm;
  const rabbet = strip?.rabbet;
  const isUnder = (x: number, y: number) =>
    rabbet !== undefined && apartMm(x, y, rabbet) < base.shankDiameterMm / 2;
  /** How a screw of any length lies in wood of a thickness. */
  const lies = (lengthMm: number, woodMm: number) => {
    const inMm = Math.max(0, lengthMm - layersMm);
    const threadMm = asked.threadShare * lengthMm;
    const tipMm = Math.min(asked.tipLengthMm, threadMm);
    const shankInMm = Math.max(0, lengthMm - threadMm - layersMm);
    const reachedMm = Math.min(inMm, woodMm);
    // Thread begins where the shank ends, and its tip holds nothing.
    const threadInMm = Math.max(0, Math.min(inMm - tipMm, reachedMm) - Math.min(shankInMm, reachedMm));
    return {
      reachedMm,
      shankInMm: Math.min(shankInMm, woodMm),
      threadInMm,
      // To the face, also where it does not reach the wood.
      stockMm: layersMm + woodMm - lengthMm,
      allTip: asked.tipLengthMm > threadMm,
    };
  };
  const passes = (lengthMm: number, woodMm: number) => {
    const { reachedMm, threadInMm, stockMm, allTip } = lies(lengthMm, woodMm);
    return (
      !allTip &&
      reachedMm > 0 &&
      threadInMm >= asked.leastThreadMm - 1e-6 &&
      stockMm >= asked.leastStockMm - 1e-6
    );
  };
  const woods = [...new Set(screws.at.map(({ topThicknessMm }) => topThicknessMm))];
  const fitting = [...new Set(asked.stockLengthsMm)]
    .filter((lengthMm) => woods.every((woodMm) => passes(lengthMm, woodMm)))
    .sort((a, b) => a - b);
  return [
    ...agree('screws.lengthMm', screws.lengthMm, asked.lengthMm, 0),
    ...agree('screws.threadLengthMm', screws.threadLengthMm, threadedMm),
    ...agree('screws.layersMm', screws.layersMm, layersMm),
    ...same(
      'screws.fittingLengthsMm',
      [...screws.fittingLengthsMm].sort((a, b) => a - b).join(),
      fitting.join(),
    ),
    ...agree('screws.at', screws.at.length, base.fixings.length, 0),
    ...base.fixings.flatMap((fixing, i) => {
      const path = `screws.at[${i}]`;
      const screw = screws.at[i];
      if (!screw) return same(path, 'missing', fixing.name);
      const under = isUnder(fixing.xMm, fixing.yMm);
      const woodMm = top.thicknessMm - (under ? (plan.strip?.rabbetDepthMm ?? 0) : 0);
      const { reachedMm, shankInMm, threadInMm, stockMm } = lies(asked.lengthMm, woodMm);
      return [
        ...same(`${path}.name`, screw.name, fixing.name),
        ...agree(`${path}.xMm`, screw.xMm, fixing.xMm, 0),
        ...agree(`${path}.yMm`, screw.yMm, fixing.yMm, 0),
        ...same(`${path}.underStrip`, screw.underStrip, under),
        ...agree(`${path}.topThicknessMm`, screw.topThicknessMm, woodMm),
        ...agree(`${path}.penetrationMm`, screw.penetrationMm, reachedMm),
        ...agree(`${path}.shankInWoodMm`, screw.shankInWoodMm, shankInMm),
        ...agree(`${path}.threadInWoodMm`, screw.threadInWoodMm, threadInMm),
        ...agree(`${path}.stockAboveTipMm`, screw.stockAboveTipMm, stockMm),
      ];
    }),
    ...same(
      'screws.settings',
      screws.settings
        .flatMap(({ fixings }) => fixings)
        .sort()
        .join(),
      screws.at
        .map(({ name }) => name)
        .sort()
        .join(),
    ),
    ...screws.settings.flatMap((setting, i) => {
      const woodMm = setting.topThicknessMm;
      const { reachedMm, shankInMm, stockMm } = lies(asked.lengthMm, woodMm);
      const wantedMm = shankInMm + asked.leadHoleShare * (reachedMm - shankInMm);
      const hole = (name: 'shankHole' | 'leadHole', depthMm: number, bitTipMm: number): Finding[] => {
        const path = `screws.settings[${i}].${name}`;
        const made = setting[name];
        if (!made) return [];
        const deepMm = Math.min(depthMm, woodMm - asked.leastStockMm - bitTipMm);
        return [
          ...agree(`${path}.holeDepthMm`, made.holeDepthMm, deepMm),
          ...agree(`${path}.shortenedMm`, made.shortenedMm, depthMm - deepMm),
          ...agree(`${path}.stopFromTipMm`, made.stopFromTipMm, deepMm + bitTipMm),
          ...agree(`${path}.bitOutOfChuckMm`, made.bitOutOfChuckMm, deepMm + bitTipMm + asked.stopLengthMm),
          ...agree(`${path}.stockAboveTipMm`, made.stockAboveTipMm, woodMm - deepMm - bitTipMm),
        ];
      };
      return [
        ...holds(
          `screws.settings[${i}].topThicknessMm`,
          setting.fixings.every(
            (name) => screws.at.find((one) => one.name === name)?.topThicknessMm === woodMm,
          ),
          'is not the wood of its screws',
        ),
        ...hole('shankHole', shankInMm, asked.shankBitTipLengthMm),
        ...hole('leadHole', wantedMm, asked.leadBitTipLengthMm),
        ...recheckSteps(`screws.settings[${i}]`, setting, { woodMm, reachedMm, stockMm }),
      ];
    }),
  ];
}

type Setting = NonNullable<WorktopPlan['screws']>['settings'][number];

/** Each hole is set, held against the edge and bored, the wider before the narrower; then the screw. */
function recheckSteps(
  path: string,
  { steps, reasons, shankHole, leadHole }: Setting,
  { woodMm, reachedMm, stockMm }: { woodMm: number; reachedMm: number; stockMm: number },
): Finding[] {
  if (reasons.length > 0) return same(`${path}.steps`, steps.length, 0);
  const expected: [operation: string, distanceMm: number][] = [
    ['measure', woodMm],
    ...[shankHole, leadHole].flatMap((hole): [string, number][] =>
      hole
        ? [
            ['set', hole.stopFromTipMm],
            ['check', hole.stockAboveTipMm],
            ['bore', hole.holeDepthMm],
          ]
        : [],
    ),
    ['check', stockMm],
    ['drive', reachedMm],
  ];
  return [
    ...same(
      `${path}.steps`,
      steps.map(({ operation }) => operation).join(),
      expected.map(([does]) => does).join(),
    ),
    ...expected.flatMap(([, distanceMm], i) =>
      agree(`${path}.steps[${i}].distanceMm`, steps[i]?.distanceMm ?? Number.NaN, distanceMm),
    ),
  ];
}
