import { clock } from '../clock.ts';
import type { WorktopPlan } from '../result.ts';
import { columns, section } from './text.ts';

export function finishSection({ finish, plan: { finish: asked } }: WorktopPlan): string {
  const { areaM2, faces, mixSolidsPct, spreadingRateM2PerL, volumeMl, eachCoat, mix } = finish;
  return section('Finish', [
    `${areaM2.toFixed(2)} m²: ${faces.map((face) => `${face.name} ${face.areaM2.toFixed(2)}`).join(', ')}`,
    `${asked.coats} coats of ${asked.dryFilmUm} µm dry film, ${asked.lossPct} % lost: ${Math.ceil(volumeMl)} mL`,
    `each coat ${eachCoat.wetFilmUm.toFixed(0)} µm wet: ${Math.ceil(eachCoat.mixMl)} mL${asked.thinner ? `, ${Math.ceil(eachCoat.productMl)} mL of ${asked.product.name} and ${Math.ceil(eachCoat.thinnerMl)} mL of ${asked.thinner.name}` : ''}`,
    `the mix has ${mixSolidsPct.toFixed(1)} % solids and spreads ${spreadingRateM2PerL.toFixed(1)} m²/L`,
    ...columns(
      mix.map((liquid) => [
        `${Math.ceil(liquid.volumeMl)} mL`,
        liquid.name,
        `(${liquid.onHandMl} mL on hand)`,
      ]),
    ),
  ]);
}

/** `null` where the plan says nothing of the shop. */
export function shopSection({ shop }: WorktopPlan): string | null {
  if (!shop) return null;
  const { dewPointC, aboveDewPointK, leastSurfaceC, mostHumidityPct, findings } = shop;
  return section('Shop on the day of finishing', [
    `dew point ${dewPointC.toFixed(1)} °C; the surface is ${aboveDewPointK.toFixed(1)} K above it`,
    `the surface may be no colder than ${leastSurfaceC.toFixed(1)} °C, the air no damper than ${mostHumidityPct.toFixed(0)} %`,
    ...findings.map(({ says, mend }) => (mend ? `${says} ${mend}` : says)),
  ]);
}

/** `null` where no hours are given. */
export function calendarSection({ calendar }: WorktopPlan): string | null {
  if (!calendar) return null;
  const rows = calendar.steps.map(({ does, face, position, dayIndex, clockHours, sandFirst }) => [
    `day ${dayIndex}`,
    clock(clockHours).padStart(5),
    does === 'turn' ? `turn, ${face} up` : `coat ${position}, ${face === 'top' ? 'top and edges' : face}`,
    sandFirst ? 'sand first' : '',
  ]);
  return section('Calendar of coats', [
    ...columns(rows),
    `The top may be used on day ${calendar.readyDayIndex}.`,
  ]);
}
