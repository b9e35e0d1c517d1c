import { depthStopSetting, planDepthStops, type StoppedHole } from '@scantling/fastening';
import { defineJob, type Outcome, type Step } from '../calculator/calculation.ts';
import { drawDepthStops } from '../drawing/depth-stops.ts';

export default defineJob({
  title: 'Depth stop and screw length',
  summary:
    'A screw from below through a rail into the top: whether it stays under the face, how deep to bore for its thread and its shank, and where to set the stop on each bit.',
  group: 'Hold it down',
  rules: ['fastening/thread-engagement', 'fastening/depth-stop-setting'],
  cautions: ['Try it first on an offcut of the same wood and thickness, with the same screw.'],
  fields: {
    topThicknessMm: {
      kind: 'number',
      label: 'Thickness of the top',
      unit: 'mm',
      min: 1,
      max: 500,
      help: 'At its thinnest where the screw goes, less any recess there.',
    },
    leastStockMm: {
      kind: 'number',
      label: 'Wood to leave above any tip',
      unit: 'mm',
      min: 0,
      max: 500,
      help: 'More where the face will still be planed or sanded.',
    },
    railMm: {
      kind: 'number',
      label: 'Rail or bracket',
      unit: 'mm',
      min: 0,
      max: 200,
      help: 'Its thickness under the head.',
    },
    washerMm: { kind: 'number', label: 'Washer', unit: 'mm', min: 0, max: 50, help: '0 for none.' },
    gapMm: {
      kind: 'number',
      label: 'Gap or spacer under the top',
      unit: 'mm',
      min: 0,
      max: 200,
      help: '0 where the rail lies against the wood.',
    },
    screwLengthMm: {
      kind: 'number',
      label: 'Length of the screw',
      unit: 'mm',
      min: 1,
      max: 400,
      help: 'Under a round or hexagon head; over all with a countersunk one.',
    },
    threadLengthMm: {
      kind: 'number',
      label: 'of which thread, with the tip',
      unit: 'mm',
      min: 0,
      max: 400,
    },
    tipLengthMm: { kind: 'number', label: 'and of that, tapered tip', unit: 'mm', min: 0, max: 100 },
    leadHolePct: {
      kind: 'number',
      label: 'Lead hole, share of the thread',
      unit: '%',
      min: 0,
      max: 100,
      help: 'In hardwood nearly all of it; in softwood a half to two thirds.',
    },
    drilled: {
      kind: 'choice',
      label: 'You drill',
      options: { through: 'through the rail in its place', bare: 'the bare wood' },
    },
    leadBitTipLengthMm: {
      kind: 'number',
      label: 'Tip of the bit for the thread',
      unit: 'mm',
      min: 0,
      max: 100,
      help: 'From its point to its full diameter: 0.3 of the diameter for a 118° twist bit.',
    },
    shankBitTipLengthMm: {
      kind: 'number',
      label: 'Tip of the bit for the shank',
      unit: 'mm',
      min: 0,
      max: 100,
    },
    stopLengthMm: { kind: 'number', label: 'Length of the stop', unit: 'mm', min: 0, max: 200 },
  },
  first: {
    topThicknessMm: '1 3/4 in',
    leastStockMm: '8',
    railMm: '4',
    washerMm: '1.6',
    gapMm: '0',
    screwLengthMm: '40',
    threadLengthMm: '28',
    tipLengthMm: '5',
    leadHolePct: '100',
    drilled: 'through',
    leadBitTipLengthMm: '2',
    shankBitTipLengthMm: '2.5',
    stopLengthMm: '20',
  },
  compute(given, say): Outcome {
    const { railMm, washerMm, gapMm, leadHolePct, drilled, ...rest } = given;
    const fixtureThicknessMm = washerMm + railMm + gapMm;
    const drilledThroughMm = drilled === 'through' ? railMm + gapMm : 0;
    const plan = planDepthStops({
      ...rest,
      fixtureThicknessMm,
      drilledThroughMm,
      leadHoleShare: leadHolePct / 100,
    });
    const { screw, leadHole, shankHole, status, reasons } = plan;
    const longestMm = fixtureThicknessMm + rest.topThicknessMm - rest.leastStockMm;

    /** Sentences of the planner are in millimetres. */
    const inUnit = (says: string) => says.replace(/(-?\d+(?:\.\d+)?) mm/g, (_, mm) => say(Number(mm)));

    const holes = [
      { name: 'for the shank', hole: shankHole, bitTipLengthMm: rest.shankBitTipLengthMm },
      { name: 'for the thread', hole: leadHole, bitTipLengthMm: rest.leadBitTipLengthMm },
    ].flatMap(({ hole, ...one }) => (hole ? [{ ...one, hole }] : []));
    const stopFigure = (name: string, label: string, hole: StoppedHole | null) =>
      hole
        ? { name, label, value: hole.stopFromTipMm, unit: 'mm' as const }
        : { name, label, text: 'no hole' };

    const screwGiven = {
      screwLengthMm: rest.screwLengthMm,
      threadLengthMm: rest.threadLengthMm,
      tipLengthMm: rest.tipLengthMm,
      fixtureThicknessMm,
      topThicknessMm: rest.topThicknessMm,
    };
    return {
      verdict:
        status === 'pass'
          ? { good: true, says: `It stays under the face, with ${say(screw.stockAboveTipMm)} above its tip.` }
          : { good: false, says: reasons.map(inUnit).join(' ') },
      figures: [
        {
          name: 'stockAboveTipMm',
          label: 'Wood above the tip of the screw',
          value: screw.stockAboveTipMm,
          unit: 'mm',
        },
        {
          name: 'longestMm',
          label: 'Longest screw that may go in here',
          value: Math.max(0, longestMm),
          unit: 'mm',
        },
        stopFigure('leadStopMm', 'Stop on the bit for the thread, from its tip', leadHole),
        stopFigure('shankStopMm', 'Stop on the bit for the shank, from its tip', shankHole),
        { name: 'threadInWoodMm', label: 'Thread in the wood', value: screw.threadInWoodMm, unit: 'mm' },
        { name: 'penetrationMm', label: 'Screw in the wood', value: screw.penetrationMm, unit: 'mm' },
      ],
      drawing: drawDepthStops({ ...given, screw, leadHole, shankHole, drilledThroughMm, say }),
      tables: [
        {
          caption: 'The holes, the wider one first',
          columns: [
            { label: 'Hole' },
            { label: 'Deep in the wood', unit: 'mm' },
            { label: 'Stop from the tip', unit: 'mm' },
            { label: 'Bit out of the chuck', unit: 'mm' },
            { label: 'Wood above the tip', unit: 'mm' },
            { label: 'Shallower than wanted by', unit: 'mm' },
          ],
          rows: holes.map(({ name, hole }) => [
            name,
            hole.holeDepthMm,
            hole.stopFromTipMm,
            hole.bitOutOfChuckMm,
            hole.stockAboveTipMm,
            hole.shortenedMm,
          ]),
        },
      ],
      reasons: plan.steps.map(({ says }) => inUnit(says)),
      steps: [
        {
          what: 'The screw in the top',
          rule: 'fastening/thread-engagement',
          given: screwGiven,
          gives: screw,
        },
        ...holes.map(({ name, hole, bitTipLengthMm }): Step => {
          const setting = {
            drilledThroughMm,
            holeDepthMm: hole.holeDepthMm,
            bitTipLengthMm,
            stopLengthMm: rest.stopLengthMm,
            topThicknessMm: rest.topThicknessMm,
          };
          return {
            what: `Stop on the bit ${name}`,
            rule: 'fastening/depth-stop-setting',
            given: setting,
            gives: depthStopSetting(setting),
          };
        }),
      ],
    };
  },
});
