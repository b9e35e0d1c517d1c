import { bothUnits, byTheFace, fittingSize, inches, millimetres, needed, thereIs } from '../lengths.ts';
import type { WorktopPlan } from '../result.ts';
import { lifting, mains, metal, routing } from './cautions.ts';
import { setting, type WorkStep } from './model.ts';

const fittingInBoth = (mm: number) => `${fittingSize(mm)} (${inches(mm)})`;

/** `null` where nothing is let in. */
export function rabbetStep({ plan, strip }: WorktopPlan): WorkStep | null {
  const others = plan.top.inlays.filter(({ name }) => name !== strip?.name);
  if (!strip && others.length === 0) return null;
  const stripSettings = strip
    ? [
        setting('width', fittingInBoth(strip.rabbet.acrossMm)),
        setting('depth', fittingInBoth(strip.rabbet.depthMm)),
        setting(
          'along the grain',
          `${millimetres(strip.rabbet.xMm)} to ${millimetres(strip.rabbet.xMm + strip.rabbet.lengthMm)}`,
        ),
        setting(
          'from the front',
          `${millimetres(strip.rabbet.yMm)} to ${millimetres(strip.rabbet.yMm + strip.rabbet.widthMm)}`,
        ),
        setting('strip in the rabbet', byTheFace(strip.belowFaceMm)),
      ]
    : [];
  return {
    stage: 'rabbet',
    title: strip ? `Cut the rabbet for ${strip.name}` : 'Let in what is let in',
    settings: stripSettings,
    tasks: [
      ...(strip
        ? [
            'Set width and depth on an offcut, and try the strip in it.',
            `Cut the strip to ${millimetres(strip.lengthMm)}.`,
            `Cut the rabbet; lay the strip in dry: ${byTheFace(strip.belowFaceMm)} all along.`,
            ...stripTasks(strip),
          ]
        : []),
    ],
    decisions: others.map(
      ({ name, xMm, yMm, lengthMm, widthMm }) =>
        `${name}, x ${millimetres(xMm)}, y ${millimetres(yMm)}, ${millimetres(lengthMm)} × ${millimetres(widthMm)}: how deep it is let in; the plan does not say.`,
    ),
    cautions: [routing, ...(strip ? [metal] : [])],
  };
}

function stripTasks({ screws, head }: NonNullable<WorktopPlan['strip']>): string[] {
  const holes = screws.map(({ atMm, slot }) =>
    slot ? `${millimetres(atMm)} (slot of ${needed(slot.lengthMm)})` : millimetres(atMm),
  );
  const sunk = head.inWoodMm > 0 ? `, and the wood beneath ${needed(head.inWoodMm)} deep` : '';
  return [
    `Drill the strip, from its start: ${holes.join(', ')}. Countersink ⌀ ${millimetres(head.countersinkDiameterMm)}, ${head.coneAngleDeg.toFixed(0)}°${sunk}.`,
    'Mark the screws through the strip and bore for them; lift the strip out again.',
  ];
}

function slotTask({ name, slotMm, screwFromInnerEndMm: room, ...fixing }: WorktopPlan['fixings'][number]) {
  const place = room
    ? `screw ${needed(room.leastMm)} to ${thereIs(room.mostMm)} from the end nearer the fixed line`
    : 'screw in the middle';
  return `${name}, x ${millimetres(fixing.xMm)}, y ${millimetres(fixing.yMm)}: slot of ${thereIs(slotMm)} across the grain; ${place}.`;
}

type Sliding = NonNullable<WorktopPlan['plan']['base']['sliding']>[number];

function slideTask({ name, slideMm, widensTowards }: Sliding): string {
  if (Math.abs(slideMm) < 0.05) return `Leave ${name} where the plan file has it.`;
  const towards = slideMm < 0 ? 'away from' : 'to';
  return `Slide ${name} ${millimetres(Math.abs(slideMm))} ${towards} the ${widensTowards}, from where the plan file has it; this sheet and the drawing have it slid.`;
}

export function fixStep(result: WorktopPlan): WorkStep {
  const { plan, fixings, screws, strip, lift, cables, accessories } = result;
  const { base } = plan;
  return {
    stage: 'fix',
    title: strip ? 'Fix the strip and the base' : 'Fix the base',
    settings: [
      setting('the top is held from the front', bothUnits(base.fixedLineMm)),
      setting(
        'screws',
        screws
          ? `${fixings.length}, ⌀ ${millimetres(base.shankDiameterMm)} × ${millimetres(screws.lengthMm)}`
          : `${fixings.length}, ⌀ ${millimetres(base.shankDiameterMm)}`,
      ),
      ...(plan.screws
        ? [setting('washers, or heads', `⌀ ${millimetres(plan.screws.washerDiameterMm)}`)]
        : []),
      ...(strip
        ? [
            setting(
              'gaps at the ends of the strip',
              `${needed(strip.start.gapMm, 2)}, ${needed(strip.end.gapMm, 2)}`,
            ),
          ]
        : []),
      ...(lift ? [setting('goes up', `${lift.liftedKg.toFixed(1)} kg`)] : []),
    ],
    tasks: [
      ...(strip ? [`Lay in ${strip.name}, leave the gaps at its ends, and drive its screws.`] : []),
      ...(plan.stock?.bars ? ['Have the base ready: its parts stand in the cut list.'] : []),
      ...(base.sliding ?? []).map(slideTask),
      'Lay the top face down on something soft, the base on it, measured from the front-left corner.',
      ...fixings.map(slotTask),
      'Drive the screws on the fixed line first. All of them firm, not hard: the top has to travel.',
      'Turn it over, set it level, and load it step by step.',
      ...(cables
        ? [
            `Lead ${cables.cableCount} cables through, ${needed(cables.neededLengthMm)} long below the top, held on both sides; try the whole travel.`,
          ]
        : []),
      ...(accessories ?? []).map(({ name }) => `Try ${name} in its holes.`),
    ],
    decisions: screws
      ? []
      : [
          'the length of the screws, so that none comes through; the plan does not say what screws these are (screws).',
        ],
    cautions: [lifting, ...(cables ? [mains] : [])],
  };
}
