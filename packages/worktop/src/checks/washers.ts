import { needed, thereIs } from '../lengths.ts';
import type { Check, Computed, PlannedFixing } from '../result.ts';
import { figure, least } from './check.ts';

/** A washer, or a head, has to be wider than what it lies over: the width of a slot, or a round hole. */
export function checkWashers({ plan, fixings }: Computed): Check | null {
  if (!plan.screws) return null;
  const { washerDiameterMm } = plan.screws;
  const { shankDiameterMm, slotClearanceMm } = plan.base;
  const roundMm = shankDiameterMm + 2 * slotClearanceMm;
  const openingMm = ({ slotMm }: PlannedFixing) => (slotMm <= roundMm + 1e-9 ? slotMm : shankDiameterMm);
  const widest = least(fixings, (fixing) => -openingMm(fixing));
  const through = fixings.filter((fixing) => !(washerDiameterMm > openingMm(fixing)));
  const covering = least(fixings, (fixing) => -fixing.coveringWasherMm);
  const covers =
    covering && covering.coveringWasherMm > washerDiameterMm
      ? `To cover every slot all year a washer would have to be ${needed(covering.coveringWasherMm)} wide.`
      : 'They cover every slot all year.';
  return {
    id: 'washers',
    title: 'Washers bear on the base',
    status: through.length ? 'fail' : 'pass',
    says: through.length
      ? through
          .map(
            (fixing) =>
              `screws.washerDiameter is ${thereIs(washerDiameterMm)}; at ${fixing.name} the opening in the base is ${needed(openingMm(fixing))} wide, and the washer passes through it`,
          )
          .join('\n')
      : `Washers are ${thereIs(washerDiameterMm)} wide, openings in the base ${widest ? needed(openingMm(widest)) : 'none'}. ${covers}`,
    figures: [
      figure('washer', washerDiameterMm, 'mm'),
      ...(widest ? [figure('widest opening', openingMm(widest), 'mm')] : []),
      ...(covering ? [figure('washer that would cover every slot', covering.coveringWasherMm, 'mm')] : []),
    ],
    ...(widest ? { margin: { given: washerDiameterMm, min: openingMm(widest), unit: 'mm' } as const } : {}),
    rules: ['fastening/washer-over-slot'],
  };
}
