import { equilibriumMoisture, widthChange } from '@scantling/movement';
import { requireThat } from '@scantling/rules';
import { defineJob, type Outcome } from '../calculator/calculation.ts';
import { drawYear } from '../drawing/year.ts';
import { monthNames, throughTheYear } from '../year.ts';

export default defineJob({
  title: 'A panel through the year',
  summary:
    'How much a solid panel shrinks and swells from the day it is made to the driest and the wettest month, and the room that its edges need.',
  group: 'Wood and seasons',
  rules: ['movement/equilibrium-moisture', 'movement/width-change'],
  fields: {
    coefficientPerPct: {
      kind: 'number',
      label: 'Change coefficient',
      unit: '1/%',
      min: 0,
      max: 0.02,
      help: 'Of the wood and the cut: share of the width per 1 % of moisture content.',
    },
    widthMm: { kind: 'number', label: 'Width across the grain', unit: 'mm', min: 1, max: 10_000 },
    moisturePct: {
      kind: 'number',
      label: 'Moisture content at make-up',
      unit: '%',
      min: 0,
      max: 30,
      help: 'As a moisture meter reads it.',
    },
    held: {
      kind: 'choice',
      label: 'The panel is held',
      options: { middle: 'in the middle', edge: 'at one edge' },
    },
    readings: {
      kind: 'rows',
      label: 'Air of the room through the year',
      row: 'Month',
      help: 'Averages of as many months as you know, the driest and the wettest among them: heated rooms are driest in late winter.',
      minRows: 2,
      maxRows: 12,
      fields: {
        month: { kind: 'choice', label: 'Month', options: monthNames },
        temperatureC: { kind: 'number', label: 'Temperature', unit: '°C', min: -20, max: 50 },
        relativeHumidityPct: { kind: 'number', label: 'Humidity', unit: '%', min: 0, max: 98 },
      },
    },
  },
  first: {
    coefficientPerPct: '0.00353',
    widthMm: '640',
    moisturePct: '8',
    held: 'middle',
    readings: [
      { month: '2', temperatureC: '21', relativeHumidityPct: '32' },
      { month: '5', temperatureC: '20', relativeHumidityPct: '46' },
      { month: '8', temperatureC: '24', relativeHumidityPct: '62' },
      { month: '11', temperatureC: '20', relativeHumidityPct: '43' },
    ],
  },
  compute({ coefficientPerPct, widthMm, moisturePct, held, readings }, say): Outcome {
    const known = readings
      .map(({ month, ...air }) => ({
        month: Number(month) - 1,
        name: monthNames[month],
        air,
        ...equilibriumMoisture(air),
      }))
      .sort((a, b) => a.month - b.month);
    for (const [i, { month, name }] of known.entries()) {
      requireThat('year', month !== known[i - 1]?.month, `one reading for each month, got two for ${name}`);
    }
    const byMoisture = [...known].sort((a, b) => a.moisturePct - b.moisturePct) as [
      (typeof known)[0],
      ...typeof known,
    ];
    const [driest, wettest] = [byMoisture[0], byMoisture.at(-1) as (typeof known)[0]];
    const changeAt = (toMoisturePct: number) => ({
      widthMm,
      coefficientPerPct,
      fromMoisturePct: moisturePct,
      toMoisturePct,
    });
    const driestChangeMm = widthChange(changeAt(driest.moisturePct)).changeMm;
    const wettestChangeMm = widthChange(changeAt(wettest.moisturePct)).changeMm;
    // Building day is a day of the year too: a panel made wetter than any month does not swell.
    const swellMm = Math.max(0, wettestChangeMm);
    const shrinkMm = Math.max(0, -driestChangeMm);
    const outside =
      moisturePct < driest.moisturePct ? 'drier' : moisturePct > wettest.moisturePct && 'wetter';

    const share = held === 'middle' ? 0.5 : 1;
    const roomMm = swellMm * share;
    const edge = held === 'middle' ? 'each edge' : 'the free edge';
    const monthsPct = throughTheYear(known);

    return {
      figures: [
        {
          name: 'driestChangeMm',
          label: `Change by the driest, ${driest.name}`,
          value: driestChangeMm,
          unit: 'mm',
        },
        {
          name: 'wettestChangeMm',
          label: `Change by the wettest, ${wettest.name}`,
          value: wettestChangeMm,
          unit: 'mm',
        },
        {
          name: 'totalMm',
          label: 'From the driest to the wettest',
          value: wettestChangeMm - driestChangeMm,
          unit: 'mm',
        },
        { name: 'roomMm', label: `Room to leave at ${edge} at make-up`, value: roomMm, unit: 'mm' },
        {
          name: 'openMm',
          label: 'to which it opens when driest',
          value: roomMm + shrinkMm * share,
          unit: 'mm',
        },
      ],
      drawing: drawYear({
        monthsPct,
        readMonths: known.map(({ month }) => month),
        moisturePct,
        driestPct: driest.moisturePct,
        wettestPct: wettest.moisturePct,
        driestChange: say(driestChangeMm),
        wettestChange: say(wettestChangeMm),
        width: say(widthMm),
      }),
      tables: [
        {
          caption: 'Month by month',
          columns: [
            { label: 'Month' },
            { label: 'Air' },
            { label: 'Wood comes to', unit: '%' },
            { label: 'Change', unit: 'mm' },
            { label: 'Width', unit: 'mm' },
          ],
          rows: monthsPct.map((pct, month) => {
            const { changeMm } = widthChange(changeAt(pct));
            const air = known.find((one) => one.month === month)?.air;
            const read = air ? `${air.temperatureC} °C, ${air.relativeHumidityPct} %` : 'between';
            return [monthNames[`${month + 1}`] ?? null, read, pct, changeMm, widthMm + changeMm];
          }),
        },
      ],
      reasons: [
        'The figures are those of the months that were read; between them the table and the chart go in straight lines.',
        'Wood follows the air slowly: a thick or finished panel turns back before it gets there and moves less than this.',
        'The room has nothing to spare: add what the panel may be out of square and its finish thick.',
      ],
      notes: outside
        ? [`At make-up the wood is ${outside} than in any month: it will never come back to this width.`]
        : [],
      steps: [driest, wettest].flatMap((end) => {
        const given = changeAt(end.moisturePct);
        return [
          {
            what: `Moisture content that wood comes to in ${end.name}`,
            rule: 'movement/equilibrium-moisture',
            given: end.air,
            gives: { moisturePct: end.moisturePct },
          },
          {
            what: `Change of the width by ${end.name}`,
            rule: 'movement/width-change',
            given,
            gives: widthChange(given),
          },
        ];
      }),
    };
  },
});
