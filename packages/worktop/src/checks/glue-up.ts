import { clampForceNotes } from '@scantling/stock';
import { millimetres, needed, thereIs } from '../lengths.ts';
import type { PlannedGlueUp } from '../parts/glue-up.ts';
import type { Stock } from '../plan/stock.ts';
import type { Check, Computed, Margin } from '../result.ts';
import { figure, least } from './check.ts';

const sizeOf = ({ roughLengthMm, roughWidthMm, roughThicknessMm }: PlannedGlueUp) =>
  [roughLengthMm, roughWidthMm, roughThicknessMm].map((mm) => needed(mm)).join(' × ');

/** What is against the boards on offer: none is long, wide and thick enough at once. */
function offerFaults(glueUp: PlannedGlueUp, { boards, boardEndTrimMm, boardEdgeTrimMm }: Stock): string[] {
  const { roughLengthMm, roughWidthMm, roughThicknessMm } = glueUp;
  const left = boards.map(({ lengthMm, widthMm, thicknessMm }) => ({
    lengthMm: lengthMm - 2 * boardEndTrimMm,
    widthMm: widthMm - 2 * boardEdgeTrimMm,
    thicknessMm,
  }));
  const rough = { lengthMm: roughLengthMm, widthMm: roughWidthMm, thicknessMm: roughThicknessMm };
  const sides = [
    { side: 'lengthMm', most: 'longest', trimmed: ' when its ends are trimmed' },
    { side: 'widthMm', most: 'widest', trimmed: ' when its edges are trimmed' },
    { side: 'thicknessMm', most: 'thickest', trimmed: '' },
  ] as const;
  const gives = (board: (typeof left)[number]) =>
    sides.every(({ side }) => board[side] >= rough[side] - 1e-6);
  if (boards.length === 0 || left.some(gives)) return [];
  const size = sizeOf(glueUp);
  const short = sides.flatMap(({ side, most, trimmed }) => {
    const mostMm = Math.max(...left.map((board) => board[side]));
    return mostMm >= rough[side] - 1e-6 ? [] : [`the ${most} has ${thereIs(mostMm)}${trimmed}`];
  });
  const why = short.length ? short.join(', ') : 'none is long, wide and thick enough at once';
  return [`stock.boards: a rough board has to be ${size}; ${why}`];
}

/** Whether boards of the widths that the plan says, and of those on offer, make the top. */
export function checkBoards({ plan, glueUp }: Computed): Check | null {
  const asked = plan.glueUp;
  if (!glueUp || !asked) return null;
  const { boardCount, jointedWidthMm } = glueUp;
  const eachMm = (jointedWidthMm * boardCount) / asked.boardCount + asked.jointingMm;
  const few =
    asked.boardCount < boardCount
      ? [
          `glueUp.boardCount is ${asked.boardCount}, so that each has to be ${needed(eachMm)} wide; glueUp.mostWidth is ${thereIs(asked.mostWidthMm)}: take at least ${boardCount}`,
        ]
      : [];
  const faults = [...few, ...(plan.stock ? offerFaults(glueUp, plan.stock) : [])];
  const size = sizeOf(glueUp);
  return {
    id: 'boards',
    title: 'The boards on offer make the top',
    status: faults.length ? 'fail' : 'pass',
    says: faults.length
      ? faults.join('\n')
      : `${boardCount} ${boardCount === 1 ? 'board' : 'boards'}, rough ${size} at least, ${millimetres(asked.planingMm + asked.flatteningMm)} off the thickness and ${millimetres(asked.jointingMm)} off each width.`,
    figures: [
      figure('boards', boardCount, '1'),
      figure('rough length', glueUp.roughLengthMm, 'mm'),
      figure('rough width', glueUp.roughWidthMm, 'mm'),
      figure('rough thickness', glueUp.roughThicknessMm, 'mm'),
    ],
    ...(faults.length === few.length && {
      margin: { given: asked.mostWidthMm, min: eachMm, unit: 'mm' as const },
    }),
    rules: [],
  };
}

/** Whether wood and pressure are as the glue needs them. One board needs none. */
export function checkGluing({ plan, glueUp }: Computed): Check | null {
  const clamping = glueUp?.clamping;
  if (!glueUp || !clamping || !plan.glueUp) return null;
  const { glue } = plan.glueUp;
  const { moisturePct } = plan.top;
  const { leastMoisturePct: driest, mostMoisturePct: wettest } = glue;
  const fit = moisturePct >= driest && moisturePct <= wettest;
  const mend =
    moisturePct > wettest ? `let it dry to ${wettest} %` : `let it take up moisture to ${driest} %`;
  const notes = clampForceNotes({
    pressureMPa: glue.pressureMPa,
    lengthMm: glueUp.roughLengthMm,
    thicknessMm: glueUp.gluedThicknessMm,
  }).map(({ message }) => `glueUp.glue.pressureMPa: ${message}`);
  const { forceN, clampCount, spacingMm } = clamping;
  const work = `${Math.ceil(glueUp.glueMassG)} g of ${glue.name} on ${glueUp.glueLineM2.toFixed(2)} m² of joint; ${clampCount} ${clampCount === 1 ? 'clamp' : 'clamps'} of ${plan.glueUp.clampForceN} N, one each ${thereIs(spacingMm)}, together ${Math.ceil(forceN)} N.`;
  const wrong = `top.moisturePct is ${moisturePct}; glueUp.glue, ${glue.name}, is for wood of ${driest} to ${wettest} %: ${mend} before it is glued, or take a glue for such wood`;
  const lowest: Margin = { given: moisturePct, min: driest, unit: '%' };
  const highest: Margin = { given: moisturePct, max: wettest, unit: '%' };
  return {
    id: 'gluing',
    title: 'Wood and clamps are as the glue needs them',
    status: fit ? (notes.length ? 'warn' : 'pass') : 'fail',
    says: [...(fit ? [`${moisturePct} % moisture content suits the glue.`] : [wrong]), ...notes, work].join(
      '\n',
    ),
    figures: [
      figure('moisture content', moisturePct, '%'),
      figure('glue', glueUp.glueMassG, 'g'),
      figure('all clamps', forceN, 'N'),
      figure('clamps', clampCount, '1'),
      figure('from clamp to clamp', spacingMm, 'mm'),
    ],
    margin: moisturePct - driest < wettest - moisturePct ? lowest : highest,
    rules: ['stock/clamp-force', 'stock/clamp-count', 'stock/glue-mass'],
  };
}

/**
 * How the boards lie. That hearts by turns keep a panel of flatsawn boards flat, and that a board less than half as wide
 * as the others shows, is common practice, no source.
 */
export function checkPanel({ plan, glueUp, movement }: Computed): Check | null {
  if (!glueUp || !plan.glueUp) return null;
  const { boards, jointedWidthMm, densityKgPerM3, stages } = glueUp;
  const narrowest = least(boards, ({ widthMm }) => widthMm);
  const narrowestMm = narrowest?.widthMm ?? 0;
  const sliver = boards.length > 1 && !(narrowestMm >= jointedWidthMm / 2 - 1e-6);
  const bowing = boards.length > 1 && plan.top.cut === 'flatsawn' && plan.glueUp.order === 'match';
  const wrong = [
    ...(sliver
      ? [
          `glueUp.trimWidth is ${thereIs(plan.glueUp.trimWidthMm)} and leaves ${thereIs(narrowestMm)} of the outer boards, less than half of ${needed(jointedWidthMm)}: trim less, or rip the outer boards wider`,
        ]
      : []),
    ...(bowing
      ? [
          'glueUp.order: all hearts look up, and flatsawn boards then bow the panel as one: alternate them, or let the base hold it flat',
        ]
      : []),
  ];
  const hearts = boards.map(({ heart }) => heart).join(', ');
  const massKg = stages.at(-1)?.massKg ?? null;
  const weight =
    massKg === null || densityKgPerM3 === null
      ? `No table gives the density of ${movement.species}: weigh a board.`
      : `At ${densityKgPerM3.toFixed(0)} kg/m³ it weighs ${massKg.toFixed(1)} kg when it is trimmed, before holes and rabbets.`;
  return {
    id: 'panel',
    title: 'The boards lie well in the panel',
    status: wrong.length ? 'warn' : 'pass',
    says: [...(wrong.length ? wrong : [`Hearts from the front: ${hearts}.`]), weight].join('\n'),
    figures: [
      figure('narrowest board', narrowestMm, 'mm'),
      ...(massKg === null ? [] : [figure('trimmed top', massKg, 'kg')]),
    ],
    ...(boards.length > 1 && !bowing
      ? { margin: { given: narrowestMm, min: jointedWidthMm / 2, unit: 'mm' } as const }
      : {}),
    rules: ['movement/specific-gravity-at-moisture', 'movement/wood-density'],
  };
}
