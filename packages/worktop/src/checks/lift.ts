import { needed, thereIs } from '../lengths.ts';
import type { Check, Computed } from '../result.ts';
import { figure } from './check.ts';

/** What there is rounded down, what is needed rounded up: a lack always shows. */
const kgThereIs = (kg: number) => `${(Math.floor(kg * 10 + 1e-6) / 10).toFixed(1)} kg`;
const kgNeeded = (kg: number) => `${(Math.ceil(kg * 10 - 1e-6) / 10).toFixed(1)} kg`;

export function checkWeight({ plan, lift }: Computed): Check | null {
  const asked = plan.base.lift;
  if (!lift || !asked) return null;
  const { liftedKg, neededCapacityKg, heaviestFirst, topIsWeighed, caution } = lift;
  const enough = asked.capacityKg >= neededCapacityKg - 1e-9;
  const overKg = liftedKg - asked.capacityKg * (1 - asked.leastMarginPct / 100);
  const margin = `with ${asked.leastMarginPct} % to spare`;
  const verdict = enough
    ? `${kgNeeded(liftedKg)} go up, ${kgThereIs(asked.capacityKg)} may: ${margin} ${kgNeeded(neededCapacityKg)} are needed.`
    : `base.lift.capacityKg is ${kgThereIs(asked.capacityKg)}; ${kgNeeded(liftedKg)} go up, ${margin} at least ${kgNeeded(neededCapacityKg)} are needed: choose a base that lifts more, or put ${kgNeeded(overKg)} less on it`;
  const unweighed = `No table gives the density of ${plan.top.species}: its wood is not counted. Weigh a board and add the top to base.lift.frameMassKg.`;
  const parts = heaviestFirst.map(({ name, massKg }) => `${name} ${kgNeeded(massKg)}`).join(', ');
  return {
    id: 'weight',
    title: 'The base can lift what it carries',
    status: enough ? (topIsWeighed ? 'pass' : 'warn') : 'fail',
    says: [verdict, ...(topIsWeighed ? [] : [unweighed]), `Heaviest first: ${parts}.`, caution].join('\n'),
    figures: [
      figure('lifted', liftedKg, 'kg'),
      figure('capacity', asked.capacityKg, 'kg'),
      figure('of the capacity in use', lift.usedPct, '%'),
      ...heaviestFirst.map(({ name, massKg }) => figure(name, massKg, 'kg')),
    ],
    margin: { given: asked.capacityKg, min: neededCapacityKg, unit: 'kg' },
    rules: ['movement/wood-density'],
  };
}

export function checkHeight({ plan, lift }: Computed): Check | null {
  const asked = plan.base.lift;
  if (!lift || !asked) return null;
  const { lowestFaceMm, highestFaceMm } = lift;
  const tooHighMm = lowestFaceMm - asked.lowestWorkMm;
  const tooLowMm = asked.highestWorkMm - highestFaceMm;
  const wrong = [
    ...(tooHighMm <= 1e-9
      ? []
      : [
          `base.lift.lowestWork is ${thereIs(asked.lowestWorkMm)}; lowered, the face stands at ${needed(lowestFaceMm)}: leastHeight has to be ${needed(tooHighMm)} less, or the top thinner`,
        ]),
    ...(tooLowMm <= 1e-9
      ? []
      : [
          `base.lift.highestWork is ${needed(asked.highestWorkMm)}; raised, the face stands at ${thereIs(highestFaceMm)}: mostHeight has to be ${needed(tooLowMm)} more`,
        ]),
  ];
  const lowered = { given: lowestFaceMm, max: asked.lowestWorkMm, unit: 'mm' } as const;
  const raised = { given: highestFaceMm, min: asked.highestWorkMm, unit: 'mm' } as const;
  return {
    id: 'height',
    title: 'The top comes as low and as high as wanted',
    status: wrong.length ? 'fail' : 'pass',
    says: wrong.length
      ? wrong.join('\n')
      : `The face stands from ${needed(lowestFaceMm)} to ${thereIs(highestFaceMm)} above the floor.`,
    figures: [
      figure('lowest face', lowestFaceMm, 'mm'),
      figure('highest face', highestFaceMm, 'mm'),
      figure('lowest work', asked.lowestWorkMm, 'mm'),
      figure('highest work', asked.highestWorkMm, 'mm'),
    ],
    margin: tooHighMm > tooLowMm ? lowered : raised,
    rules: [],
  };
}
