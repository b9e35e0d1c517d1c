import type { PinFit } from '@scantling/grids';
import { needed, thereIs } from '../lengths.ts';
import type { PlannedAccessory } from '../parts/accessories.ts';
import type { Accessory } from '../plan/holes.ts';
import type { Check, Computed, Status } from '../result.ts';
import { figure, least } from './check.ts';

const seasons = [
  ['now', 'as drilled'],
  ['swollen', 'in the damp season'],
  ['shrunken', 'in the dry season'],
] as const;

const margins = (fit: PinFit) =>
  seasons.map(([season, when]) => ({ when, marginMm: fit[season].worstCase.marginMm }));

const all = (fit: PinFit, way: 'worstCase' | 'rootSumSquare') =>
  seasons.every(([season]) => fit[season][way].goesIn);

const statusOf = ({ fit }: PlannedAccessory): Status =>
  fit && all(fit, 'worstCase') ? 'pass' : fit && all(fit, 'rootSumSquare') ? 'warn' : 'fail';

/** A margin as a length: never more than there is, never less than is lacking. */
const margin = (mm: number) => (mm >= 0 ? `${thereIs(mm, 2)} to spare` : `${needed(-mm, 2)} too tight`);

const help = ({ fit }: PlannedAccessory, { pins, mostHoleMm }: Accessory) => {
  const slot = fit?.slot;
  if (!slot) return 'Larger holes, thinner pins or pins nearer together across the grain would help';
  const along = slot.axis === 'x' ? 'along' : 'across';
  const pin = pins[slot.index];
  return `A slot for one pin would do: ${along} the grain, ${needed(slot.lengthMm + mostHoleMm)} long overall, for the pin at x ${pin?.xMm}, y ${pin?.yMm}; or larger holes, or thinner pins`;
};

function sentence(one: PlannedAccessory, asked: Accessory, path: string): string {
  const { fit, holes, placeCount, name } = one;
  if (!fit) {
    return `${path}.pins (${name}): nowhere on the top has it a hole for each pin; set them at whole pitches, or drill the holes`;
  }
  const spare = margins(fit)
    .map(({ when, marginMm }) => `${when} ${margin(marginMm)}`)
    .join(', ');
  const first = `first with row ${holes?.[0]?.row}, column ${holes?.[0]?.column}`;
  const where = `${name}: ${placeCount} ${placeCount === 1 ? 'place' : 'places'} on the top, ${first} for its first pin`;
  return statusOf(one) === 'pass'
    ? `${where}. It goes in all year: ${spare}.`
    : `${path} (${where}): ${spare}. ${help(one, asked)}`;
}

/** Whether everything with pins finds its holes and goes in all year, with every error at its limit. */
export function checkAccessories({ plan, accessories }: Computed): Check | null {
  if (!accessories?.length) return null;
  const asked = plan.accessories ?? [];
  const statuses = accessories.map(statusOf);
  const fits = accessories.flatMap(({ name, fit }) =>
    fit ? margins(fit).map((one) => ({ name, ...one })) : [],
  );
  const tightest = least(fits, ({ marginMm }) => marginMm);
  const everywhere = accessories.every(({ fit }) => fit);
  return {
    id: 'accessories',
    title: 'What stands in the holes goes in all year',
    status: statuses.includes('fail') ? 'fail' : statuses.includes('warn') ? 'warn' : 'pass',
    says: accessories.map((one, i) => sentence(one, asked[i] as Accessory, `accessories[${i}]`)).join('\n'),
    figures: [
      ...accessories.map(({ name, placeCount }) => figure(`${name}, places`, placeCount, '1')),
      ...fits.map(({ name, when, marginMm }) => figure(`${name}, ${when}`, marginMm, 'mm')),
    ],
    ...(everywhere && tightest ? { margin: { given: tightest.marginMm, min: 0, unit: 'mm' } as const } : {}),
    rules: ['movement/width-change'],
  };
}
