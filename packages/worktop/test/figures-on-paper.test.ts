import { expect, test } from 'vitest';
import { binderyBench } from '../src/examples.ts';
import { planReport, planWorktop, type WorktopPlan, workSheet } from '../src/index.ts';
import { parsePlan } from '../src/schema.ts';

/** What stands in a list that has it. */
function got<T>(value: T | null | undefined): T {
  if (value == null) throw new Error('not planned');
  return value;
}

const whole = planWorktop(parsePlan(binderyBench));
const fixing = got(whole.fixings[0]);
const strip = got(whole.strip);
const sag = got(got(whole.sag).sag);
const glueUp = got(whole.glueUp);
const screw = got(strip.screws[0]);
const coat = got(got(whole.calendar).steps.find(({ does }) => does !== 'turn'));

/** A finished plan whose figures are given here, each another, so that none can stand in for its neighbour. */
const given: WorktopPlan = {
  ...whole,
  movement: { ...whole.movement, driestChangeMm: -3.44, wettestChangeMm: 7.26 },
  finish: {
    ...whole.finish,
    eachCoat: { ...whole.finish.eachCoat, mixMl: 110.4, productMl: 70.2, thinnerMl: 40.2 },
  },
  glueUp: { ...glueUp, clamping: { ...got(glueUp.clamping), spacingMm: 95.87 } },
  fixings: [
    {
      ...fixing,
      ...{ name: 'first', xMm: 231, yMm: 72, swellMm: 2.94, shrinkMm: 1.31 },
      ...{ neededSlotMm: 11.21, slotMm: 14.09, coveringWasherMm: 18.21 },
      screwFromInnerEndMm: { leastMm: 4.81, mostMm: 7.69 },
    },
    { ...fixing, name: 'second', xMm: 233, yMm: 74, screwFromInnerEndMm: null },
  ],
  strip: {
    ...strip,
    start: { ...strip.start, gapMm: 0.541 },
    end: { ...strip.end, gapMm: 1.718 },
    screws: [{ ...screw, atMm: 41, slot: { ...got(screw.slot), lengthMm: 4.81 } }],
  },
  sag: {
    ...got(whole.sag),
    sag: { ...sag, left: { ...sag.left, leastReactionN: 263.9, mostReactionN: 623.1 } },
  },
  calendar: {
    ...got(whole.calendar),
    steps: [{ ...coat, face: 'top', position: 2, dayIndex: 3, clockHours: 8.5, sandFirst: true }],
  },
};

const stepOf = (stage: string) => got(workSheet(given).steps.find((step) => step.stage === stage));
const tasks = (stage: string) => stepOf(stage).tasks.join('\n');
const value = (stage: string, name: string) =>
  stepOf(stage).settings.find((setting) => setting.name === name)?.value;

test('the sheet: what is needed goes up, what there is goes down, each in its place', () => {
  expect(value('finish', 'mix for one coat')).toBe('71 mL of varnish and 41 mL of mineral spirits');
  expect(value('glue', 'first clamp from the end')).toBe('47.9 mm');
  expect(value('glue', 'from clamp to clamp')).toBe('95.8 mm');
  expect(value('fix', 'gaps at the ends of the strip')).toBe('0.55 mm, 1.72 mm');
  expect(tasks('rabbet')).toContain('Drill the strip, from its start: 41.0 mm (slot of 4.9 mm).');
  expect(tasks('mark')).toContain('x and y: first 231, 72; second 233, 74.');
  expect(tasks('finish')).toContain('Day 3, 8:30: sand, then coat 2, top and edges.');
  expect(tasks('fix')).toContain(
    'first, x 231.0 mm, y 72.0 mm: slot of 14.0 mm across the grain; screw 4.9 mm to 7.6 mm from the end nearer the fixed line.',
  );
  expect(tasks('fix')).toMatch(/^second, .*; screw in the middle\.$/m);
});

test('the sheet bores for the screws where the holes are drilled, and drives them where the base is fixed', () => {
  const steps = got(whole.screws).settings.flatMap((setting) => setting.steps);
  const bored = steps.filter(({ operation }) => operation !== 'drive');
  expect(bored.length).toBeGreaterThan(2);
  expect(bored.length).toBeLessThan(steps.length);
  for (const { says } of bored) expect(tasks('drill')).toContain(says);
  expect(tasks('drill')).toContain('From below, for');
  expect(tasks('drill')).not.toMatch(/^Drive /m);
  expect(tasks('fix')).toMatch(/^Drive the screws on the fixed line first\./m);
});

test('the report: the same', () => {
  const report = planReport(given).replace(/ +/g, ' ');
  expect(report).toContain('\n first +2.9 / −1.3 11.3 14.0 4.9 to 7.6 18.3\n');
  expect(report).toContain('gap to leave at its ends: 0.55 mm and 1.72 mm\n');
  expect(report).toContain(`${sag.left.name} carries 263 N to 624 N\n`);
  expect(report).toMatch(/driest, [\d.]+ % moisture content: −3\.4 mm\n/);
  expect(report).toMatch(/wettest, [\d.]+ % moisture content: \+7\.3 mm\n/);
  expect(report).toMatch(/each coat \d+ µm wet: 111 mL, 71 mL of varnish and 41 mL of mineral spirits\n/);
  expect(report).toContain('clamps of 4.5 kN, 95.8 mm apart');
  expect(report).toMatch(/first, along the grain 68\.0 mm .*\n first, across the grain 160\.0 mm /);
  expect(report).toMatch(/1\. first hole on row 1, column 1 against the front and left edges/);
  expect(report).toMatch(/2\. first hole on row \d, column \d+ pins in row/);
  expect(report).toContain('day 3 8:30 coat 2, top and edges sand first\n');
});
