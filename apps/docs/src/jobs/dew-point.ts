import { dewPoint } from '@scantling/finishing';
import { equilibriumMoisture, humidityAfterHeating } from '@scantling/movement';
import { defineJob, type Outcome } from '../calculator/calculation.ts';
import { printResult } from '../calculator/numbers.ts';
import { drawDewPoint } from '../drawing/dew-point.ts';

const said = (value: number) => printResult(Math.round(value * 10) / 10, true);

/** No shop is dried further. */
const DRIEST_SHOP_PCT = 20;

export default defineJob({
  title: 'Dew point before you coat',
  summary:
    'Whether the surface is warm enough for a coat in this air, how damp the air may be, what warming the shop does to it, and where the wood is heading.',
  group: 'Finish',
  rules: ['finishing/dew-point', 'movement/humidity-after-heating', 'movement/equilibrium-moisture'],
  cautions: [
    'Warm work and air only while no solvent vapour is about, and never with an open flame or a heater without a flue.',
    'Follow the product’s own sheet: its limits for air, surface and wood come before these.',
  ],
  fields: {
    temperatureC: {
      kind: 'number',
      label: 'Temperature of the air',
      unit: '°C',
      min: -15,
      max: 35,
      help: 'Where the work stands.',
    },
    relativeHumidityPct: { kind: 'number', label: 'Relative humidity', unit: '%', min: 1, max: 100 },
    surfaceC: {
      kind: 'number',
      label: 'Temperature of the surface',
      unit: '°C',
      min: -15,
      max: 50,
      help: 'Measured on the work: metal and thick wood stay cold for hours after the room is warm.',
    },
    marginK: {
      kind: 'number',
      label: 'To stay above the dew point by',
      unit: 'K',
      min: 0,
      max: 15,
      help: '3 K (5.4 °F) is the usual rule; the product’s sheet may say more.',
    },
    warmByK: {
      kind: 'number',
      label: 'Warm the air by',
      unit: 'K',
      min: 0,
      max: 15,
      help: 'To see what heating does; 0 leaves it as it is.',
    },
  },
  first: {
    temperatureC: '20',
    relativeHumidityPct: '48',
    surfaceC: '19',
    marginK: '3',
    warmByK: '4',
  },
  compute({ temperatureC, relativeHumidityPct, surfaceC, marginK, warmByK }): Outcome {
    const air = { temperatureC, relativeHumidityPct };
    const { dewPointC } = dewPoint(air);
    const aboveK = surfaceC - dewPointC;
    const leastSurfaceC = dewPointC + marginK;
    const good = aboveK >= marginK;

    // Air whose dew point is as high as this surface allows, warmed to the air of the shop.
    const limit = {
      fromTemperatureC: surfaceC - marginK,
      relativeHumidityPct: 100,
      toTemperatureC: temperatureC,
    };
    const anyHumidity = limit.fromTemperatureC >= temperatureC;
    const mostHumidityPct = anyHumidity ? 100 : humidityAfterHeating(limit).relativeHumidityPct;

    const warming = {
      fromTemperatureC: temperatureC,
      relativeHumidityPct,
      toTemperatureC: temperatureC + warmByK,
    };
    const warmed = { temperatureC: warming.toTemperatureC, ...humidityAfterHeating(warming) };
    const [moisture, moistureWarmed] = [equilibriumMoisture(air), equilibriumMoisture(warmed)];

    const wet = aboveK <= 0;
    const verdict = good
      ? `Warm enough: the surface is ${said(aboveK)} K above the dew point.`
      : wet
        ? `The surface gets wet: it is ${said(-aboveK)} K below the dew point.`
        : `Too cold: the surface is only ${said(aboveK)} K above the dew point.`;
    const dry = mostHumidityPct < DRIEST_SHOP_PCT ? '' : `, or dry the air to ${said(mostHumidityPct)} %`;
    const mends = `Warm the surface itself to ${said(leastSurfaceC)} °C${dry}.`;

    return {
      verdict: { good, says: good ? verdict : `${verdict} ${mends}` },
      figures: [
        { name: 'dewPointC', label: 'Dew point of the air', value: dewPointC, unit: '°C' },
        { name: 'leastSurfaceC', label: 'Coldest that the surface may be', value: leastSurfaceC, unit: '°C' },
        {
          name: 'mostHumidityPct',
          label: 'Dampest that the air may be, over this surface',
          value: mostHumidityPct,
          unit: '%',
        },
        {
          name: 'warmedHumidityPct',
          label: `Humidity once the air is at ${said(warmed.temperatureC)} °C`,
          value: warmed.relativeHumidityPct,
          unit: '%',
        },
        {
          name: 'moisturePct',
          label: 'Moisture content that wood comes to in this air',
          value: moisture.moisturePct,
          unit: '%',
        },
      ],
      drawing: drawDewPoint({ ...air, dewPointC, surfaceC, marginK, mostHumidityPct }),
      tables: [
        {
          caption: 'The air now, and warmed',
          columns: [
            { label: 'Air' },
            { label: 'Temperature', unit: '°C' },
            { label: 'Humidity', unit: '%' },
            { label: 'Dew point', unit: '°C' },
            { label: 'Wood comes to', unit: '%' },
          ],
          rows: [
            ['now', temperatureC, relativeHumidityPct, dewPointC, moisture.moisturePct],
            [
              'warmed',
              warmed.temperatureC,
              warmed.relativeHumidityPct,
              dewPointC,
              moistureWarmed.moisturePct,
            ],
          ],
        },
      ],
      reasons: [
        'Warming dries the air but leaves its dew point where it is: the coat is safer only once the surface itself is warmer. Air that comes in, breath and wet finish with water in it raise it.',
        'Wood takes weeks to come to the air around it; its face follows within hours.',
      ],
      steps: [
        { what: 'Dew point', rule: 'finishing/dew-point', given: air, gives: { dewPointC } },
        ...(anyHumidity
          ? []
          : [
              {
                what: 'Dampest air for this surface: saturated at the surface less the margin, warmed to the shop',
                rule: 'movement/humidity-after-heating',
                given: limit,
                gives: { relativeHumidityPct: mostHumidityPct },
              },
            ]),
        {
          what: 'Humidity once the air is warmed',
          rule: 'movement/humidity-after-heating',
          given: warming,
          gives: { relativeHumidityPct: warmed.relativeHumidityPct },
        },
        {
          what: 'Moisture content that wood comes to',
          rule: 'movement/equilibrium-moisture',
          given: air,
          gives: moisture,
        },
        {
          what: 'and in the air once it is warmed',
          rule: 'movement/equilibrium-moisture',
          given: warmed,
          gives: moistureWarmed,
        },
      ],
    };
  },
});
