import { plusZero } from '@scantling/rules';
import type { StepErrors } from './step-template.ts';
import { cornerOf, type Step, type Stepping } from './step-template-windows.ts';

/** How far off something may be, mm. */
export interface PositionError {
  readonly xMm: number;
  readonly yMm: number;
  /** Both together; of the worst case, nothing is farther off than this in any direction. */
  readonly distanceMm: number;
}

export interface ErrorPair {
  /** With every error at its limit, all in one direction. */
  readonly worstCase: PositionError;
  /** With errors that vary independently. */
  readonly rootSumSquare: PositionError;
}

/** What a small change of one number of interest comes from: of a hole's x, its y, or the way between two pins. */
interface Wish {
  readonly place: number;
  readonly x: number;
  readonly y: number;
}

interface Total {
  readonly worstMm: number;
  readonly squareMm2: number;
}

/**
 * The errors of a plan, to first order in small angles. The template is rigid. Its place is a shift and a turn: for the
 * first placement those that three contacts with the datum edges give, two on the longer side of the template; later
 * the shift is the mean of what its two pins are off by, and the turn their difference across the line between them,
 * divided by their span. A pin is off by what its bored hole is off by and by its play. Hole by hole this is followed
 * back to the datum, so an error that reaches a hole by several ways is counted once, with the sum of its ways.
 */
export function errorTracer(stepping: Stepping, steps: readonly Step[], limits: StepErrors) {
  const { columns, width, height, pitchXMm, pitchYMm } = stepping;
  const boredIn = new Map(steps.flatMap(({ bores }, i) => bores.map((place) => [place, i] as const)));
  const at = (place: number) =>
    [(place % columns) * pitchXMm, Math.floor(place / columns) * pitchYMm] as const;
  const playMm = [limits.playInTemplateMm / 2, limits.playInHoleMm / 2];
  const lengthMm = (width - 1) * pitchXMm;
  const depthMm = (height - 1) * pitchYMm;
  // Of each placement: where the shift is taken, from the panel's datum.
  const aboutOf = ({ placement, pins }: Step): readonly [number, number] => {
    const [column, row] = cornerOf(stepping, placement);
    if (!pins) return [column * pitchXMm, row * pitchYMm];
    const [[ax, ay], [bx, by]] = [at(pins.from), at(pins.to)];
    return [(ax + bx) / 2, (ay + by) / 2];
  };

  return function trace(wishes: readonly Wish[]): Total {
    let worstMm = 0;
    let squareMm2 = 0;
    const add = (coefficient: number, limitMm: number) => {
      worstMm += coefficient * limitMm;
      squareMm2 += (coefficient * limitMm) ** 2;
    };
    const shiftX = new Float64Array(steps.length);
    const shiftY = new Float64Array(steps.length);
    const turn = new Float64Array(steps.length);
    const boring = new Map<number, [number, number]>();
    let pitchX = 0;
    let pitchY = 0;
    /** The error of a bored hole: of its own boring, of the template's pitch, and of where the template stood. */
    const pass = (place: number, x: number, y: number) => {
      const step = boredIn.get(place) as number;
      const own = boring.get(place) ?? [0, 0];
      boring.set(place, [own[0] + x, own[1] + y]);
      const { placement } = steps[step] as Step;
      const [column, row] = cornerOf(stepping, placement);
      pitchX += x * ((place % columns) - column);
      pitchY += y * (Math.floor(place / columns) - row);
      const [px, py] = at(place);
      const [aboutX, aboutY] = aboutOf(steps[step] as Step);
      shiftX[step] = (shiftX[step] ?? 0) + x;
      shiftY[step] = (shiftY[step] ?? 0) + y;
      turn[step] = (turn[step] ?? 0) + y * (px - aboutX) - x * (py - aboutY);
    };
    for (const { place, x, y } of wishes) pass(place, x, y);
    for (let i = steps.length - 1; i > 0; i--) {
      const [x, y, t] = [shiftX[i] as number, shiftY[i] as number, turn[i] as number];
      if (x === 0 && y === 0 && t === 0) continue;
      const { pins, placement } = steps[i] as Step;
      if (!pins) continue;
      const [[ax, ay], [bx, by]] = [at(pins.from), at(pins.to)];
      const perTurn = t / pins.spanMm ** 2;
      const [turnX, turnY] = [-perTurn * (by - ay), perTurn * (bx - ax)];
      const [column, row] = cornerOf(stepping, placement);
      for (const [place, side] of [
        [pins.from, -1],
        [pins.to, 1],
      ] as const) {
        const [ofX, ofY] = [x / 2 + side * turnX, y / 2 + side * turnY];
        for (const limitMm of playMm) add(Math.hypot(ofX, ofY), limitMm);
        // A guide hole that is off sets the template off the other way.
        pitchX -= ofX * ((place % columns) - column);
        pitchY -= ofY * (Math.floor(place / columns) - row);
        pass(place, ofX, ofY);
      }
    }
    const [x, y, t] = [shiftX[0] as number, shiftY[0] as number, turn[0] as number];
    const alongFront = lengthMm >= depthMm;
    const perMm = t / Math.max(lengthMm, depthMm);
    // Two contacts on the longer side turn the template, the third only shifts it.
    const twice = alongFront ? y - perMm : x + perMm;
    add(Math.abs(twice), limits.datumErrorMm);
    add(Math.abs(perMm), limits.datumErrorMm);
    add(Math.abs(alongFront ? x : y), limits.datumErrorMm);
    add(Math.abs(pitchX), limits.templatePitchErrorMm);
    add(Math.abs(pitchY), limits.templatePitchErrorMm);
    for (const [ofX, ofY] of boring.values()) add(Math.hypot(ofX, ofY), limits.boringErrorMm);
    return { worstMm, squareMm2 };
  };
}

/** Errors of one hole, x and y. */
export function holeErrors(trace: ReturnType<typeof errorTracer>, place: number): ErrorPair {
  const x = trace([{ place, x: 1, y: 0 }]);
  const y = trace([{ place, x: 0, y: 1 }]);
  const both = (xMm: number, yMm: number): PositionError => ({
    xMm: plusZero(xMm),
    yMm: plusZero(yMm),
    distanceMm: Math.hypot(xMm, yMm),
  });
  return {
    worstCase: both(x.worstMm, y.worstMm),
    rootSumSquare: both(Math.sqrt(x.squareMm2), Math.sqrt(y.squareMm2)),
  };
}
