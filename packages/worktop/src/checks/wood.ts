import { equilibriumMoistureNotes, widthChangeNotes } from '@scantling/movement';
import { findWoodInBrief } from '@scantling/species';
import type { Check, Computed } from '../result.ts';
import { figure } from './check.ts';

/**
 * Lumber counts as quartersawn from 45° between rings and face on (Wood Handbook, FPL-GTR-190, glossary; from memory),
 * where it moves midway between the two coefficients.
 */
function turnedRings({ top }: Computed['plan']): string[] {
  const { radialPerPct, tangentialPerPct } = findWoodInBrief(top.species).species?.movement ?? {};
  if (top.cut !== 'quartersawn' || !radialPerPct || !tangentialPerPct) return [];
  const midway = (radialPerPct.value + tangentialPerPct.value) / 2;
  return [
    `That is for rings square to the face. Lumber is sold as quartersawn from 45° on, where it moves by ${Number(midway.toPrecision(3))}: look at the end grain.`,
  ];
}

/** How well the figure that everything else rests on is known. */
export function checkSpecies({ plan, movement }: Computed): Check {
  const { species, coefficientPerPct, citation } = movement;
  const { source, at, confirmed, erratum } = citation;
  const seen = confirmed === 'text' ? 'seen in the text' : 'quoted from memory';
  return {
    id: 'species',
    title: 'How this wood moves is known',
    status: confirmed === 'text' && !erratum ? 'pass' : 'warn',
    says: [
      `${species}, ${plan.top.cut}: ${coefficientPerPct} of its width for each 1 % of moisture content. ${source.title} (${source.identifier}), ${at}; ${seen}.`,
      ...turnedRings(plan),
      ...(erratum ? [erratum] : []),
    ].join('\n'),
    figures: [figure('coefficient', coefficientPerPct, '1/%')],
    rules: ['movement/width-change'],
  };
}

/** Whether the wood is in balance with the room, and whether the sources speak of such air and such wood. */
export function checkMoisture({ plan, movement }: Computed): Check {
  const { top, seasons } = plan;
  const today = top.moisturePct;
  const { driestMoisturePct: driest, wettestMoisturePct: wettest, coefficientPerPct } = movement;
  const notes = [
    ...[seasons.driest, seasons.wettest].flatMap(equilibriumMoistureNotes),
    ...[driest, wettest].flatMap((toMoisturePct) =>
      widthChangeNotes({
        widthMm: top.widthMm,
        coefficientPerPct,
        fromMoisturePct: today,
        toMoisturePct,
      }),
    ),
  ];
  const inside = today >= driest && today <= wettest;
  const says = inside
    ? `On building day ${today} %, through the year ${driest.toFixed(1)} to ${wettest.toFixed(1)} %.`
    : `top.moisturePct is ${today}; in this air the wood stays between ${driest.toFixed(1)} and ${wettest.toFixed(1)} %. Let it settle in the room first.`;
  return {
    id: 'moisture',
    title: 'Wood is as dry as the room',
    status: inside && notes.length === 0 ? 'pass' : 'warn',
    says: [says, ...new Set(notes.map(({ message }) => message))].join('\n'),
    figures: [
      figure('building day', today, '%'),
      figure('driest', driest, '%'),
      figure('wettest', wettest, '%'),
      figure('change at the driest', movement.driestChangeMm, 'mm'),
      figure('change at the wettest', movement.wettestChangeMm, 'mm'),
    ],
    rules: ['movement/equilibrium-moisture', 'movement/width-change'],
  };
}
