import { needed, thereIs } from '../lengths.ts';
import type { PlannedScrew, PlannedScrews } from '../parts/screws.ts';
import type { SettledPlan } from '../plan/plan.ts';
import type { Check, Computed } from '../result.ts';
import { figure, least } from './check.ts';

/** As much as `chooseScrewLength` leaves to rounding. */
const ROUNDING = 1e-9;

const place = ({ base }: SettledPlan, { name }: PlannedScrew) =>
  `base.fixings[${base.fixings.findIndex((fixing) => fixing.name === name)}] (${name})`;

const wood = ({ topThicknessMm, underStrip }: PlannedScrew) =>
  `${thereIs(topThicknessMm)} of wood${underStrip ? ' under the strip' : ''}`;

/** Which length would do. */
function advice({ fittingLengthsMm, lengthMm }: PlannedScrews): string {
  const others = fittingLengthsMm.filter((length) => length !== lengthMm);
  if (others.length === 0)
    return 'No other length on offer does at every screw: change the layers, or move the screw';
  return `Of the lengths on offer ${others.map((length) => thereIs(length)).join(', ')} would do at every screw`;
}

/** Whether the tips of screws and bits stay below the face. */
export function checkThroughFace({ plan, screws }: Computed): Check | null {
  if (!screws || !plan.screws) return null;
  const { leastStockMm } = plan.screws;
  const tightest = least(screws.at, ({ stockAboveTipMm }) => stockAboveTipMm);
  const out = screws.at.filter(({ stockAboveTipMm }) => !(stockAboveTipMm >= leastStockMm - ROUNDING));
  const lengthFaults = out.map((screw) => {
    const { stockAboveTipMm } = screw;
    const ends =
      stockAboveTipMm < 0 ? `${needed(-stockAboveTipMm)} beyond` : `${thereIs(stockAboveTipMm)} below`;
    return `screws.length is ${thereIs(screws.lengthMm)}; at ${place(plan, screw)}, in ${wood(screw)}, the tip ends ${ends} the face, at least ${needed(leastStockMm)} below it is needed`;
  });
  const outAt = new Set(out.map(({ topThicknessMm }) => topThicknessMm));
  const reaches = new Set(
    screws.at.filter(({ penetrationMm }) => penetrationMm > 0).map(({ topThicknessMm }) => topThicknessMm),
  );
  const bitFaults = screws.settings
    .filter(({ topThicknessMm }) => !outAt.has(topThicknessMm) && reaches.has(topThicknessMm))
    .flatMap(({ reasons, fixings }) =>
      reasons.map((reason) => `screws, at ${fixings.join(', ')}: ${reason}`),
    );
  const shorter = screws.settings.flatMap(({ leadHole, fixings }) =>
    leadHole && leadHole.shortenedMm > ROUNDING
      ? [
          `At ${fixings.join(', ')} the hole for the thread is ${needed(leadHole.shortenedMm)} less deep than asked, so that its bit keeps below the face.`,
        ]
      : [],
  );
  const faults = [...lengthFaults, ...(out.length ? [advice(screws)] : []), ...bitFaults];
  const fine = tightest
    ? [`Every tip ends at least ${thereIs(tightest.stockAboveTipMm)} below the face.`, ...shorter]
    : [];
  return {
    id: 'through-face',
    title: 'No screw and no bit comes through the face',
    status: faults.length ? 'fail' : 'pass',
    says: (faults.length ? faults : fine).join('\n'),
    figures: [
      figure('screw length', screws.lengthMm, 'mm'),
      ...(tightest ? [figure('least wood above a tip', tightest.stockAboveTipMm, 'mm')] : []),
    ],
    ...(tightest
      ? { margin: { given: tightest.stockAboveTipMm, min: leastStockMm, unit: 'mm' } as const }
      : {}),
    rules: ['fastening/thread-engagement', 'fastening/depth-stop-setting'],
  };
}

/** Whether enough thread holds in the wood, and the screw is to be had. */
export function checkEngagement({ plan, screws }: Computed): Check | null {
  if (!screws || !plan.screws) return null;
  const { leastThreadMm, stockLengthsMm } = plan.screws;
  const weakest = least(screws.at, ({ threadInWoodMm }) => threadInWoodMm);
  const weak = screws.at.filter(
    ({ threadInWoodMm, penetrationMm }) => !(threadInWoodMm >= leastThreadMm - ROUNDING && penetrationMm > 0),
  );
  const faults = weak.map((screw) => {
    const holds =
      screw.penetrationMm > 0
        ? `${thereIs(screw.threadInWoodMm)} of thread is within ${wood(screw)}, at least ${needed(leastThreadMm)} is needed`
        : 'it does not reach the wood';
    return `screws.length is ${thereIs(screws.lengthMm)}; at ${place(plan, screw)} ${holds}`;
  });
  const offered = stockLengthsMm.some((length) => Math.abs(length - screws.lengthMm) <= ROUNDING);
  const odd = offered
    ? []
    : [`screws.length is ${thereIs(screws.lengthMm)}, which is not among screws.stockLengths`];
  return {
    id: 'engagement',
    title: 'Screws hold in the wood',
    status: faults.length ? 'fail' : odd.length ? 'warn' : 'pass',
    says: [
      ...faults,
      ...(faults.length ? [advice(screws)] : []),
      ...odd,
      ...(faults.length || !weakest
        ? []
        : [`At least ${thereIs(weakest.threadInWoodMm)} of thread holds in the wood.`]),
    ].join('\n'),
    figures: [
      figure('layers under the head', screws.layersMm, 'mm'),
      figure('thread', screws.threadLengthMm, 'mm'),
      ...(weakest ? [figure('least thread in the wood', weakest.threadInWoodMm, 'mm')] : []),
    ],
    ...(weakest
      ? { margin: { given: weakest.threadInWoodMm, min: leastThreadMm, unit: 'mm' } as const }
      : {}),
    rules: ['fastening/thread-engagement'],
  };
}
