import type { Drawing } from '../calculator/calculation.ts';
import { piece } from '../calculator/piece.ts';
import { along, axisBelow, axisLeft, roundSteps } from './axis.ts';
import { dimension } from './dimension.ts';
import { label } from './marks.ts';
import { SHEET_WIDTH, short, through } from './sheet.ts';

const LEFT = 40;
const RIGHT = SHEET_WIDTH - 74;
const TOP = 34;
const BOTTOM = 250;
/** From the curve's last month to the dimensions. */
const BESIDE = 34;

export interface DrawnYear {
  /** Moisture content of every month. */
  readonly monthsPct: readonly number[];
  /** Months that were read, 0 for January. */
  readonly readMonths: readonly number[];
  /** At make-up. */
  readonly moisturePct: number;
  readonly driestPct: number;
  readonly wettestPct: number;
  /** Lengths as they are said. */
  readonly driestChange: string;
  readonly wettestChange: string;
  readonly width: string;
}

/** Moisture content over the months: the width changes in step with it, so its changes are dimensions on the same curve. */
export function drawYear(drawn: DrawnYear): Drawing {
  const { monthsPct, readMonths, moisturePct, driestPct, wettestPct, driestChange, wettestChange, width } =
    drawn;
  const lowest = Math.min(driestPct, moisturePct) - 0.5;
  const highest = Math.max(wettestPct, moisturePct) + 0.5;
  const x = along(0, 11, LEFT + 14, RIGHT - 14);
  const y = along(lowest, highest, BOTTOM, TOP);
  const curve = monthsPct.map((pct, month) => [x(month), y(pct)] as const);
  const zero = short(y(moisturePct));
  const right = RIGHT - 14;
  const change = (pct: number, away: number, text: string) => {
    const [low, high] = [Math.min(pct, moisturePct), Math.max(pct, moisturePct)];
    return high - low < 1e-6 ? [] : [dimension([right, y(low)], [right, y(high)], away, text)];
  };
  return {
    title: `Moisture content month by month, with the change of the width from make-up at ${moisturePct} %: ${driestChange} when driest, ${wettestChange} when wettest`,
    box: [0, 0, SHEET_WIDTH, BOTTOM + 32],
    shapes: [
      axisBelow(
        [LEFT, BOTTOM],
        RIGHT - LEFT,
        [...'JFMAMJJASOND'].map((text, month) => ({ at: x(month), text })),
      ),
      axisLeft(
        [LEFT, BOTTOM],
        BOTTOM - TOP,
        RIGHT - LEFT,
        roundSteps(lowest, highest, 6).map((pct) => ({ at: y(pct), text: `${pct}` })),
      ),
      label([4, 16], 'moisture content, %', 'start', 'remark'),
      piece('path', { class: 'centre', d: `M${LEFT} ${zero}H${right + BESIDE * 2}` }),
      piece('path', { class: 'curve', d: through(curve) }),
      readMonths.map((month) =>
        piece('circle', {
          class: 'metal',
          cx: short(x(month)),
          cy: short(y(monthsPct[month] as number)),
          r: 4,
        }),
      ),
      label([LEFT + 8, y(moisturePct) - 6], `make-up, ${width} wide`, 'start'),
      ...change(driestPct, BESIDE, driestChange),
      ...change(wettestPct, BESIDE, wettestChange),
    ].flat(),
  };
}
