/**
 * An interpreter of the words that a drilling program needs, after the public description of the language: The NIST
 * RS274/NGC Interpreter, Version 3 (NISTIR 6556, August 2000). Sections below are those of that report; a reprint was
 * read. It refuses whatever the report calls an error and whatever it does not know.
 */

export type Spot = readonly [x: number, y: number, z: number];

export interface Move {
  readonly kind: 'traverse' | 'feed';
  readonly from: Spot;
  readonly to: Spot;
  /** As programmed when the move began; 0 where nothing was. */
  readonly feedRate: number;
  readonly spindleSpeed: number;
  /** G20 or G21; 0 where neither was said. */
  readonly unit: number;
}

export interface Run {
  readonly moves: readonly Move[];
  readonly dwells: readonly { readonly at: Spot; readonly seconds: number }[];
  readonly end: Spot;
  /** M2 or M30 was reached. */
  readonly ended: boolean;
  readonly spindleTurns: boolean;
}

/** 3.4, Table 4: of one group only one word may stand on a line. */
const gGroups: Record<string, readonly number[]> = {
  motion: [0, 1, 80, 81, 82, 83],
  plane: [17],
  distance: [90, 91],
  'feed rate mode': [94],
  units: [20, 21],
  'radius compensation': [40],
  'return mode': [98, 99],
  'non-modal': [4],
};
const mGroups: Record<string, readonly number[]> = { stopping: [2, 30], spindle: [3, 4, 5] };

const groupOf = (groups: Record<string, readonly number[]>, code: number) =>
  Object.keys(groups).find((group) => groups[group]?.includes(code));

interface Block {
  readonly g: Record<string, number>;
  readonly m: Record<string, number>;
  /** Every other word by its letter. */
  readonly words: Record<string, number>;
}

function refuse(line: string, why: string): never {
  throw new Error(`${why}: ${line}`);
}

/** 3.3: a line is comments and words; 3.3.5: what may be repeated. */
export function readLine(line: string): Block {
  if (line.length > 256) refuse(line, 'more than 256 characters');
  const bare = line.replace(/\([^()]*\)/g, '');
  if (/[()]/.test(bare)) refuse(line, 'a comment is not closed, or stands in another');
  let rest = bare.replace(/[ \t]/g, '').toUpperCase();
  rest = rest.replace(/^N\d{1,5}(?!\d)/, '');
  const block: Block = { g: {}, m: {}, words: {} };
  while (rest) {
    // 3.3.2.1: a sign, digits, one point, digits; no exponent.
    const [all, letter = '', digits] = /^([A-Z])([+-]?(?:\d+\.?\d*|\.\d+))/.exec(rest) ?? [];
    if (!all || !'FGLMPQRSXYZ'.includes(letter)) refuse(line, `cannot read "${rest}"`);
    const value = Number(digits);
    rest = rest.slice(all.length);
    if (letter !== 'G' && letter !== 'M') {
      if (letter in block.words) refuse(line, `two ${letter} words`);
      block.words[letter] = value;
      continue;
    }
    const [groups, taken] = letter === 'G' ? [gGroups, block.g] : [mGroups, block.m];
    const group = groupOf(groups, value) ?? refuse(line, `unknown word ${letter}${digits}`);
    if (group in taken) refuse(line, `two words of the group ${group}`);
    taken[group] = value;
  }
  return block;
}

/** 3.5.16.4 says "backed off a bit" of G83; the interpreter's code has 0.010 in. */
const backedOff = (unit: number) => (unit === 20 ? 0.01 : 0.254);

/** Runs a program from a place above the work. */
export function run(program: string, start: Spot): Run {
  const moves: Move[] = [];
  const dwells: { at: Spot; seconds: number }[] = [];
  const mode: Record<string, number> = {};
  let at = start;
  let [feedRate, speed, ended, spindleTurns] = [0, 0, false, false];
  let sticky: Block['words'] = {};

  const move = (kind: Move['kind'], to: Spot) => {
    const spindleSpeed = spindleTurns ? speed : 0;
    moves.push({ kind, from: at, to, feedRate, spindleSpeed, unit: mode.units ?? 0 });
    at = to;
  };
  const traverseTo = (to: Spot) => {
    if (to.some((value, i) => value !== at[i])) move('traverse', to);
  };

  /** 3.5.16: what G81, G82 and G83 have in common, and what they do at the hole. */
  function cycle(line: string, code: number, words: Block['words'], wasActive: boolean): void {
    if (!['X', 'Y', 'Z'].some((axis) => axis in words)) refuse(line, 'X, Y, and Z words are all missing');
    // 3.5.16: R and Z keep their values while the cycle stays the same; in the interpreter's code so do P and Q.
    const kept = wasActive ? sticky : {};
    sticky = { ...kept, ...words };
    const { R, Z, Q = Number.NaN, P = Number.NaN } = sticky;
    const { L = 1 } = words;
    if (R === undefined || Z === undefined) refuse(line, 'the R or the Z number is missing');
    if (!(Number.isInteger(L) && L > 0)) refuse(line, 'L is no positive integer');
    if (code === 83 && !(Q > 0)) refuse(line, 'the Q number is missing, negative or zero');
    if (code === 82 && !(P >= 0)) refuse(line, 'the P number is missing or negative');
    if (mode['return mode'] === undefined) refuse(line, 'neither G98 nor G99');
    const incremental = mode.distance === 91;
    const oldZ = at[2];
    const clearR = incremental ? oldZ + R : R;
    const bottom = incremental ? clearR + Z : Z;
    if (clearR < bottom) refuse(line, 'the R number is less than the Z number');
    // 3.5.20
    const clearZ = mode['return mode'] === 98 ? Math.max(oldZ, clearR) : clearR;
    if (oldZ < clearR) traverseTo([at[0], at[1], clearR]);
    for (let repeat = 0; repeat < L; repeat++) {
      const x = incremental ? at[0] + (words.X ?? 0) : (words.X ?? at[0]);
      const y = incremental ? at[1] + (words.Y ?? 0) : (words.Y ?? at[1]);
      traverseTo([x, y, at[2]]);
      traverseTo([x, y, clearR]);
      if (code === 83) {
        for (let depth = clearR - Q; depth > bottom; depth -= Q) {
          move('feed', [x, y, depth]);
          traverseTo([x, y, clearZ]);
          traverseTo([x, y, depth + backedOff(mode.units ?? 0)]);
        }
      }
      move('feed', [x, y, bottom]);
      if (code === 82) dwells.push({ at, seconds: P });
      traverseTo([x, y, clearZ]);
    }
  }

  /** 3.8, Table 8: the order in which what stands on a line is done. */
  function execute(line: string): void {
    const { g, m, words } = readLine(line);
    feedRate = words.F ?? feedRate;
    speed = words.S ?? speed;
    if (speed < 0) refuse(line, 'the S number is negative');
    if ('spindle' in m) spindleTurns = m.spindle !== 5;
    if ('non-modal' in g) {
      if (!((words.P ?? -1) >= 0)) refuse(line, 'the P number is missing or negative');
      dwells.push({ at, seconds: words.P as number });
    }
    const before = mode.motion;
    Object.assign(mode, g);
    const code = mode.motion ?? -1;
    const axes = ['X', 'Y', 'Z'].filter((axis) => axis in words);
    const moving = axes.length > 0 || ('motion' in g && code !== 80);
    const uses = moving ? ({ 81: 'RL', 82: 'RLP', 83: 'RLQ' }[code] ?? '') : '';
    const idle = ['R', 'L', 'P', 'Q'].find(
      (letter) => letter in words && !uses.includes(letter) && !(letter === 'P' && 'non-modal' in g),
    );
    if (idle) refuse(line, `nothing uses the ${idle} word`);
    if (moving) {
      if (code === -1) refuse(line, 'no motion mode was ever said');
      if (code === 80) refuse(line, 'axis words when G80 is active');
      if (code >= 81) cycle(line, code, words, before === code);
      else {
        if (axes.length === 0) refuse(line, 'all axis words are omitted');
        const along = (axis: string, i: 0 | 1 | 2) =>
          mode.distance === 91 ? at[i] + (words[axis] ?? 0) : (words[axis] ?? at[i]);
        const to = [along('X', 0), along('Y', 1), along('Z', 2)] as const;
        if (code === 0) traverseTo(to);
        else move('feed', to);
      }
    }
    if ('stopping' in m) [ended, spindleTurns] = [true, false];
  }

  for (const line of program.split(/\r?\n/)) {
    if (ended) break;
    execute(line);
  }
  return { moves, dwells, end: at, ended, spindleTurns };
}
