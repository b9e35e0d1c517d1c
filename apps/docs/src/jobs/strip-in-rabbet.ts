import { defineJob, mm, type Outcome } from '../calculator/calculation.ts';
import { drawStrip } from '../strip-in-rabbet/drawing.ts';
import { type StripFound, type StripQuestion, stripInWood } from '../strip-in-rabbet/strip-in-wood.ts';
import { asking } from '../workers/ask.ts';

const ask = asking<StripQuestion, StripFound>(
  () => new Worker(new URL('../workers/strip.ts', import.meta.url), { type: 'module' }),
);

const number = (
  label: string,
  unit: '%' | '°C' | 'µm/(m·K)' | '1/%',
  min: number,
  max: number,
  help?: string,
) => ({ kind: 'number', label, unit, min, max, ...(help && { help }) }) as const;
const moisture = (label: string) => number(label, '%', 0, 30);
const temperature = (label: string) => number(label, '°C', -60, 150);

const ends = { first: 'the first screw', middle: 'the middle screw', last: 'the last screw' } as const;

export default defineJob({
  title: 'Metal strip let into wood',
  summary:
    'How deep and wide to cut the rabbet or groove for a strip, which of its screws need slots, and what gaps its ends need, as wood and metal move beside each other.',
  group: 'Hold it down',
  rules: ['fastening/strip-rabbet', 'movement/change-beside-metal', 'fastening/slot-length'],
  fields: {
    lengthMm: mm('Length of the strip', 10, 20_000),
    widthMm: mm('Width', 1, 1000),
    thicknessMm: mm('Thickness', 0.5, 100),
    runs: {
      kind: 'choice',
      label: 'It runs',
      options: { 'along the grain': 'along the grain', 'across the grain': 'across the grain' },
    },
    walls: {
      kind: 'choice',
      label: 'It lies in',
      options: { rabbet: 'a rabbet along an edge', groove: 'a groove' },
    },
    thicknessToleranceMm: { ...mm('Thickness off by', 0, 5), help: 'At most, either way.' },
    widthToleranceMm: mm('Width off by', 0, 5),
    belowFaceMm: { ...mm('Below the face of the wood', 0, 20), help: 'Even the thickest strip; 0 is flush.' },
    fixed: { kind: 'choice', label: 'It is held by', options: ends },
    endDistanceMm: mm('First screw from the end', 0, 10_000),
    mostPitchMm: mm('Screws apart at most', 1, 20_000),
    shankDiameterMm: { ...mm('Shank', 0.5, 50), help: 'Where the screw passes through the strip.' },
    headDiameterMm: { ...mm('Countersunk head', 0.5, 50), help: 'To its sharp edge.' },
    headHeightMm: mm('Height of the head', 0, 50),
    headBelowFaceMm: mm('Head below the strip’s face', 0, 50),
    toleranceMm: mm('Movement that a round hole bears', 0, 50),
    clearanceMm: mm('To spare at each end of a slot', 0, 50),
    endClearanceMm: mm('To spare at each end of the strip', 0, 50),
    metalUmPerMK: {
      ...number('The metal expands by', 'µm/(m·K)', 0, 200),
      help: 'Steel about 12, brass about 19.',
    },
    coefficientPerPct: number('Change coefficient across the grain', '1/%', 0, 0.02),
    alongPerPct: number('Change coefficient along the grain', '1/%', 0, 0.02),
    acrossUmPerMK: number('Wood expands across the grain by', 'µm/(m·K)', 0, 200),
    alongUmPerMK: number('Wood expands along the grain by', 'µm/(m·K)', 0, 200),
    moisturePct: moisture('Moisture content on the day'),
    driestMoisturePct: moisture('In the driest time'),
    wettestMoisturePct: moisture('In the wettest time'),
    temperatureC: temperature('Temperature on the day'),
    coldestTemperatureC: temperature('Coldest'),
    warmestTemperatureC: temperature('Warmest'),
  },
  first: {
    ...{ lengthMm: '1400', widthMm: '1 in', thicknessMm: '1/4 in', runs: 'along the grain', walls: 'rabbet' },
    ...{ thicknessToleranceMm: '0.1', widthToleranceMm: '0.1', belowFaceMm: '0', fixed: 'middle' },
    ...{ endDistanceMm: '40', mostPitchMm: '330', shankDiameterMm: '4', headDiameterMm: '8' },
    ...{ headHeightMm: '2', headBelowFaceMm: '0.3', toleranceMm: '0.05', clearanceMm: '0.3' },
    ...{ endClearanceMm: '1', metalUmPerMK: '19', coefficientPerPct: '0.00353', alongPerPct: '0.0000668' },
    ...{ acrossUmPerMK: '39.8', alongUmPerMK: '3.8', moisturePct: '8', driestMoisturePct: '6' },
    ...{ wettestMoisturePct: '11', temperatureC: '20', coldestTemperatureC: '14', warmestTemperatureC: '28' },
  },
  compute(values, say) {
    const { endDistanceMm, lengthMm } = values;
    if (!(2 * endDistanceMm < lengthMm))
      throw new RangeError('This requires endDistanceMm below half of lengthMm');
    const inWords = ({ metalOutgrowsMm, woodOutgrowsMm, rabbet, plan, steps }: StripFound): Outcome => {
      const slots = plan.screws.filter(({ slot }) => slot).length;
      return {
        figures: [
          { name: 'depthMm', label: 'Depth to cut', value: rabbet.depthMm, unit: 'mm' },
          { name: 'widthMm', label: 'Width to cut', value: rabbet.widthMm, unit: 'mm' },
          { name: 'startGapMm', label: 'Gap at the start', value: plan.start.gapMm, unit: 'mm' },
          { name: 'endGapMm', label: 'Gap at the end', value: plan.end.gapMm, unit: 'mm' },
          {
            name: 'slots',
            label: 'Screws',
            text:
              slots > 0
                ? `${plan.screws.length}, ${slots} of them in slots`
                : `${plan.screws.length}, in round holes`,
          },
          ...(plan.countersinkInWoodMm > 0
            ? [
                {
                  name: 'countersinkMm',
                  label: 'Countersink the wood beneath by',
                  value: plan.countersinkInWoodMm,
                  unit: 'mm' as const,
                },
              ]
            : []),
        ],
        drawing: drawStrip({ ...values, wallCount: values.walls === 'rabbet' ? 1 : 2 }, rabbet, plan, say),
        tables: [
          {
            caption: 'Screws, from the start of the strip',
            columns: [
              { label: '' },
              { label: 'At', unit: 'mm' },
              { label: 'Slot', unit: 'mm' },
              { label: 'Countersink as long as', unit: 'mm' },
              { label: 'Screw from the slot’s end nearer to the held one', unit: 'mm' },
            ],
            rows: plan.screws.map(({ atMm, slot }, i) => [
              i + 1,
              atMm,
              slot ? slot.lengthMm : 'round hole',
              slot?.countersinkLengthMm ?? null,
              slot?.screwFromInnerEndMm ?? null,
            ]),
          },
        ],
        reasons: [
          `Over the year the metal outgrows the wood by up to ${say(metalOutgrowsMm)} along the strip, and the wood the metal by up to ${say(woodOutgrowsMm)}.`,
          `The thinnest strip lies ${say(rabbet.mostBelowFaceMm)} below the face; all the room beside the narrowest is ${say(rabbet.mostGapMm)}.`,
          `A recess that is closed at both ends is ${say(plan.recessLengthMm)} long; a gap opens to ${say(Math.max(plan.start.mostGapMm, plan.end.mostGapMm))}.`,
        ],
        cautions: plan.cautions,
        steps,
      };
    };
    // Movement, slots and recess are more than a page should carry together: an open page asks a worker.
    if (import.meta.env.SSR) return inWords(stripInWood(values));
    return { figures: [], steps: [], later: async () => inWords(await ask(values)) };
  },
});
