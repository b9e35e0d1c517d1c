import { requireChoice, requireInputs, requireList, requireThat } from '@scantling/rules';

const side = { min: 1, max: 20_000 };
const taken = { min: 0, max: 500 };
const limits = {
  lengthMm: side,
  widthMm: { min: 1, max: 5000 },
  thicknessMm: { min: 1, max: 500 },
  leastWidthMm: { min: 1, max: 2000 },
  mostWidthMm: { min: 1, max: 2000 },
  leastBoardCount: { min: 1, max: 200, integer: true },
  planingMm: taken,
  jointingMm: taken,
  flatteningMm: taken,
  trimWidthMm: taken,
  trimLengthMm: taken,
  densityKgPerM3: { min: 50, max: 2000 },
} as const;
const ringAngles = { min: 0, max: 90, minItems: 1, maxItems: 200 };

/** Whether the hearts of the boards look up and down by turns, or all the same way. */
export type BoardOrder = 'alternate' | 'match';

export interface PlanPanelInput {
  /** Of the finished top, along the grain, mm, 1 to 20 000. */
  readonly lengthMm: number;
  /** Of the finished top, across the grain, mm, 1 to 5000. */
  readonly widthMm: number;
  /** Of the finished top, mm, 1 to 500. */
  readonly thicknessMm: number;
  /** Narrowest rough boards on offer, mm, 1 to 2000. */
  readonly leastWidthMm: number;
  /** Widest rough boards on offer, or wanted, mm, 1 to 2000. */
  readonly mostWidthMm: number;
  /** As many boards at least, 1 to 200: many narrow boards stay flatter than few wide ones. */
  readonly leastBoardCount: number;
  /** Off the thickness of each board before it is glued, both faces together, mm, 0 to 500. */
  readonly planingMm: number;
  /** Off the width of each board before it is glued, both edges together, mm, 0 to 500. */
  readonly jointingMm: number;
  /** Off the thickness of the panel once it is glued, both faces together, mm, 0 to 500. */
  readonly flatteningMm: number;
  /** Off the width of the panel, both edges alike, together, mm, 0 to 500. */
  readonly trimWidthMm: number;
  /** Off the length of the panel, both ends together, mm, 0 to 500. */
  readonly trimLengthMm: number;
  /** Of the wood as it is, kg/m³, 50 to 2000. */
  readonly densityKgPerM3: number;
  readonly order: BoardOrder;
  /** Between growth rings and wide face at the end grain, 0° to 90°: one for all boards, or one for each. */
  readonly ringAnglesDeg: readonly number[];
}

/** A board in its place in the finished top. */
export interface PlacedBoard {
  /** Which way its heart looks. */
  readonly heart: 'up' | 'down';
  /** From the front edge of the finished top to its own, mm. */
  readonly fromFrontMm: number;
  /** In the finished top, mm: outer boards are trimmed. */
  readonly widthMm: number;
  /** mm. */
  readonly thicknessMm: number;
  readonly ringAngleDeg: number;
}

/** The wood at one stage of the work. */
export interface PanelStage {
  readonly name: 'rough boards' | 'planed and jointed' | 'glued and flattened' | 'trimmed to size';
  readonly volumeM3: number;
  readonly massKg: number;
}

export interface PanelPlan {
  readonly boardCount: number;
  /** Of each rough board, along the grain, mm. */
  readonly roughLengthMm: number;
  /** Each rough board must be at least so wide, mm. */
  readonly roughWidthMm: number;
  /** Each rough board must be at least so thick, mm. */
  readonly roughThicknessMm: number;
  /** Rough boards are bought so wide, mm: wider than needed only where narrower ones are not on offer. */
  readonly boughtWidthMm: number;
  /** From the front edge to the back edge. */
  readonly boards: readonly PlacedBoard[];
  readonly jointCount: number;
  /** Thickness of the boards when they are glued, mm. */
  readonly gluedThicknessMm: number;
  /** Of all joints, m². */
  readonly glueLineM2: number;
  readonly stages: readonly PanelStage[];
}

function requirePanel(input: PlanPanelInput): void {
  requireInputs('planPanel', input, limits);
  requireChoice('planPanel', 'order', input.order, ['alternate', 'match']);
  requireList('planPanel', 'ringAnglesDeg', input.ringAnglesDeg, ringAngles);
  const { leastWidthMm, mostWidthMm, jointingMm } = input;
  requireThat(
    'planPanel',
    leastWidthMm <= mostWidthMm && jointingMm < mostWidthMm,
    `mostWidthMm from leastWidthMm ${leastWidthMm} on and above jointingMm ${jointingMm}, got ${mostWidthMm}`,
  );
}

/**
 * From a finished top to the rough boards that it takes: the fewest equal boards that are on offer, how they lie, what
 * is glued, and what the panel weighs at each stage.
 *
 * @returns Rough sizes, mm, the boards in their places, and the stages. The boards go on to `panelChange` of
 * `@scantling/movement` with the coefficients of their wood.
 * @throws RangeError where an input is outside its limits, boards on offer are too narrow to joint, or ring angles are
 * neither one nor as many as there are boards.
 * Source: sums. That hearts by turns keep a panel flat and hearts one way are easier to hold down is common practice.
 * @example
 * ```ts
 * import { planPanel } from '@scantling/stock';
 * const top = { lengthMm: 1800, widthMm: 640, thicknessMm: 45, densityKgPerM3: 700 };
 * const offer = { leastWidthMm: 100, mostWidthMm: 180, leastBoardCount: 1 };
 * const allowances = { planingMm: 4, jointingMm: 6, flatteningMm: 3, trimWidthMm: 10, trimLengthMm: 50 };
 * const plan = planPanel({ ...top, ...offer, ...allowances, order: 'alternate', ringAnglesDeg: [20] });
 * [plan.boardCount, plan.roughWidthMm, plan.roughThicknessMm, plan.roughLengthMm] // => [4, 168.5, 52, 1850]
 * plan.boards.map(({ heart, widthMm }) => `${heart} ${widthMm}`) // => ['up 157.5', 'down 162.5', 'up 162.5', 'down 157.5']
 * plan.stages.map(({ massKg }) => massKg) // => [45.3872, 40.404, 37.8788, 36.288]
 * ```
 */
export function planPanel(input: PlanPanelInput): PanelPlan {
  requirePanel(input);
  const { lengthMm, widthMm, thicknessMm, leastWidthMm, mostWidthMm, trimWidthMm, ringAnglesDeg } = input;
  const gluedWidthMm = widthMm + trimWidthMm;
  // What is over a whole number of boards by less than rounding is not another board.
  const fewest = Math.ceil((gluedWidthMm / (mostWidthMm - input.jointingMm)) * (1 - 1e-12));
  const boardCount = Math.max(fewest, input.leastBoardCount);
  requireThat(
    'planPanel',
    ringAnglesDeg.length === 1 || ringAnglesDeg.length === boardCount,
    `ringAnglesDeg to be one or ${boardCount}, got ${ringAnglesDeg.length}`,
  );
  const eachMm = gluedWidthMm / boardCount;
  const roughWidthMm = eachMm + input.jointingMm;
  const boughtWidthMm = Math.max(roughWidthMm, leastWidthMm);
  const gluedThicknessMm = thicknessMm + input.flatteningMm;
  const roughThicknessMm = gluedThicknessMm + input.planingMm;
  const roughLengthMm = lengthMm + input.trimLengthMm;
  const edge = (i: number) => Math.min(widthMm, Math.max(0, i * eachMm - trimWidthMm / 2));
  const boards = Array.from(
    { length: boardCount },
    (_, i): PlacedBoard => ({
      heart: input.order === 'match' || i % 2 === 0 ? 'up' : 'down',
      fromFrontMm: edge(i),
      widthMm: edge(i + 1) - edge(i),
      thicknessMm,
      ringAngleDeg: (ringAnglesDeg[i] ?? ringAnglesDeg[0]) as number,
    }),
  );
  requireThat(
    'planPanel',
    boards.every((board) => board.widthMm > 0),
    `trimWidthMm to leave something of the outer boards, got ${trimWidthMm}`,
  );
  const stage = (name: PanelStage['name'], ...sides: readonly [number, number, number]): PanelStage => {
    const volumeM3 = (sides[0] * sides[1] * sides[2]) / 1e9;
    return { name, volumeM3, massKg: volumeM3 * input.densityKgPerM3 };
  };
  return {
    boardCount,
    roughLengthMm,
    roughWidthMm,
    roughThicknessMm,
    boughtWidthMm,
    boards,
    jointCount: boardCount - 1,
    gluedThicknessMm,
    glueLineM2: ((boardCount - 1) * roughLengthMm * gluedThicknessMm) / 1e6,
    stages: [
      stage('rough boards', roughLengthMm, boughtWidthMm * boardCount, roughThicknessMm),
      stage('planed and jointed', roughLengthMm, gluedWidthMm, gluedThicknessMm),
      stage('glued and flattened', roughLengthMm, gluedWidthMm, thicknessMm),
      stage('trimmed to size', lengthMm, widthMm, thicknessMm),
    ],
  };
}
