import { bothUnits, dimensionText, millimetres, needed, thereIs } from '../lengths.ts';
import { holeName } from '../report/holes.ts';
import type { WorktopPlan } from '../result.ts';
import { drilling, metal } from './cautions.ts';
import { setting, type WorkStep } from './model.ts';

/** Where the lines of a grid lie, each from the datum and none from its neighbour. */
const lines = (firstMm: number, pitchMm: number, count: number) =>
  Array.from({ length: count }, (_, i) => dimensionText(firstMm + i * pitchMm)).join(', ');

const leftOut = ({ blockedHoles }: WorktopPlan) =>
  blockedHoles.length ? [`Left out: ${blockedHoles.map(holeName).join('; ')}. Strike them out.`] : [];

export function markStep(result: WorktopPlan): WorkStep {
  const { holes: grid, template, cables } = result.plan;
  const byHand = [
    `Columns, mm from the left end: ${lines(grid.first.xMm, grid.pitchXMm, grid.columns)}.`,
    `Rows, mm from the front edge: ${lines(grid.first.yMm, grid.pitchYMm, grid.rows)}.`,
    'Measure each line from the corner, not from the one before; prick every crossing.',
  ];
  return {
    stage: 'mark',
    title: 'Mark the holes',
    settings: [
      setting('first hole from the left end', bothUnits(grid.first.xMm)),
      setting('first hole from the front', bothUnits(grid.first.yMm)),
      setting('pitch along the grain', bothUnits(grid.pitchXMm)),
      setting('pitch across the grain', bothUnits(grid.pitchYMm)),
    ],
    tasks: [
      ...(template
        ? [
            `Mark the first hole; the template of ${template.columns} × ${template.rows} holes finds the others.`,
          ]
        : byHand),
      ...leftOut(result),
      ...(cables
        ? [
            `Hole for cables: x ${millimetres(cables.xMm)}, y ${millimetres(cables.yMm)}, ⌀ ${millimetres(cables.holeDiameterMm)}.`,
          ]
        : []),
      `Turn it over to the back and mark the screws on the underside, x and y: ${result.fixings.map(({ name, xMm, yMm }) => `${name} ${dimensionText(xMm)}, ${dimensionText(yMm)}`).join('; ')}.`,
    ],
    decisions: [],
    cautions: [],
  };
}

const templateTasks = ({ template }: WorktopPlan) =>
  (template?.steps ?? []).map(({ column, row, pins, drilled }) => {
    const place = pins.length
      ? `pins in ${pins.map(holeName).join(' and ')}`
      : 'against the front and the left edge';
    return `Template to ${holeName({ column, row })}, ${place}: drill ${drilled.length}.`;
  });

export function drillStep(result: WorktopPlan): WorkStep {
  const { plan, holes, screws, template } = result;
  const settings = screws?.settings ?? [];
  const many = settings.length > 1;
  return {
    stage: 'drill',
    title: 'Drill the holes',
    settings: [
      setting('holes', `${holes.length}, ⌀ ${bothUnits(plan.holes.diameterMm)}`),
      setting('through', millimetres(plan.top.thicknessMm)),
      ...(plan.drilling
        ? [
            setting('feed', `${plan.drilling.feedMmPerMin} mm/min`),
            setting('speed', `${plan.drilling.speedRpm} r/min`),
            setting('into the backing board', millimetres(plan.drilling.belowUndersideMm)),
          ]
        : []),
      ...(screws
        ? [setting('screws from below', `${screws.at.length} of ${millimetres(screws.lengthMm)}`)]
        : []),
    ],
    tasks: [
      'Drill an offcut of the same wood first: measure the hole, try what stands in it.',
      ...(template ? templateTasks(result) : [`Drill all ${holes.length} holes, square to the face.`]),
      ...(plan.cables
        ? [`Bore the hole for cables, ⌀ ${needed(plan.cables.holeDiameterMm)}; round its rims.`]
        : []),
      ...settings.flatMap(({ topThicknessMm, fixings, reasons, steps }) => [
        many
          ? `From below, for the screws ${fixings.join(', ')}, in ${thereIs(topThicknessMm)} of wood:`
          : `From below, for each of the ${fixings.length} screws:`,
        ...reasons,
        ...steps.filter(({ operation }) => operation !== 'drive').map(({ says }) => says),
      ]),
    ],
    decisions: screws
      ? []
      : ['how deep the screws are bored for, and the stops; the plan does not say (screws).'],
    cautions: [drilling, ...(template ? [metal] : [])],
  };
}
