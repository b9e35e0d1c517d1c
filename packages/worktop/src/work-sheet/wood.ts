import { bothUnits, millimetres, needed, thereIs } from '../lengths.ts';
import { cutsOf } from '../lists/cuts.ts';
import type { ShoppingPlan } from '../lists/shopping-plan.ts';
import type { WorktopPlan } from '../result.ts';
import { clampedPanels, flattening, machines } from './cautions.ts';
import { setting, type WorkStep } from './model.ts';

const noGlueUp = (what: string) => `${what}; the plan does not say how the top is glued up (glueUp).`;

function cutTasks({ boards }: ShoppingPlan): string[] {
  if (!boards) return [];
  const { count, lengthMm, widthMm } = boards.needed;
  if (!boards.offer) return [`Cut ${count} boards, rough ${needed(lengthMm)} × ${needed(widthMm)}.`];
  const { buy, missingCount } = boards.offer;
  return [
    ...buy.map(({ boardId, blank, parts }) => {
      const cuts = cutsOf(blank);
      return `Cut ${parts.length} from ${boardId}: trim it; ${cuts.join('; ') || 'it has its size'}.`;
    }),
    ...(missingCount ? [`Find and cut ${missingCount} more: the boards on offer do not give them.`] : []),
  ];
}

export function millStep({ plan, glueUp }: WorktopPlan, shopping: ShoppingPlan): WorkStep {
  const { top, stock } = plan;
  const moist = `Leave the wood in the shop until the meter shows about ${top.moisturePct} %.`;
  const step = { stage: 'mill', title: 'Mill the boards', cautions: [machines] } as const;
  const moisture = setting('moisture content', `${top.moisturePct} %`);
  if (!glueUp) {
    const decisions = [noGlueUp('boards and allowances')];
    return { ...step, settings: [moisture], tasks: [moist], decisions };
  }
  const trims = stock
    ? [
        setting('off each end first', millimetres(stock.boardEndTrimMm)),
        setting('off each edge first', millimetres(stock.boardEdgeTrimMm)),
      ]
    : [];
  return {
    ...step,
    settings: [
      setting('boards', String(glueUp.boardCount)),
      setting(
        'rough, each at least',
        `${needed(glueUp.roughLengthMm)} × ${needed(glueUp.roughWidthMm)} × ${needed(glueUp.roughThicknessMm)}`,
      ),
      ...trims,
      setting('plane to', needed(glueUp.gluedThicknessMm)),
      setting('joint to a width of', needed(glueUp.jointedWidthMm)),
      moisture,
    ],
    tasks: [
      moist,
      ...cutTasks(shopping),
      `Flatten a face, square an edge, and plane every board to ${needed(glueUp.gluedThicknessMm)}.`,
      `Joint both edges to a width of ${needed(glueUp.jointedWidthMm)}; hold pairs to the light.`,
    ],
    decisions: [],
  };
}

export function glueStep({ plan, glueUp }: WorktopPlan): WorkStep {
  const step = { stage: 'glue', title: 'Glue up the panel', cautions: [clampedPanels] } as const;
  if (!glueUp || !plan.glueUp) {
    const decisions = [noGlueUp('glue, clamps and the order of the boards')];
    return { ...step, settings: [], tasks: [], decisions };
  }
  const { glue, clampForceN } = plan.glueUp;
  const { clamping, boards } = glueUp;
  if (!clamping) return { ...step, settings: [], tasks: ['One board: nothing to glue.'], decisions: [] };
  return {
    ...step,
    settings: [
      setting('glue', `${Math.ceil(glueUp.glueMassG)} g of ${glue.name}`),
      setting('wood for this glue', `${glue.leastMoisturePct} to ${glue.mostMoisturePct} % moist`),
      setting('clamps', `${clamping.clampCount} of ${(clampForceN / 1000).toFixed(1)} kN`),
      setting('first clamp from the end', thereIs(clamping.spacingMm / 2)),
      setting('from clamp to clamp', thereIs(clamping.spacingMm)),
    ],
    tasks: [
      `Lay the boards, hearts from the front: ${boards.map(({ heart }) => heart).join(', ')}. Number them.`,
      'Clamp them dry: every joint closed, the panel flat. Measure the moisture of each board.',
      `Spread ${glue.name} as its sheet says, clamp above and below by turns, ${glue.pressureMPa} MPa on the joints.`,
      'Check that it is flat and straight; take off what is squeezed out before it is hard.',
      'Leave it clamped, and then unworked, as long as the sheet says.',
    ],
    decisions: [],
  };
}

export function flattenStep({ plan: { top, glueUp } }: WorktopPlan): WorkStep {
  return {
    stage: 'flatten',
    title: 'Flatten, and trim to size',
    settings: [
      setting('length, along the grain', bothUnits(top.lengthMm)),
      setting('width, across the grain', bothUnits(top.widthMm)),
      setting('thickness', bothUnits(top.thicknessMm)),
      ...(glueUp
        ? [
            setting('off both faces together', millimetres(glueUp.flatteningMm)),
            setting('off both edges together', millimetres(glueUp.trimWidthMm)),
            setting('off both ends together', millimetres(glueUp.trimLengthMm)),
          ]
        : []),
    ],
    tasks: [
      `Flatten one face, then the other, to ${millimetres(top.thicknessMm)}; measure at all corners and in the middle.`,
      `Trim to ${millimetres(top.lengthMm)} × ${millimetres(top.widthMm)}; both diagonals measure ${millimetres(Math.hypot(top.lengthMm, top.widthMm))}.`,
      'Mark the front-left corner of the face: everything is measured from there.',
    ],
    decisions: [],
    cautions: [flattening, machines],
  };
}
