import { bothUnits, needed, signedMillimetres, thereIs } from './lengths.ts';
import type { Check, WorktopPlan } from './result.ts';

/** For a table whose heading names the unit. */
const bare = (text: string) => text.replace(' mm', '');

const section = (heading: string, lines: readonly string[]) =>
  [heading, ...lines.flatMap((line) => line.split('\n')).map((line) => `  ${line}`)].join('\n');

/** Rows as text, each column as wide as its widest cell. */
function columns(rows: readonly (readonly string[])[]): string[] {
  const widths = (rows[0] ?? []).map((_, i) => Math.max(...rows.map((row) => row[i]?.length ?? 0)));
  return rows.map((row) =>
    row
      .map((cell, i) => cell.padEnd(widths[i] ?? 0))
      .join('  ')
      .trimEnd(),
  );
}

function topSection({ plan: { top }, movement }: WorktopPlan): string {
  return section('Top', [
    ...columns([
      ['length', bothUnits(top.lengthMm)],
      ['width', bothUnits(top.widthMm)],
      ['thickness', bothUnits(top.thicknessMm)],
    ]),
    `${movement.species}, ${top.cut}, ${top.moisturePct} % moisture content on building day`,
  ]);
}

function yearSection({ movement }: WorktopPlan): string {
  const { driestMoisturePct, wettestMoisturePct, driestChangeMm, wettestChangeMm } = movement;
  return section('Width through the year', [
    `driest,  ${driestMoisturePct.toFixed(1)} % moisture content: ${signedMillimetres(driestChangeMm)}`,
    `wettest, ${wettestMoisturePct.toFixed(1)} % moisture content: ${signedMillimetres(wettestChangeMm)}`,
  ]);
}

function holesSection({ plan: { holes: grid }, holes, blockedHoles }: WorktopPlan): string {
  const word = grid.blocked === 'leave out' ? 'left out' : 'blocked';
  const rest = blockedHoles.length ? `, ${blockedHoles.length} ${word}` : '';
  return section('Holes', [
    `${holes.length} holes ⌀ ${bothUnits(grid.diameterMm)}${rest}`,
    ...columns([
      ['first, along the grain', bothUnits(grid.first.xMm)],
      ['first, across the grain', bothUnits(grid.first.yMm)],
      ['pitch along the grain', bothUnits(grid.pitchXMm)],
      ['pitch across the grain', bothUnits(grid.pitchYMm)],
    ]),
    'measured from the front-left corner seen from above; every hole stands in holes.csv',
  ]);
}

function slotsSection({ fixings, plan }: WorktopPlan): string {
  const rows = fixings.map(({ name, swellMm, shrinkMm, neededSlotMm, slotMm, screwFromInnerEndMm: room }) => [
    name,
    swellMm + shrinkMm > 0 ? `+${swellMm.toFixed(1)} / −${shrinkMm.toFixed(1)}` : 'none',
    bare(needed(neededSlotMm)),
    bare(thereIs(slotMm)),
    room ? `${bare(needed(room.leastMm))} to ${bare(thereIs(room.mostMm))}` : '–',
  ]);
  const heading = ['screw', 'travel', 'slot needed', 'slot', 'screw from inner end'];
  return section('Slots across the grain, mm', [
    ...columns([heading, ...rows]),
    `The top is held ${bothUnits(plan.base.fixedLineMm)} from the front; the inner end of a slot is the one nearer that line.`,
  ]);
}

function finishSection({ finish, plan: { finish: asked } }: WorktopPlan): string {
  const { areaM2, mixSolidsPct, spreadingRateM2PerL, volumeMl, mix } = finish;
  return section('Finish', [
    `${areaM2.toFixed(2)} m², ${asked.coats} coats of ${asked.dryFilmUm} µm dry film, ${asked.lossPct} % lost: ${Math.ceil(volumeMl)} mL`,
    `the mix has ${mixSolidsPct.toFixed(1)} % solids and spreads ${spreadingRateM2PerL.toFixed(1)} m²/L`,
    ...columns(
      mix.map((liquid) => [
        `${Math.ceil(liquid.volumeMl)} mL`,
        liquid.name,
        `(${liquid.onHandMl} mL on hand)`,
      ]),
    ),
  ]);
}

const checkLines = ({ status, title, says }: Check) =>
  [`${status.padEnd(4)}  ${title}`, ...says.split('\n').map((line) => `      ${line}`)].join('\n');

/**
 * The plan as plain text to read at the bench.
 *
 * @param result - A computed plan.
 * @returns Text, lines ended by line feeds.
 * @example
 * ```ts
 * import { planReport, planWorktop } from '@scantling/worktop';
 * import { binderyBench } from '@scantling/worktop/examples';
 * import { parsePlan } from '@scantling/worktop/schema';
 * planReport(planWorktop(parsePlan(binderyBench))).split('\n')[0] // => 'Bindery bench'
 * ```
 */
export function planReport(result: WorktopPlan): string {
  const { plan, checks, cautions } = result;
  return `${[
    plan.name,
    topSection(result),
    yearSection(result),
    holesSection(result),
    slotsSection(result),
    finishSection(result),
    section('Checks', checks.map(checkLines)),
    section('Cautions', cautions),
  ].join('\n\n')}\n`;
}
