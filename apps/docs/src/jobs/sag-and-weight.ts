import { panelMass } from '@scantling/movement';
import { longTermSag, topSag } from '@scantling/stock';
import { type Drawing, defineJob } from '../calculator/calculation.ts';
import { piece } from '../calculator/piece.ts';
import { along } from '../drawing/axis.ts';
import { dimension, leader } from '../drawing/dimension.ts';
import { SHEET_WIDTH, short } from '../drawing/sheet.ts';

const GRAVITY = 9.80665;

/** The top from the front on its two supports, its sag drawn larger than it is. */
function sideView(
  lengthMm: number,
  supportsMm: readonly number[],
  loadsMm: readonly number[],
  lowest: { atMm: number; text: string },
  length: string,
): Drawing {
  const at = along(0, lengthMm, 30, SHEET_WIDTH - 30);
  const [top, under] = [62, 84];
  const supports = supportsMm.map((mm) => `M${short(at(mm))} ${under}l-13 24h26z`).join('');
  const arrows = loadsMm.map((mm) => `M${short(at(mm))} ${top}l-4 -11h8z`).join('');
  const shafts = loadsMm.map((mm) => `M${short(at(mm))} ${top - 11}v-26`).join('');
  const low = Math.min(Math.max(lowest.atMm, 0), lengthMm);
  return {
    title: 'The top from the front on its two supports, with its loads and the place where it sags the most.',
    box: [0, 0, SHEET_WIDTH, 178],
    shapes: [
      piece('path', { class: 'wood', d: `M30 ${top}H${SHEET_WIDTH - 30}V${under}H30Z` }),
      piece('path', { class: 'outline', d: `M30 ${top}H${SHEET_WIDTH - 30}V${under}H30Z${supports}` }),
      ...(loadsMm.length > 0
        ? [
            piece(
              'g',
              { class: 'measure' },
              piece('path', { d: shafts }),
              piece('path', { class: 'arrow', d: arrows }),
            ),
          ]
        : []),
      leader([at(low), under], [at(low) + (low > lengthMm / 2 ? -34 : 34), under + 40], lowest.text),
      dimension([30, under + 24], [SHEET_WIDTH - 30, under + 24], 46, length),
    ],
  };
}

export default defineJob({
  title: 'Sag and weight',
  summary:
    'What a top weighs, how far it sags on two supports at once and after years, and what each support carries.',
  group: 'Hold it down',
  rules: ['movement/panel-mass', 'stock/long-term-sag'],
  fields: {
    lengthMm: { kind: 'number', label: 'Length of the top', unit: 'mm', min: 1, max: 20_000 },
    widthMm: { kind: 'number', label: 'Width', unit: 'mm', min: 1, max: 5000 },
    thicknessMm: { kind: 'number', label: 'Thickness', unit: 'mm', min: 1, max: 1000 },
    specificGravityRatio: {
      kind: 'number',
      label: 'Specific gravity of the wood',
      unit: '1',
      min: 0.05,
      max: 1.5,
      help: 'Ovendry mass by volume as it is; sugar maple 0.63.',
    },
    moisturePct: { kind: 'number', label: 'Moisture content', unit: '%', min: 0, max: 30 },
    modulusOfElasticityMPa: {
      kind: 'number',
      label: 'Modulus of elasticity',
      unit: 'MPa',
      min: 100,
      max: 50_000,
    },
    leftSupportMm: {
      kind: 'number',
      label: 'Left support, from the left end',
      unit: 'mm',
      min: 0,
      max: 20_000,
    },
    rightSupportMm: {
      kind: 'number',
      label: 'Right support, from the left end',
      unit: 'mm',
      min: 0,
      max: 20_000,
    },
    loads: {
      kind: 'rows',
      label: 'What stands on it',
      row: 'Load',
      minRows: 0,
      maxRows: 10,
      fields: {
        atMm: { kind: 'number', label: 'From the left end', unit: 'mm', min: 0, max: 20_000 },
        massKg: { kind: 'number', label: 'Mass', unit: 'kg', min: 0, max: 10_000 },
      },
    },
    holeCount: {
      kind: 'number',
      label: 'Holes side by side, in each row across',
      unit: '1',
      min: 0,
      max: 1000,
      integer: true,
    },
    diameterMm: { kind: 'number', label: 'Their diameter', unit: 'mm', min: 0, max: 1000 },
    pitchMm: { kind: 'number', label: 'From row to row', unit: 'mm', min: 20, max: 20_000 },
    seasoning: {
      kind: 'choice',
      label: 'The wood is',
      options: { seasoned: 'seasoned', unseasoned: 'unseasoned, or dries under load' },
    },
    mostSagMm: { kind: 'number', label: 'Sag that will do', unit: 'mm', min: 0, max: 500 },
  },
  first: {
    lengthMm: '1500',
    widthMm: '640',
    thicknessMm: '44',
    specificGravityRatio: '0.63',
    moisturePct: '8',
    modulusOfElasticityMPa: '12600',
    leftSupportMm: '250',
    rightSupportMm: '1250',
    loads: [{ atMm: '750', massKg: '60' }],
    holeCount: '6',
    diameterMm: '20',
    pitchMm: '100',
    seasoning: 'seasoned',
    mostSagMm: '1',
  },
  compute(values, say) {
    const { lengthMm, widthMm, thicknessMm, specificGravityRatio, moisturePct, holeCount, diameterMm } =
      values;
    const panel = { lengthMm, widthMm, thicknessMm, specificGravityRatio, moisturePct };
    const mass = panelMass(panel);
    const rowCount = Math.min(500, Math.floor(lengthMm / values.pitchMm));
    const firstMm = (lengthMm - (rowCount - 1) * values.pitchMm) / 2;
    const rows = holeCount > 0 && diameterMm > 0 ? rowCount : 0;
    const bare = {
      lengthMm,
      leftSupportMm: values.leftSupportMm,
      rightSupportMm: values.rightSupportMm,
      widthMm,
      depthMm: thicknessMm,
      modulusOfElasticityMPa: values.modulusOfElasticityMPa,
      shearModulusMPa: values.modulusOfElasticityMPa / 16,
      spreadLoadNPerMm: (mass.massKg * GRAVITY) / lengthMm,
      holeRows: Array.from({ length: rows }, (_, i) => ({
        atMm: firstMm + i * values.pitchMm,
        diameterMm,
        count: holeCount,
      })),
    };
    const own = topSag({ ...bare, pointLoads: [] });
    const loaded = topSag({
      ...bare,
      pointLoads: values.loads.map(({ atMm, massKg }) => ({ atMm, forceN: massKg * GRAVITY })),
    });
    const lasting = {
      lastingSagMm: Math.max(0, loaded.lowestSagMm),
      passingSagMm: 0,
      seasoning: values.seasoning,
    };
    const years = longTermSag(lasting);
    const lifts = Math.min(loaded.leftReactionN, loaded.rightReactionN) < 0;
    const good = years.sagMm <= values.mostSagMm && !lifts;
    return {
      verdict: {
        good,
        says: lifts
          ? 'It would lift off one support unless it is held down.'
          : good
            ? 'It will do, after years too.'
            : 'It sags more than that after years.',
      },
      figures: [
        { name: 'massKg', label: 'The top weighs', value: mass.massKg, unit: 'kg' },
        { name: 'lowestSagMm', label: 'Sags at once, with its loads', value: loaded.lowestSagMm, unit: 'mm' },
        { name: 'sagMm', label: 'and after years', value: years.sagMm, unit: 'mm' },
        { name: 'lowestAtMm', label: 'Lowest, from the left end', value: loaded.lowestAtMm, unit: 'mm' },
        { name: 'ownSagMm', label: 'Of its own weight alone', value: own.lowestSagMm, unit: 'mm' },
      ],
      drawing: sideView(
        lengthMm,
        [values.leftSupportMm, values.rightSupportMm],
        values.loads.map(({ atMm }) => atMm),
        { atMm: loaded.lowestAtMm, text: `sags ${say(loaded.lowestSagMm)}` },
        say(lengthMm),
      ),
      tables: [
        {
          caption: 'Supports and ends',
          columns: [{ label: 'Side' }, { label: 'Carries', unit: 'N' }, { label: 'End sags', unit: 'mm' }],
          rows: [
            ['left', loaded.leftReactionN, loaded.leftEndSagMm],
            ['right', loaded.rightReactionN, loaded.rightEndSagMm],
          ],
        },
      ],
      reasons: [
        'Each hole counts as a square of its diameter, which overstates it a little. Loads are taken to stay.',
        'The shear modulus is taken as a sixteenth of the modulus of elasticity, a common proportion of wood.',
        'Standard gravity 9.80665 m/s².',
      ],
      steps: [
        { what: 'What the top weighs', rule: 'movement/panel-mass', given: panel, gives: mass },
        { what: 'Sag after years', rule: 'stock/long-term-sag', given: lasting, gives: years },
      ],
    };
  },
});
