import { jarHeight, jarMarks, mixByParts } from '@scantling/finishing';
import { type Drawing, defineJob } from '../calculator/calculation.ts';
import { piece } from '../calculator/piece.ts';
import { label } from '../drawing/marks.ts';
import { SHEET_WIDTH, short, viewOf } from '../drawing/sheet.ts';

/** The jar in section, as wide as it is tall in its proportion, with a mark for each liquid. */
function jar(names: readonly string[], heightsMm: readonly number[], diameterMm: number): Drawing {
  const fullMm = heightsMm.at(-1) ?? 0;
  const view = viewOf({ left: 20, top: 14, width: 190, height: 190 }, 0, 0, diameterMm, 1.15 * fullMm);
  const [left, right] = [view.at(0, 0)[0], view.at(diameterMm, 0)[0]];
  const heightOf = (mm: number) => view.at(0, mm)[1];
  // Names keep clear of each other where a layer is thin.
  const lettered: number[] = [];
  for (const mm of heightsMm) lettered.push(Math.min(heightOf(mm) + 5, (lettered.at(-1) ?? 999) - 20));
  return {
    title: `A jar with a mark for each liquid, from the bottom: ${names.join(', ')}.`,
    box: [0, 0, SHEET_WIDTH, 220],
    shapes: [
      piece('path', {
        class: 'wood',
        d: `M${short(left)} ${short(heightOf(fullMm))}H${short(right)}V${short(heightOf(0))}H${short(left)}Z`,
      }),
      piece('path', {
        class: 'outline',
        d: `M${short(left)} ${short(heightOf(1.15 * fullMm))}V${short(heightOf(0))}H${short(right)}V${short(heightOf(1.15 * fullMm))}`,
      }),
      ...heightsMm.flatMap((mm, i) => [
        piece('path', {
          class: 'thin',
          d: `M${short(left)} ${short(heightOf(mm))}H${short(right)}L${short(right + 22)} ${short((lettered[i] ?? 0) - 5)}`,
        }),
        label([right + 28, lettered[i] ?? 0], `${i + 1}: ${names[i]?.slice(0, 22)}`, 'start'),
      ]),
    ],
  };
}

export default defineJob({
  title: 'Mix and thin',
  summary:
    'How much of each liquid goes into a batch mixed by parts, what solids are left in it, and where to mark a jar.',
  group: 'Finish',
  rules: ['finishing/mix-by-parts', 'finishing/jar-height'],
  fields: {
    liquids: {
      kind: 'rows',
      label: 'Liquids, in the order of pouring',
      row: 'Liquid',
      minRows: 1,
      maxRows: 6,
      fields: {
        name: { kind: 'text', label: 'Name', longest: 60 },
        parts: { kind: 'number', label: 'Parts by volume', unit: '1', min: 0.01, max: 1000 },
        volumeSolidsPct: {
          kind: 'number',
          label: 'Solids by volume',
          unit: '%',
          min: 0,
          max: 100,
          help: 'From its data sheet; a thinner has none.',
        },
      },
    },
    batchMl: { kind: 'number', label: 'Batch', unit: 'mL', min: 1, max: 1_000_000 },
    innerDiameterMm: {
      kind: 'number',
      label: 'Jar, inner diameter',
      unit: 'mm',
      min: 5,
      max: 2000,
      help: 'Straight sides and a flat bottom.',
    },
    ruler: {
      kind: 'choice',
      label: 'Ruler to mark it with',
      options: { mm: '1 mm', sixteenths: '1/16 in' },
    },
  },
  first: {
    liquids: [
      { name: 'Varnish', parts: '1', volumeSolidsPct: '44' },
      { name: 'Mineral spirits', parts: '1', volumeSolidsPct: '0' },
    ],
    batchMl: '400',
    innerDiameterMm: '80',
    ruler: 'mm',
  },
  compute({ liquids, batchMl, innerDiameterMm, ruler }) {
    const parts = liquids.map((one) => one.parts);
    const names = liquids.map(({ name }, i) => name || `liquid ${i + 1}`);
    const mixed = mixByParts({ parts, batchMl });
    const graduation = ruler === 'mm' ? ({ stepMm: 1 } as const) : ({ denominator: 16 } as const);
    const { marks, offByPct, cautions } = jarMarks({ parts, batchMl, innerDiameterMm, ...graduation });
    const solidsMl = mixed.volumesMl.reduce(
      (sum, volume, i) => sum + (volume * (liquids[i]?.volumeSolidsPct ?? 0)) / 100,
      0,
    );
    const wholeMl = mixed.volumesMl.reduce((sum, volume) => sum + volume);
    const brim = { volumeMl: wholeMl, innerDiameterMm };
    return {
      figures: [
        { name: 'partMl', label: 'One part', value: mixed.partMl, unit: 'mL' },
        {
          name: 'mixSolidsPct',
          label: 'Solids of the mix, by volume',
          value: (100 * solidsMl) / wholeMl,
          unit: '%',
        },
        { name: 'solidsMl', label: 'Stays on the wood, when all is used', value: solidsMl, unit: 'mL' },
      ],
      drawing: jar(
        names,
        marks.map(({ heightMm }) => heightMm),
        innerDiameterMm,
      ),
      tables: [
        {
          caption: 'Pour in this order',
          columns: [
            { label: 'Liquid' },
            { label: 'Parts' },
            { label: 'Volume', unit: 'mL' },
            { label: 'Fill the jar to', unit: 'mm' },
            { label: 'Mark at', unit: 'mm' },
          ],
          rows: marks.map(({ heightMm, markMm }, i) => [
            names[i] ?? '',
            parts[i] ?? null,
            mixed.volumesMl[i] ?? null,
            heightMm,
            markMm,
          ]),
        },
      ],
      reasons: [
        `Marks are rounded from the bottom, so that errors do not add up: no liquid is off its share by more than ${offByPct.toFixed(2)} % of the mix.`,
        'Volumes are taken to add up, as they nearly do.',
      ],
      steps: [
        { what: 'Volumes', rule: 'finishing/mix-by-parts', given: { parts, batchMl }, gives: mixed },
        {
          what: 'Height of the whole mix',
          rule: 'finishing/jar-height',
          given: brim,
          gives: jarHeight(brim),
        },
      ],
      cautions,
    };
  },
});
