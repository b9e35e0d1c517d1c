import { type Limits, requireChoice, requireInputs, requireThat } from '@scantling/rules';
import { type BoredPanel, requireBoredPanel } from './bored-panel.ts';
import { decimal } from './decimal.ts';
import { drillingOrder } from './drilling-order.ts';

/** A panel, the holes that one drill makes in it, and how. Heights are above the panel's upper face. */
export interface DrillingInput extends Pick<BoredPanel, 'title' | 'panel'> {
  /** 1 to 20 000, all of one diameter, each with its centre on the panel. */
  readonly holes: BoredPanel['holes'];
  /** Where nothing stands in the way of a rapid move, mm, from the retract plane to 1000. */
  readonly safeHeightMm: number;
  /** Where feeding begins, mm, 0.1 to 1000. */
  readonly retractPlaneMm: number;
  /** Height of the moves from hole to hole: what stands up between them decides. */
  readonly betweenHolesAt: 'safe height' | 'retract plane';
  /** How far the drill's tip goes below the upper face, mm, 0.1 to 1000. */
  readonly depthMm: number;
  /** Depth drilled between two retracts that clear the chips, mm, 0.1 to the depth; left out, in one go. */
  readonly peckMm?: number;
  /** 1 to 20 000. */
  readonly feedMmPerMin: number;
  /** A whole number, 1 to 100 000. */
  readonly speedRpm: number;
  /** Pause in which the spindle comes up to speed, ms, 1 to 60 000; written in seconds, as NGC reads it; left out, none. */
  readonly spindleStartMs?: number;
}

const CALLER = 'drillingProgram';
const height: Limits = { min: 0.1, max: 1000 };

/** A word of the program: real numbers with a decimal point, so that no controller takes them for increments. */
function word(letter: string, value: number): string {
  const text = decimal(value);
  return letter + (text.includes('.') ? text : `${text}.0`);
}

/** Longest text of a comment, so that with its parentheses and other words a line stays below 256 characters. */
const COMMENT_LENGTH = 200;

/** A comment: ASCII, no parentheses inside (a comment ends at the first one that closes), accents dropped. */
function comment(text: string): string {
  const plain = text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replaceAll('(', '[')
    .replaceAll(')', ']')
    .replace(/[^\x20-\x7e]/gu, '?');
  return `(${plain.slice(0, COMMENT_LENGTH)})`;
}

const cautions = [
  'Nothing here knows your machine: its own manual says what it may do, and holds where it differs.',
  'Compare every word, the units, the heights, the feed and the speed with that manual first.',
  'Check the zero: X0 Y0 is the front-left corner of the panel seen from above, X along the grain.',
  'Check that Z0 is the upper face of the panel, and that Z is positive upwards.',
  'Clamp the panel on a backing board, and keep every clamp out of the way of the moves.',
  'Prove it in the air first, with zero set well above the work and a hand on the stop.',
  'Eye and hearing protection on, dust collection running, hands and sleeves away.',
];

function checkInput(input: DrillingInput): void {
  requireBoredPanel(CALLER, input, 1);
  const { holes, safeHeightMm, retractPlaneMm, depthMm, peckMm, feedMmPerMin, speedRpm, spindleStartMs } =
    input;
  const [{ diameterMm } = { diameterMm: Number.NaN }] = holes;
  const other = holes.findIndex((hole) => hole.diameterMm !== diameterMm);
  requireThat(
    CALLER,
    other < 0,
    `holes[${other}].diameterMm to be ${diameterMm} as that of holes[0], got ${holes[other]?.diameterMm}: one program, one drill`,
  );
  requireInputs(
    CALLER,
    { retractPlaneMm, depthMm, feedMmPerMin, speedRpm },
    {
      retractPlaneMm: height,
      depthMm: height,
      feedMmPerMin: { min: 1, max: 20_000 },
      speedRpm: { min: 1, max: 100_000, integer: true },
    },
  );
  requireInputs(CALLER, { safeHeightMm }, { safeHeightMm: { min: retractPlaneMm, max: height.max } });
  if (peckMm !== undefined) requireInputs(CALLER, { peckMm }, { peckMm: { min: height.min, max: depthMm } });
  if (spindleStartMs !== undefined)
    requireInputs(CALLER, { spindleStartMs }, { spindleStartMs: { min: 1, max: 60_000 } });
  requireChoice(CALLER, 'betweenHolesAt', input.betweenHolesAt, ['safe height', 'retract plane']);
}

/** What the program is for, in its first lines. */
function heading({ title, holes, depthMm, peckMm }: DrillingInput): string[] {
  const [hole] = holes;
  const pecks = peckMm === undefined ? 'in one go' : `in pecks of ${decimal(peckMm)} mm`;
  return [
    `Drilling program, RS-274 words, millimetres${title === undefined ? '' : `: ${title}`}`,
    `${holes.length} holes of ${decimal(hole?.diameterMm ?? 0)} mm, ${decimal(depthMm)} mm deep at the tip, ${pecks}`,
    ...cautions,
  ];
}

/**
 * A program that drills the holes, in words of RS-274 as its NGC dialect defines them: millimetres, absolute
 * positions, a canned cycle (G81, or G83 with pecks) for each hole, row by row from the front, there and back. X and
 * Y count from the front-left corner of the panel seen from above, Z from its upper face, upwards. The retract plane
 * is where feeding begins; no rapid move goes below it but those that re-enter a hole between two pecks.
 *
 * Nothing here knows your machine: its manual and the cautions in the program's first lines come before it.
 *
 * @param input - The panel, its holes, and every height, depth, feed and speed: none has a default.
 * @returns The text of the program: ASCII, lines of at most 256 characters, lengths to a thousandth of a millimetre.
 * @throws RangeError where a field is missing or outside its limits, by its path: `holes[3].xMm`; where holes have
 *   different diameters.
 * @example
 * ```ts
 * import { drillingProgram } from '@scantling/grids/export';
 * const program = drillingProgram({
 *   panel: { lengthMm: 600, widthMm: 400 },
 *   holes: [
 *     { xMm: 60, yMm: 56, diameterMm: 20 },
 *     { xMm: 156, yMm: 56, diameterMm: 20 },
 *   ],
 *   safeHeightMm: 25,
 *   retractPlaneMm: 3,
 *   betweenHolesAt: 'safe height',
 *   depthMm: 42,
 *   peckMm: 14,
 *   feedMmPerMin: 300,
 *   speedRpm: 1500,
 * });
 * program.split('\n').filter((line) => line && !line.startsWith('(')) // => ['G21', 'G17 G90 G94 G40 G80', 'G0 Z25.0', 'S1500 M3', 'G98 G83 X60.0 Y56.0 Z-42.0 R3.0 Q14.0 F300.0', 'X156.0 Y56.0', 'G80', 'G0 Z25.0', 'M5', 'M2']
 * ```
 */
export function drillingProgram(input: DrillingInput): string {
  checkInput(input);
  const { holes, safeHeightMm, retractPlaneMm, depthMm, peckMm, feedMmPerMin, speedRpm, spindleStartMs } =
    input;
  const [first, ...others] = drillingOrder(holes, (holes[0]?.diameterMm ?? 0) / 2).map(
    ({ xMm, yMm }) => `${word('X', xMm)} ${word('Y', yMm)}`,
  );
  const returning = input.betweenHolesAt === 'safe height' ? 'G98' : 'G99';
  const cycle = [
    `${returning} ${peckMm === undefined ? 'G81' : 'G83'} ${first}`,
    word('Z', -depthMm),
    word('R', retractPlaneMm),
    ...(peckMm === undefined ? [] : [word('Q', peckMm)]),
    word('F', feedMmPerMin),
  ];
  const toSafeHeight = `G0 ${word('Z', safeHeightMm)}`;
  const lines = [
    ...heading(input).map(comment),
    'G21',
    'G17 G90 G94 G40 G80',
    toSafeHeight,
    `S${speedRpm} M3`,
    ...(spindleStartMs === undefined ? [] : [`G4 ${word('P', spindleStartMs / 1000)}`]),
    cycle.join(' '),
    ...others,
    'G80',
    toSafeHeight,
    'M5',
    'M2',
  ];
  return `${lines.join('\n')}\n`;
}
