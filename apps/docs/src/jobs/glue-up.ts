import { clampCount, clampForce, glueMass, planPanel } from '@scantling/stock';
import { defineJob } from '../calculator/calculation.ts';

export default defineJob({
  title: 'Glue-up',
  summary:
    'From a finished top back to the rough boards it takes, and the clamps and the glue to make a panel of them.',
  group: 'Measure and buy',
  rules: ['stock/clamp-force', 'stock/clamp-count', 'stock/glue-mass'],
  fields: {
    lengthMm: { kind: 'number', label: 'Finished length', unit: 'mm', min: 1, max: 20_000 },
    widthMm: { kind: 'number', label: 'Finished width', unit: 'mm', min: 1, max: 5000 },
    thicknessMm: { kind: 'number', label: 'Finished thickness', unit: 'mm', min: 1, max: 500 },
    leastWidthMm: { kind: 'number', label: 'Narrowest board on offer', unit: 'mm', min: 1, max: 2000 },
    mostWidthMm: { kind: 'number', label: 'Widest board on offer', unit: 'mm', min: 1, max: 2000 },
    planingMm: {
      kind: 'number',
      label: 'Planed off each board',
      unit: 'mm',
      min: 0,
      max: 500,
      help: 'Off its thickness, both faces together.',
    },
    jointingMm: {
      kind: 'number',
      label: 'Jointed off each board',
      unit: 'mm',
      min: 0,
      max: 500,
      help: 'Off its width, both edges together.',
    },
    flatteningMm: {
      kind: 'number',
      label: 'Flattened off the panel',
      unit: 'mm',
      min: 0,
      max: 500,
      help: 'Off its thickness, both faces together.',
    },
    trimWidthMm: { kind: 'number', label: 'Trimmed off its width', unit: 'mm', min: 0, max: 500 },
    trimLengthMm: { kind: 'number', label: 'Trimmed off its length', unit: 'mm', min: 0, max: 500 },
    densityKgPerM3: { kind: 'number', label: 'Density of the wood', unit: 'kg/m³', min: 50, max: 2000 },
    order: {
      kind: 'choice',
      label: 'Hearts of the boards look',
      options: { alternate: 'up and down by turns', match: 'all the same way' },
    },
    ringAngleDeg: {
      kind: 'number',
      label: 'Growth rings to the face',
      unit: '°',
      min: 0,
      max: 90,
      help: 'At the end grain: 0° is flatsawn, 90° quartersawn.',
    },
    pressureMPa: {
      kind: 'number',
      label: 'Pressure on the glue line',
      unit: 'MPa',
      min: 0.01,
      max: 10,
      help: 'The glue’s own sheet says how much: dense woods take more.',
    },
    clampForceN: { kind: 'number', label: 'Force of one clamp', unit: 'N', min: 1, max: 100_000 },
    spreadGPerM2: {
      kind: 'number',
      label: 'Glue spread',
      unit: 'g/m²',
      min: 1,
      max: 2000,
      help: 'The glue’s own sheet.',
    },
    lossPct: {
      kind: 'number',
      label: 'Glue lost',
      unit: '%',
      min: 0,
      max: 95,
      help: 'Squeezed out, left in pot and brush.',
    },
  },
  first: {
    lengthMm: '1500',
    widthMm: '640',
    thicknessMm: '44',
    leastWidthMm: '100',
    mostWidthMm: '180',
    planingMm: '4',
    jointingMm: '6',
    flatteningMm: '3',
    trimWidthMm: '10',
    trimLengthMm: '50',
    densityKgPerM3: '705',
    order: 'alternate',
    ringAngleDeg: '20',
    pressureMPa: '1.2',
    clampForceN: '5000',
    spreadGPerM2: '200',
    lossPct: '20',
  },
  compute({ ringAngleDeg, pressureMPa, clampForceN, spreadGPerM2, lossPct, ...top }) {
    const panel = planPanel({ ...top, leastBoardCount: 1, ringAnglesDeg: [ringAngleDeg] });
    const { boards, jointCount, gluedThicknessMm, roughLengthMm } = panel;
    const press = { pressureMPa, lengthMm: roughLengthMm, thicknessMm: gluedThicknessMm };
    const force = clampForce(press);
    const clamps = {
      forceN: force.forceN,
      clampForceN,
      lengthMm: roughLengthMm,
      spreadDepthMm: Math.min(boards[0]?.widthMm ?? 0, boards.at(-1)?.widthMm ?? 0),
    };
    const count = clampCount(clamps);
    const glue = {
      lengthMm: roughLengthMm,
      thicknessMm: gluedThicknessMm,
      jointCount,
      spreadGPerM2,
      lossPct,
    };
    const needed = glueMass(glue);
    return {
      figures: [
        { name: 'boardCount', label: 'Boards', value: panel.boardCount, unit: '1' },
        {
          name: 'roughWidthMm',
          label: 'Each at least so wide, rough',
          value: panel.roughWidthMm,
          unit: 'mm',
        },
        { name: 'roughThicknessMm', label: 'so thick', value: panel.roughThicknessMm, unit: 'mm' },
        { name: 'roughLengthMm', label: 'so long', value: roughLengthMm, unit: 'mm' },
        { name: 'clampCount', label: 'Clamps', value: count.clampCount, unit: '1' },
        { name: 'spacingMm', label: 'from clamp to clamp', value: count.spacingMm, unit: 'mm' },
        { name: 'massG', label: 'Glue', value: needed.massG, unit: 'g' },
      ],
      tables: [
        {
          caption: 'Boards, from the front edge',
          columns: [
            { label: 'Board' },
            { label: 'Heart' },
            { label: 'From the front', unit: 'mm' },
            { label: 'Width in the top', unit: 'mm' },
          ],
          rows: boards.map(({ heart, fromFrontMm, widthMm }, i) => [i + 1, heart, fromFrontMm, widthMm]),
        },
        {
          caption: 'The wood, stage by stage',
          columns: [{ label: 'Stage' }, { label: 'Volume', unit: 'm³' }, { label: 'Mass', unit: 'kg' }],
          rows: panel.stages.map(({ name, volumeM3, massKg }) => [name, volumeM3, massKg]),
        },
      ],
      reasons: [
        'The fewest equal boards that are on offer. Hearts by turns keep a panel flat as a whole; hearts one way bow it in one sweep that is easier to hold down: common practice, no source.',
      ],
      steps: [
        { what: 'Force on one glue line', rule: 'stock/clamp-force', given: press, gives: force },
        { what: 'Clamps, by force and by reach', rule: 'stock/clamp-count', given: clamps, gives: count },
        { what: 'Glue for all joints', rule: 'stock/glue-mass', given: glue, gives: needed },
      ],
    };
  },
});
