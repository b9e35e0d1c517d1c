import { dewPoint } from '@scantling/finishing';
import type { Drawing } from '../calculator/calculation.ts';
import { piece } from '../calculator/piece.ts';
import { along, axisBelow, axisLeft, roundSteps } from './axis.ts';
import { label } from './marks.ts';
import { SHEET_WIDTH, short, through } from './sheet.ts';

const LEFT = 48;
const RIGHT = SHEET_WIDTH - 12;
const TOP = 24;
const BOTTOM = 236;

export interface DrawnAir {
  readonly temperatureC: number;
  readonly relativeHumidityPct: number;
  readonly dewPointC: number;
  readonly surfaceC: number;
  readonly marginK: number;
  /** The dampest that the air may be. */
  readonly mostHumidityPct: number;
}

/** The dew point of air of one temperature over its humidity, and the surface that has to stay above it. */
export function drawDewPoint(drawn: DrawnAir): Drawing {
  const { temperatureC, relativeHumidityPct, dewPointC, surfaceC, marginK, mostHumidityPct } = drawn;
  const driest = Math.min(20, relativeHumidityPct, mostHumidityPct);
  const dewPointAt = (humidity: number) =>
    dewPoint({ temperatureC, relativeHumidityPct: Math.max(1, humidity) }).dewPointC;
  const values = [dewPointAt(driest), temperatureC, surfaceC, surfaceC - marginK];
  const [lowest, highest] = [Math.min(...values) - 1, Math.max(...values) + 2];
  const x = along(driest, 100, LEFT, RIGHT);
  const y = along(lowest, highest, BOTTOM, TOP);
  const curve = Array.from({ length: 41 }, (_, i) => driest + ((100 - driest) * i) / 40).map(
    (humidity) => [x(humidity), y(dewPointAt(humidity))] as const,
  );
  const across = (value: number) => `M${LEFT} ${short(y(value))}H${RIGHT}`;
  const ticks = (from: number, to: number, most: number, place: (value: number) => number) =>
    roundSteps(from, to, most).map((value) => ({ at: place(value), text: `${value}`.replace('-', '−') }));
  const [here, limit] = [x(relativeHumidityPct), x(mostHumidityPct)];
  return {
    title: `Dew point of air of ${temperatureC} °C from ${Math.round(driest)} to 100 % humidity: ${dewPointC.toFixed(1)} °C at ${relativeHumidityPct} %, the surface at ${surfaceC} °C`,
    box: [0, 0, SHEET_WIDTH, BOTTOM + 46],
    shapes: [
      axisBelow([LEFT, BOTTOM], RIGHT - LEFT, ticks(driest, 100, 5, x)),
      axisLeft([LEFT, BOTTOM], BOTTOM - TOP, RIGHT - LEFT, ticks(lowest, highest, 5, y)),
      label([RIGHT, BOTTOM + 40], 'relative humidity, %', 'end', 'remark'),
      label([4, 14], 'dew point, °C', 'start', 'remark'),
      piece('path', { class: 'curve', d: through(curve) }),
      piece('path', { class: 'outline', d: across(surfaceC) }),
      piece('path', { class: 'then', d: across(surfaceC - marginK) }),
      label([LEFT + 8, y(surfaceC) - 6], `surface ${surfaceC} °C`, 'start'),
      label([LEFT + 8, y(surfaceC - marginK) + 16], `less ${marginK} K`, 'start'),
      piece('path', { class: 'centre', d: `M${short(limit)} ${short(y(surfaceC - marginK))}V${BOTTOM}` }),
      label([limit - 6, BOTTOM - 8], `at most ${Math.floor(mostHumidityPct)} %`, 'end'),
      piece('circle', { class: 'metal', cx: short(here), cy: short(y(dewPointC)), r: 5 }),
      label([here + 9, y(dewPointC) + 18], `now ${dewPointC.toFixed(1)} °C`, 'start'),
    ],
  };
}
