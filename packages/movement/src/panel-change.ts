import { type Limits, plusZero, requireFields, requireInputs, requireThat } from '@scantling/rules';
import { changeAtRingAngle } from './rules/change-at-ring-angle.ts';

const CALLER = 'panelChange';
const MOST_BOARDS = 200;

const coefficient: Limits = { min: 0, max: 0.02 };
const moisture: Limits = { min: 0, max: 30 };
const boardLimits = {
  widthMm: { min: 1, max: 10_000 },
  thicknessMm: { min: 1, max: 1000 },
  ringAngleDeg: { min: 0, max: 90 },
  radialPerPct: coefficient,
  tangentialPerPct: coefficient,
} as const;

/** A board of a panel, as it is on the day that it is glued. */
export interface PanelBoard {
  /** Width, mm, 1 to 10 000. */
  readonly widthMm: number;
  /** Thickness, mm, 1 to 1000. */
  readonly thicknessMm: number;
  /** Angle at the end grain between the growth rings and the wide face, 0° (flatsawn) to 90° (quartersawn). */
  readonly ringAngleDeg: number;
  /** Radial coefficient of its species, per 1 % of moisture content, 0 to 0.02. */
  readonly radialPerPct: number;
  /** Tangential coefficient of its species, per 1 % of moisture content, 0 to 0.02. */
  readonly tangentialPerPct: number;
  /** Its moisture content where it is not that of the panel, % of ovendry mass, 0 to 30. */
  readonly fromMoisturePct?: number;
}

/** Boards glued edge to edge, and what happens to them. */
export interface PanelChangeInput {
  /** From the front edge to the back edge, 1 to 200. */
  readonly boards: readonly PanelBoard[];
  /** Moisture content when glued, % of ovendry mass, 0 to 30. */
  readonly fromMoisturePct: number;
  /** Moisture content then, the same in every board, % of ovendry mass, 0 to 30. */
  readonly toMoisturePct: number;
  /** The line along the panel that is held fast, mm from the front edge, 0 to the width of the panel. */
  readonly heldAtMm: number;
}

/** What one board does. */
export interface BoardChange {
  /** Change in width, mm: positive where it swells. */
  readonly widthChangeMm: number;
  /** Change in thickness, mm: positive where it swells. */
  readonly thicknessChangeMm: number;
}

/** A joint line between two boards; places are measured from where the front edge was. */
export interface PanelJoint {
  /** Its place before, mm. */
  readonly beforeMm: number;
  /** Its place after, mm. */
  readonly afterMm: number;
  /** How far it moved, mm: positive towards the back. */
  readonly moveMm: number;
  /** Step that arises on each face between the two boards, mm, never negative. */
  readonly stepMm: number;
}

/** What a panel does. */
export interface PanelChange {
  readonly widthBeforeMm: number;
  readonly widthAfterMm: number;
  /** Change in width, mm: positive where the panel swells. */
  readonly changeMm: number;
  /** How far the front edge moves, mm: positive towards the back. */
  readonly frontEdgeMoveMm: number;
  /** How far the back edge moves, mm: positive away from the front. */
  readonly backEdgeMoveMm: number;
  /** Board by board from the front. */
  readonly boards: readonly BoardChange[];
  /** Joint by joint from the front: one fewer than boards. */
  readonly joints: readonly PanelJoint[];
  /** The largest step of all joints, mm; `null` for a single board. */
  readonly largestStepMm: number | null;
}

/** Checks the input, and gives the width of the panel. */
function requirePanel(input: PanelChangeInput): number {
  const { boards, fromMoisturePct, toMoisturePct, heldAtMm } = input ?? {};
  const isList = Array.isArray(boards) && boards.length >= 1 && boards.length <= MOST_BOARDS;
  const got = Array.isArray(boards) ? boards.length : typeof boards;
  requireThat(CALLER, isList, `boards to be a list of 1 to ${MOST_BOARDS} boards, got ${got}`);
  for (const [i, board] of boards.entries()) {
    const own = board?.fromMoisturePct === undefined ? {} : { fromMoisturePct: moisture };
    requireFields(CALLER, `boards[${i}]`, board, { ...boardLimits, ...own });
  }
  const widthMm = boards.reduce((sum, board) => sum + board.widthMm, 0);
  requireInputs(
    CALLER,
    { fromMoisturePct, toMoisturePct, heldAtMm },
    { fromMoisturePct: moisture, toMoisturePct: moisture, heldAtMm: { min: 0, max: widthMm } },
  );
  return widthMm;
}

/**
 * How a panel of boards moves: boards of any widths, thicknesses, cuts and species glued edge to edge, with one line
 * held fast. The boards are taken to keep flat, and each to move as if it were alone.
 *
 * The step at a joint is what both faces show that were planed flush when glued: the glue holds the middles of the two
 * edges together, and each board swells evenly about that line as far as the thinner one reaches.
 *
 * @param input - The boards from front to back, the moisture contents, and the line that is held.
 * @returns The change of the whole, of each edge, board and joint line, and the largest step, all in mm.
 * @throws RangeError where an input is outside its limits, naming its path.
 * Source: the strain of a turned axis with the coefficients of the Wood Handbook (FPL-GTR-190), Eq. 13-2, claimed for
 * 6 to 14 % moisture content, as in `changeAtRingAngle`; the sum over the boards is geometry.
 * @example
 * ```ts
 * import { panelChange } from '@scantling/movement';
 * const maple = { thicknessMm: 40, radialPerPct: 0.00165, tangentialPerPct: 0.00353 };
 * const boards = [{ ...maple, widthMm: 200, ringAngleDeg: 0 }, { ...maple, widthMm: 100, ringAngleDeg: 90 }];
 * const dried = panelChange({ boards, fromMoisturePct: 12, toMoisturePct: 7, heldAtMm: 0 });
 * dried.changeMm // => -4.355
 * dried.joints // => [{ beforeMm: 200, afterMm: 196.47, moveMm: -3.53, stepMm: 0.188 }]
 * dried.boards[1] // => { widthChangeMm: -0.825, thicknessChangeMm: -0.706 }
 * panelChange({ boards: [{ ...boards[0], widthMm: 0 }], fromMoisturePct: 12, toMoisturePct: 7, heldAtMm: 0 }) // throws panelChange requires boards[0].widthMm between 1 and 10000, got 0
 * ```
 */
export function panelChange(input: PanelChangeInput): PanelChange {
  const widthBeforeMm = requirePanel(input);
  const { toMoisturePct, heldAtMm } = input;
  let reachedMm = 0;
  const boards = input.boards.map((board) => {
    const fromMoisturePct = board.fromMoisturePct ?? input.fromMoisturePct;
    const change = changeAtRingAngle({ ...board, fromMoisturePct, toMoisturePct });
    const startMm = reachedMm;
    reachedMm += board.widthMm;
    return { ...board, startMm, change };
  });
  /** How far the wood at a place would move if the front edge kept its place. */
  const movedAt = (placeMm: number) =>
    boards.reduce((sum, { startMm, widthMm, change }) => {
      const share = Math.min(1, Math.max(0, (placeMm - startMm) / widthMm));
      return sum + share * change.widthChangeMm;
    }, 0);
  const heldMovedMm = movedAt(heldAtMm);
  const joints = boards.slice(1).map((board, i): PanelJoint => {
    const before = boards[i] ?? board;
    const moveMm = plusZero(movedAt(board.startMm) - heldMovedMm);
    const strainOf = ({ change, thicknessMm }: typeof board) => change.thicknessChangeMm / thicknessMm;
    const sharedMm = Math.min(before.thicknessMm, board.thicknessMm);
    return {
      beforeMm: board.startMm,
      afterMm: board.startMm + moveMm,
      moveMm,
      stepMm: Math.abs(strainOf(board) - strainOf(before)) * (sharedMm / 2),
    };
  });
  const changeMm = plusZero(movedAt(widthBeforeMm));
  return {
    widthBeforeMm,
    widthAfterMm: widthBeforeMm + changeMm,
    changeMm,
    frontEdgeMoveMm: plusZero(-heldMovedMm),
    backEdgeMoveMm: plusZero(changeMm - heldMovedMm),
    boards: boards.map(({ change }) => change),
    joints,
    largestStepMm: joints.length > 0 ? Math.max(...joints.map(({ stepMm }) => stepMm)) : null,
  };
}
