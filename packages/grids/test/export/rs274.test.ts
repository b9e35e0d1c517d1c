import { describe, expect, test } from 'vitest';
import { readLine, run, type Spot } from './rs274.ts';

/** A place and the moves from there, as kind and destination. */
const movesOf = (program: string, start: Spot) =>
  run(program, start).moves.map(({ kind, to }) => [kind, ...to.map((value) => Number(value.toFixed(9)))]);

describe('the interpreter does what published examples say', () => {
  test('NISTIR 6556, 3.5.16.2, example 1: G81 in absolute mode, back to the old Z', () => {
    expect(movesOf('G90 G81 G98 X4 Y5 Z1.5 R2.8', [1, 2, 3])).toEqual([
      ['traverse', 4, 5, 3],
      ['traverse', 4, 5, 2.8],
      ['feed', 4, 5, 1.5],
      ['traverse', 4, 5, 3],
    ]);
  });

  test('NISTIR 6556, 3.5.16.2, example 2: three repeats in incremental mode, old Z below R', () => {
    expect(movesOf('G91 G81 G98 X4 Y5 Z-0.6 R1.8 L3', [1, 2, 3])).toEqual([
      ['traverse', 1, 2, 4.8],
      ['traverse', 5, 7, 4.8],
      ['feed', 5, 7, 4.2],
      ['traverse', 5, 7, 4.8],
      ['traverse', 9, 12, 4.8],
      ['feed', 9, 12, 4.2],
      ['traverse', 9, 12, 4.8],
      ['traverse', 13, 17, 4.8],
      ['feed', 13, 17, 4.2],
      ['traverse', 13, 17, 4.8],
    ]);
  });

  // The EMC Handbook, "G98 G99" (emc.sourceforge.net/Handbook/node78.html): back to 1.8, and with G98 to OLD_Z, 3.
  test.each([
    ['G99', 1.8],
    ['G98', 3],
  ])('EMC Handbook: %s comes back to Z %f', (returning, z) => {
    const program = `N01 G0 X1 Y2 Z3\nN02 G90 G81 ${returning} X4 Y5 Z-0.6 R1.8`;
    expect(run(program, [0, 0, 10]).end).toEqual([4, 5, z]);
  });

  test('EMC Handbook (node70.html): G82 dwells two seconds at the bottom', () => {
    const { dwells, end } = run('G90 G82 G98 X4 Y5 Z1.5 R2.8 P2', [1, 2, 3]);
    expect([dwells, end]).toEqual([[{ at: [4, 5, 1.5], seconds: 2 }], [4, 5, 3]]);
  });

  test('four holes with one cycle (a course of ten cycles, cloud.tencent.com/developer/news/1339495)', () => {
    const program = 'G90 G0 X0 Y0 Z30\nG81 G99 X10 Y10 Z-15 R5 F20\nX50\nY30\nX10\nG80\nG0 Z30';
    const { moves, end } = run(program, [0, 0, 50]);
    const holes = moves.filter(({ kind }) => kind === 'feed').map(({ to }) => to);
    expect(holes).toEqual([
      [10, 10, -15],
      [50, 10, -15],
      [50, 30, -15],
      [10, 30, -15],
    ]);
    expect(moves.filter(({ to, from }) => to[0] !== from[0] && from[2] === 5)).toHaveLength(2);
    expect(end).toEqual([10, 30, 30]);
  });

  // NISTIR 6556, 3.5.16.4, its five steps by hand: from R 1 by 1.2 to −0.2, to −1.4, then to Z −2; back to the clear Z
  // each time, and down again to 0.254 above the bottom.
  test.each([
    ['G98', 3],
    ['G99', 1],
  ])('G83 with %s clears the hole after each peck', (returning, clear) => {
    expect(movesOf(`G90 ${returning} G83 X7 Y8 Z-2 R1 Q1.2`, [7, 8, 3])).toEqual([
      ['traverse', 7, 8, 1],
      ['feed', 7, 8, -0.2],
      ['traverse', 7, 8, clear],
      ['traverse', 7, 8, 0.054],
      ['feed', 7, 8, -1.4],
      ['traverse', 7, 8, clear],
      ['traverse', 7, 8, -1.146],
      ['feed', 7, 8, -2],
      ['traverse', 7, 8, clear],
    ]);
  });

  test('NISTIR 6556, 3.3: spaces and case mean nothing outside comments', () => {
    expect(readLine('g0x +0. 12 34y 7')).toEqual(readLine('g0 x+0.1234 y7'));
    expect(readLine('G80 M5 (stop motion)')).toEqual({ g: { motion: 80 }, m: { spindle: 5 }, words: {} });
  });

  test('NISTIR 6556, 3.6.1: nothing after M2 is executed, and it stops the spindle', () => {
    const { moves, ended, spindleTurns } = run('S100 M3\nM2\nG0 X1', [0, 0, 9]);
    expect([moves, ended, spindleTurns]).toEqual([[], true, false]);
  });
});

describe('the interpreter refuses what NISTIR 6556 calls an error', () => {
  test.each([
    ['3.3: a longer line', `(${'x'.repeat(255)})`, 'more than 256 characters'],
    ['3.3.2.1: an exponent', 'G0 X1e3', 'cannot read "E3"'],
    ['3.3.2.1: two points', 'G0 X1.2.3', 'cannot read ".3"'],
    ['3.3.4: an open comment', 'G0 X1 (so', 'a comment is not closed'],
    ['3.3.4: a comment in a comment', '(a (b) c)', 'a comment is not closed, or stands in another'],
    ['3.3.5: two words of one letter', 'G0 X1 X2', 'two X words'],
    ['3.3.5: two words of one group', 'G0 G1 X1', 'two words of the group motion'],
    ['3.3.5: two M words of one group', 'M3 M5', 'two words of the group spindle'],
    ['3.5.1: no axis words', 'G0', 'all axis words are omitted'],
    ['3.5.4: a negative dwell', 'G4 P-1', 'the P number is missing or negative'],
    ['3.5.15: axis words under G80', 'G80\nX1', 'axis words when G80 is active'],
    ['3.5.16: X, Y and Z all missing', 'G98 G81 R1', 'X, Y, and Z words are all missing'],
    ['3.5.16: no Z the first time', 'G98 G81 X1 R1', 'the R or the Z number is missing'],
    ['3.5.16: Z of another cycle', 'G98 G81 X1 Z-1 R1\nG83 X2 R1 Q1', 'the R or the Z number is missing'],
    ['3.5.16: R below Z', 'G98 G81 X1 Z2 R1', 'the R number is less than the Z number'],
    ['3.5.16: L of 0', 'G98 G81 X1 Z-1 R1 L0', 'L is no positive integer'],
    ['3.5.16.4: Q of 0', 'G98 G83 X1 Z-1 R1 Q0', 'the Q number is missing, negative or zero'],
    ['3.5.16.4: no Q', 'G98 G83 X1 Z-1 R1', 'the Q number is missing, negative or zero'],
    ['3.7.2: a negative speed', 'S-1', 'the S number is negative'],
    ['a word without use', 'G0 X1 R2', 'nothing uses the R word'],
    ['a word that it does not know', 'G5 X1', 'unknown word G5'],
  ])('%s', (_, program, why) => {
    expect(() => run(program, [0, 0, 9])).toThrow(why);
  });
});
