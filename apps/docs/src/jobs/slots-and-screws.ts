import { slotLength, slotTravel, washerOverSlot } from '@scantling/fastening';
import { widthChange } from '@scantling/movement';
import { requireThat } from '@scantling/rules';
import { defineJob, type Outcome } from '../calculator/calculation.ts';
import { drawSlots } from '../drawing/slots.ts';

/** Lengths nearer than this are the same length, rounding apart. */
const SAME_MM = 1e-9;

const lines = { front: 'the front row', middle: 'the middle', back: 'the back row' } as const;

export default defineJob({
  title: 'Slots for screws',
  summary:
    'How long a slot each row of screws needs so that a solid top can move over its base, where in it the screw stands on the day, and where to hold the top.',
  group: 'Hold it down',
  rules: [
    'movement/width-change',
    'fastening/slot-length',
    'fastening/washer-over-slot',
    'fastening/slot-travel',
  ],
  fields: {
    widthMm: {
      kind: 'number',
      label: 'Width of the top',
      unit: 'mm',
      min: 1,
      max: 5000,
      help: 'Across the grain, front to back.',
    },
    rows: {
      kind: 'rows',
      label: 'Rows of screws',
      row: 'Row',
      help: 'Of a hole or slot that is there, its length across the grain; blank where there is none.',
      minRows: 1,
      maxRows: 12,
      fields: {
        yMm: { kind: 'number', label: 'From the front edge', unit: 'mm', min: 0, max: 5000 },
        holeMm: {
          kind: 'number',
          label: 'Hole or slot there',
          unit: 'mm',
          min: 0.5,
          max: 500,
          blank: true,
        },
      },
    },
    line: { kind: 'choice', label: 'The top is held at', options: lines },
    coefficientPerPct: {
      kind: 'number',
      label: 'Change coefficient',
      unit: '1/%',
      min: 0,
      max: 0.02,
      help: 'Of the wood and the cut: share of the width per 1 % of moisture content.',
    },
    moisturePct: { kind: 'number', label: 'Moisture content on the day', unit: '%', min: 0, max: 30 },
    driestPct: {
      kind: 'number',
      label: 'Driest of the year',
      unit: '%',
      min: 0,
      max: 30,
      help: 'Moisture content: see “A panel through the year”.',
    },
    wettestPct: { kind: 'number', label: 'Wettest of the year', unit: '%', min: 0, max: 30 },
    shankDiameterMm: { kind: 'number', label: 'Shank of the screw', unit: 'mm', min: 0.5, max: 50 },
    clearanceMm: {
      kind: 'number',
      label: 'Room at each end',
      unit: 'mm',
      min: 0,
      max: 50,
      help: 'Still free when the screw has travelled all the way.',
    },
    washerMm: { kind: 'number', label: 'Diameter of the washer', unit: 'mm', min: 0.5, max: 200 },
  },
  first: {
    widthMm: '640',
    rows: [
      { yMm: '70', holeMm: '9' },
      { yMm: '320', holeMm: '' },
      { yMm: '570', holeMm: '9' },
    ],
    line: 'middle',
    coefficientPerPct: '0.00353',
    moisturePct: '8',
    driestPct: '6.5',
    wettestPct: '11.2',
    shankDiameterMm: '6',
    clearanceMm: '0.5',
    washerMm: '20',
  },
  compute(given, say): Outcome {
    const { widthMm, rows, coefficientPerPct, moisturePct, driestPct, wettestPct } = given;
    const { shankDiameterMm, clearanceMm, washerMm } = given;
    requireThat('year', driestPct <= wettestPct, 'driestPct at most wettestPct');
    for (const [i, { yMm }] of rows.entries()) {
      requireThat('row', yMm <= widthMm, `row ${i + 1} to lie within the width of the top`);
    }
    const ys = rows.map(({ yMm }) => yMm);
    const [front, back] = [Math.min(...ys), Math.max(...ys)];
    const lineMm = { front, middle: (front + back) / 2, back };

    const changeAt = (distanceMm: number, toMoisturePct: number) => ({
      widthMm: distanceMm,
      coefficientPerPct,
      fromMoisturePct: moisturePct,
      toMoisturePct,
    });
    // The day itself counts: a top that is wetter then than all year does not swell.
    const travelOf = (distanceMm: number) => ({
      swellMm: Math.max(0, widthChange(changeAt(distanceMm, wettestPct)).changeMm),
      shrinkMm: Math.max(0, -widthChange(changeAt(distanceMm, driestPct)).changeMm),
    });
    const slotAt = (yMm: number, heldMm: number) => {
      const distanceMm = Math.abs(yMm - heldMm);
      const travel = travelOf(distanceMm);
      const slot = slotLength({ shankDiameterMm, clearanceMm, ...travel });
      const { washerDiameterMm } = washerOverSlot({ ...slot, ...travel, lapMm: 0 });
      return { yMm, distanceMm, ...travel, ...slot, washerDiameterMm, onLine: distanceMm <= SAME_MM };
    };

    const heldMm = lineMm[given.line];
    const slots = rows.map(({ yMm, holeMm }) => {
      const slot = slotAt(yMm, heldMm);
      return { ...slot, holeMm, work: workOf(slot, holeMm) };
    });

    /** What to do where a row has a hole already, or none. */
    function workOf(slot: ReturnType<typeof slotAt>, holeMm: number | null): string {
      const { onLine, slotLengthMm, screwFromInnerEndMm, swellMm, shrinkMm } = slot;
      const size = say(slotLengthMm);
      if (holeMm === null) return onLine ? `drill it round, ${size}` : `cut a slot, ${size}`;
      if (onLine) {
        if (holeMm > slotLengthMm + SAME_MM) return `too loose to hold: the hole may be ${size}`;
        return holeMm < shankDiameterMm ? `drill it to ${size}` : 'leave it: it holds';
      }
      const room = slotTravel({
        slotLengthMm: holeMm,
        screwFromInnerEndMm: holeMm / 2,
        shankDiameterMm,
        clearanceMm,
      });
      if (room.roomToSwellMm >= swellMm - SAME_MM && room.roomToShrinkMm >= shrinkMm - SAME_MM)
        return 'leave it: screw in its middle';
      const inward = Math.max(0, screwFromInnerEndMm - holeMm / 2);
      const outward = Math.max(0, slotLengthMm - screwFromInnerEndMm - holeMm / 2);
      return `lengthen by ${say(outward)} away from the line, ${say(inward)} towards it`;
    }

    const [first, ...others] = slots;
    const longest = others.reduce(
      (a, b) => (b.slotLengthMm > a.slotLengthMm ? b : a),
      first as (typeof slots)[0],
    );
    const number = slots.indexOf(longest) + 1;
    const holding = slots.filter(
      ({ onLine, holeMm, slotLengthMm }) => onLine && (holeMm ?? 0) <= slotLengthMm + SAME_MM,
    );
    const covered = slots.every(({ washerDiameterMm }) => washerMm >= washerDiameterMm - SAME_MM);
    const faults = [
      ...(holding.length === 0
        ? ['Nothing holds the top in place: no screw stands on the fixed line in a hole that fits it.']
        : []),
      ...(covered
        ? []
        : [`The washer does not cover the slot all year: it takes ${say(longest.washerDiameterMm)}.`]),
    ];

    const panel = (toMoisturePct: number) => changeAt(longest.distanceMm, toMoisturePct);
    const { swellMm, shrinkMm, slotLengthMm, screwFromInnerEndMm, washerDiameterMm, holeMm } = longest;
    const slot = { shankDiameterMm, swellMm, shrinkMm, clearanceMm };
    const washer = { slotLengthMm, screwFromInnerEndMm, swellMm, shrinkMm, lapMm: 0 };
    const hole = holeMm !== null && {
      slotLengthMm: holeMm,
      screwFromInnerEndMm: holeMm / 2,
      shankDiameterMm,
      clearanceMm,
    };

    return {
      verdict: {
        good: faults.length === 0,
        says:
          faults.join(' ') || 'Held at its line, free everywhere else, and covered by its washers all year.',
      },
      figures: [
        { name: 'slotLengthMm', label: `Longest slot, row ${number}`, value: slotLengthMm, unit: 'mm' },
        {
          name: 'screwFromInnerEndMm',
          label: 'Its screw on the day, from the end nearer to the fixed line',
          value: screwFromInnerEndMm,
          unit: 'mm',
        },
        { name: 'swellMm', label: 'It travels out when wettest', value: swellMm, unit: 'mm' },
        { name: 'shrinkMm', label: 'and in when driest', value: shrinkMm, unit: 'mm' },
        {
          name: 'washerDiameterMm',
          label: 'Least washer that covers it',
          value: washerDiameterMm,
          unit: 'mm',
        },
      ],
      drawing: drawSlots({ widthMm, heldMm, slots, longest, shankDiameterMm, washerMm, say }),
      tables: [
        {
          caption: 'Row by row',
          columns: [
            { label: 'Row' },
            { label: 'From the fixed line', unit: 'mm' },
            { label: 'Out when wettest', unit: 'mm' },
            { label: 'In when driest', unit: 'mm' },
            { label: 'Slot needed', unit: 'mm' },
            { label: 'Screw from its inner end', unit: 'mm' },
            { label: 'What to do' },
          ],
          rows: slots.map((one, i) => [
            `${i + 1}`,
            one.distanceMm,
            one.swellMm,
            one.shrinkMm,
            one.slotLengthMm,
            one.screwFromInnerEndMm,
            one.work,
          ]),
        },
        {
          caption: 'Where to hold the top',
          columns: [
            { label: 'Held at' },
            { label: 'Longest slot', unit: 'mm' },
            { label: 'Front edge moves in a year', unit: 'mm' },
            { label: 'Back edge moves', unit: 'mm' },
            { label: 'A row stands there' },
          ],
          rows: Object.entries(lines).map(([name, words]) => {
            const at = lineMm[name as keyof typeof lines];
            const all = ys.map((yMm) => slotAt(yMm, at));
            const swing = (distanceMm: number) => {
              const travel = travelOf(distanceMm);
              return travel.swellMm + travel.shrinkMm;
            };
            return [
              words,
              Math.max(...all.map((one) => one.slotLengthMm)),
              swing(at),
              swing(widthMm - at),
              all.some(({ onLine }) => onLine) ? 'yes' : 'no',
            ];
          }),
        },
      ],
      reasons: [
        'Held in the middle the slots are shortest, as for a table used from all sides. Held at the front, that edge keeps its place, as for a desk; held at the back, as for a top against a wall.',
        'The inner end of a slot is the one nearer to the fixed line. Only the row on that line has a round hole.',
      ],
      steps: [
        {
          what: `Row ${number} by the wettest of the year`,
          rule: 'movement/width-change',
          given: panel(wettestPct),
          gives: widthChange(panel(wettestPct)),
        },
        {
          what: `Row ${number} by the driest of the year`,
          rule: 'movement/width-change',
          given: panel(driestPct),
          gives: widthChange(panel(driestPct)),
        },
        {
          what: `Slot of row ${number}`,
          rule: 'fastening/slot-length',
          given: slot,
          gives: { slotLengthMm, screwFromInnerEndMm },
        },
        {
          what: 'Washer that covers it',
          rule: 'fastening/washer-over-slot',
          given: washer,
          gives: { washerDiameterMm },
        },
        ...(hole
          ? [
              {
                what: 'Travel that the hole there allows',
                rule: 'fastening/slot-travel',
                given: hole,
                gives: slotTravel(hole),
              },
            ]
          : []),
      ],
    };
  },
});
