import { coatCalendar, finishAreas, finishVolume, spreadingRate } from '@scantling/finishing';
import { defineJob } from '../calculator/calculation.ts';

const side = { kind: 'number', unit: 'mm', min: 1 } as const;
const hours = { kind: 'number', unit: 'h', min: 0, max: 1000 } as const;
const clock = { kind: 'number', unit: 'h', min: 0, max: 24 } as const;
const coats = { kind: 'number', unit: '1', min: 1, max: 20, integer: true } as const;

/** 8.5 is half past eight. */
function onTheClock(hour: number): string {
  const minutes = Math.round(hour * 60);
  return `${Math.floor(minutes / 60) % 24}:${`${minutes % 60}`.padStart(2, '0')}`;
}

export default defineJob({
  title: 'Finish and coat calendar',
  summary:
    'How much finish a top with holes takes on all sides, and when each coat can be laid and the panel turned.',
  group: 'Finish',
  rules: ['finishing/spreading-rate', 'finishing/finish-volume'],
  fields: {
    lengthMm: { ...side, label: 'Length of the top', max: 20_000 },
    widthMm: { ...side, label: 'Width', max: 20_000 },
    thicknessMm: { ...side, label: 'Thickness', max: 1000 },
    holeCount: { kind: 'number', label: 'Holes through it', unit: '1', min: 0, max: 10_000, integer: true },
    diameterMm: { kind: 'number', label: 'Their diameter', unit: 'mm', min: 0.1, max: 1000 },
    topCoatCount: { ...coats, label: 'Coats on top and edges' },
    undersideCoatCount: { ...coats, label: 'Coats on the underside' },
    dryFilmUm: {
      kind: 'number',
      label: 'Dry film of a coat',
      unit: 'µm',
      min: 1,
      max: 1000,
      help: 'A wiped coat leaves 10 to 15, common practice.',
    },
    volumeSolidsPct: { kind: 'number', label: 'Solids of the mix, by volume', unit: '%', min: 1, max: 100 },
    lossPct: {
      kind: 'number',
      label: 'Lost',
      unit: '%',
      min: 0,
      max: 95,
      help: 'Stays in rags, pads and jars.',
    },
    layHours: { ...hours, label: 'To lay one coat', min: 0.05, max: 24 },
    recoatHours: { ...hours, label: 'Next coat after', help: 'The product’s sheet.' },
    recoatWithinHours: { ...hours, label: 'Sand first when later than', max: 10_000 },
    turnHours: { ...hours, label: 'Can be turned after' },
    dryingDays: { kind: 'number', label: 'To dry before use', unit: 'd', min: 0, max: 365 },
    opensHours: { ...clock, label: 'Work may begin at', help: 'Hour of the day: 8.5 is half past eight.' },
    closesHours: { ...clock, label: 'A coat is done by' },
    startsHours: { ...clock, label: 'First coat, on the first day, at' },
    turned: {
      kind: 'choice',
      label: 'Turn the panel',
      options: { once: 'once, when the underside has its coats', 'after each coat': 'after each coat' },
    },
  },
  first: {
    lengthMm: '1500',
    widthMm: '640',
    thicknessMm: '44',
    holeCount: '60',
    diameterMm: '20',
    topCoatCount: '3',
    undersideCoatCount: '2',
    dryFilmUm: '12',
    volumeSolidsPct: '22',
    lossPct: '15',
    layHours: '1',
    recoatHours: '8',
    recoatWithinHours: '48',
    turnHours: '6',
    dryingDays: '5',
    opensHours: '8',
    closesHours: '18',
    startsHours: '8',
    turned: 'once',
  },
  compute(values) {
    const { lengthMm, widthMm, thicknessMm, holeCount, diameterMm, dryFilmUm, volumeSolidsPct, lossPct } =
      values;
    const { topCoatCount, undersideCoatCount } = values;
    const holes = holeCount > 0 ? [{ count: holeCount, diameterMm, bored: 'through' as const }] : [];
    const areas = finishAreas({ lengthMm, widthMm, thicknessMm, holes, rabbets: [] });
    const undersideM2 = areas.undersideM2;
    const topM2 = areas.totalM2 - undersideM2;
    const film = { dryFilmUm, volumeSolidsPct };
    const rate = spreadingRate(film);
    const share = (areaM2: number, coatCount: number) => ({ areaM2, coatCount, ...rate, lossPct });
    const [above, below] = [share(topM2, topCoatCount), share(undersideM2, undersideCoatCount)];
    const [aboveMl, belowMl] = [finishVolume(above), finishVolume(below)];
    const calendar = coatCalendar(values);
    return {
      figures: [
        {
          name: 'volumeMl',
          label: 'Mix for all coats',
          value: aboveMl.volumeMl + belowMl.volumeMl,
          unit: 'mL',
        },
        { name: 'areaM2', label: 'All faces', value: areas.totalM2, unit: 'm²' },
        { name: 'ready', label: 'May be used', text: `on day ${calendar.readyDayIndex}` },
      ],
      tables: [
        {
          caption: 'What gets finish',
          columns: [
            { label: 'Face' },
            { label: 'Area', unit: 'm²' },
            { label: 'Coats' },
            { label: 'Mix', unit: 'mL' },
          ],
          rows: [
            ['top, edges and hole walls', topM2, topCoatCount, aboveMl.volumeMl],
            ['underside', undersideM2, undersideCoatCount, belowMl.volumeMl],
          ],
        },
        {
          caption: 'Calendar',
          columns: [{ label: 'Day' }, { label: 'From' }, { label: 'To' }, { label: 'What to do' }],
          rows: calendar.steps.map(({ dayIndex, clockHours, atHours, doneHours, says }) => [
            dayIndex,
            onTheClock(clockHours),
            onTheClock(clockHours + doneHours - atHours),
            says,
          ]),
        },
      ],
      reasons: [
        'Each step is as early as drying and the working day allow. The hours are those of the product’s own sheet.',
      ],
      cautions: calendar.cautions,
      steps: [
        {
          what: 'Area that a litre of the mix covers',
          rule: 'finishing/spreading-rate',
          given: film,
          gives: rate,
        },
        {
          what: 'Mix for top, edges and hole walls',
          rule: 'finishing/finish-volume',
          given: above,
          gives: aboveMl,
        },
        { what: 'Mix for the underside', rule: 'finishing/finish-volume', given: below, gives: belowMl },
      ],
    };
  },
});
