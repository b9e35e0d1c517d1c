import { clock } from '../clock.ts';
import type { WorktopPlan } from '../result.ts';
import { rags, sanding, solvents } from './cautions.ts';
import { setting, type WorkStep } from './model.ts';

/** The plan says nothing of abrasives, so that grades are left to decide. */
export const sandStep = (): WorkStep => ({
  stage: 'sand',
  title: 'Sand',
  settings: [],
  tasks: [
    'Sand both faces and the edges grade by grade, along the grain; take the dust off between grades.',
    'Break the edges, and the rims of the holes, lightly and all alike.',
    'Look across the wood against the light for scratches of the grade before.',
  ],
  decisions: [
    'grades: the first takes out what the machines left, the last is the one that the finish’s sheet asks for, none between is much finer than the one before.',
  ],
  cautions: [sanding],
});

function mixOf({ plan, finish }: WorktopPlan): string {
  const { product, thinner } = plan.finish;
  const { mixMl, productMl, thinnerMl } = finish.eachCoat;
  return thinner
    ? `${Math.ceil(productMl)} mL of ${product.name} and ${Math.ceil(thinnerMl)} mL of ${thinner.name}`
    : `${Math.ceil(mixMl)} mL of ${product.name}`;
}

function coatTasks({ plan, calendar }: WorktopPlan): string[] {
  const faces = (face: string) => (face === 'top' ? 'top and edges' : 'underside');
  if (!calendar) {
    return Array.from({ length: plan.finish.coats }, (_, i) =>
      ['underside', 'top'].map((face) => `Coat ${i + 1}, ${faces(face)}.`),
    ).flat();
  }
  return calendar.steps.map(({ does, face, position, dayIndex, clockHours, sandFirst }) => {
    const when = `Day ${dayIndex}, ${clock(clockHours)}:`;
    if (does === 'turn') return `${when} turn it, ${face} up, onto blocks that touch no hole.`;
    return `${when} ${sandFirst ? 'sand, then ' : ''}coat ${position}, ${faces(face)}.`;
  });
}

export function finishStep(result: WorktopPlan): WorkStep {
  const { plan, finish, shop, calendar, strip } = result;
  return {
    stage: 'finish',
    title: 'Finish',
    settings: [
      setting('coats', `${plan.finish.coats} on ${finish.areaM2.toFixed(2)} m²`),
      setting('mix for one coat', mixOf(result)),
      setting('wet film', `${finish.eachCoat.wetFilmUm.toFixed(0)} µm, ${plan.finish.dryFilmUm} µm dry`),
      ...(shop && plan.shop
        ? [
            setting('surface no colder than', `${shop.leastSurfaceC.toFixed(1)} °C`),
            setting(
              'air',
              `${plan.shop.leastTemperatureC} to ${plan.shop.mostTemperatureC} °C, ${plan.shop.leastHumidityPct} to ${plan.shop.mostHumidityPct} %`,
            ),
            setting('wood no wetter than', `${plan.shop.mostMoisturePct} %`),
          ]
        : []),
      ...(calendar ? [setting('may be used on', `day ${calendar.readyDayIndex}`)] : []),
    ],
    tasks: [
      'Measure air, surface and wood; wait if they are not as the sheet asks.',
      ...(strip ? ['Keep the finish out of the rabbet.'] : []),
      ...coatTasks(result),
      'After each coat: wipe the walls of the holes nearly dry, take off drips below.',
    ],
    decisions: calendar
      ? []
      : [
          'the hours of drying and recoating, from the product’s sheet; the plan does not give them (calendar).',
        ],
    cautions: [rags, solvents],
  };
}
