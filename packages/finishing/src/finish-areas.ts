import { plusZero, requireChoice, requireFields, requireInputs, requireThat } from '@scantling/rules';

const panelLimits = {
  lengthMm: { min: 1, max: 20_000 },
  widthMm: { min: 1, max: 20_000 },
  thicknessMm: { min: 1, max: 1000 },
} as const;
const holeLimits = {
  count: { min: 0, max: 10_000, integer: true },
  diameterMm: { min: 0.1, max: 1000 },
} as const;
const runLimit = { min: 0, max: 20_000 } as const;

/** Holes of one size, clear of each other, of the edges and of the rabbets. */
export type BoredHoles = {
  /** How many, 0 to 10 000. */
  readonly count: number;
  /** mm, 0.1 to 1000, and at most the smaller side of what rabbets leave of the panel. */
  readonly diameterMm: number;
} & (
  | { readonly bored: 'through' }
  | {
      readonly bored: 'from the top' | 'from the underside';
      /** To the flat floor, mm, above 0 and less than the thickness. */
      readonly depthMm: number;
    }
);

/** A step cut along an edge, with square ends. */
export interface Rabbet {
  readonly edge: 'front' | 'back' | 'left' | 'right';
  readonly face: 'top' | 'underside';
  /** From the edge inwards, mm, less than the panel. */
  readonly widthMm: number;
  /** From the face downwards or upwards, mm, less than the thickness. */
  readonly depthMm: number;
  /** Where it begins along the edge, mm from the left or front; at 0 it runs out. */
  readonly fromMm: number;
  /** Where it ends along the edge, mm from the left or front; at the full length it runs out. */
  readonly toMm: number;
}

export interface FinishAreasInput {
  /** From left to right, mm, 1 to 20 000. */
  readonly lengthMm: number;
  /** From front to back, mm, 1 to 20 000. */
  readonly widthMm: number;
  /** mm, 1 to 1000. */
  readonly thicknessMm: number;
  /** At most 100 sizes. */
  readonly holes: readonly BoredHoles[];
  /** At most 8, none touching another. */
  readonly rabbets: readonly Rabbet[];
}

/** Every face of the panel, m². Mouths of holes and ends of rabbets are taken off the faces that they open in. */
export interface FinishAreas {
  readonly topM2: number;
  readonly undersideM2: number;
  readonly frontM2: number;
  readonly backM2: number;
  readonly leftM2: number;
  readonly rightM2: number;
  readonly holeWallsM2: number;
  /** Floors of holes that do not go through. */
  readonly holeFloorsM2: number;
  /** Shelves, walls and closed ends of the rabbets. */
  readonly rabbetsM2: number;
  readonly totalM2: number;
}

type Range = readonly [number, number];

const runsAlongX = ({ edge }: Rabbet) => edge === 'front' || edge === 'back';

/** What a rabbet takes away, from where to where along x, y and z. */
function takenBy(rabbet: Rabbet, { lengthMm, widthMm, thicknessMm }: FinishAreasInput): readonly Range[] {
  const { edge, face } = rabbet;
  const within = (size: number, cut: number, atTheStart: boolean): Range =>
    atTheStart ? [0, cut] : [size - cut, size];
  const along: Range = [rabbet.fromMm, rabbet.toMm];
  const inwards = within(
    runsAlongX(rabbet) ? widthMm : lengthMm,
    rabbet.widthMm,
    edge === 'front' || edge === 'left',
  );
  const down = within(thicknessMm, rabbet.depthMm, face === 'top');
  return runsAlongX(rabbet) ? [along, inwards, down] : [inwards, along, down];
}

const apart = (one: readonly Range[], other: readonly Range[]) =>
  one.some(([from, to], axis) => {
    const [start, end] = other[axis] as Range;
    return to < start || end < from;
  });

function requirePanel(input: FinishAreasInput): void {
  requireInputs('finishAreas', input, panelLimits);
  const { thicknessMm, holes, rabbets } = input;
  requireThat(
    'finishAreas',
    Array.isArray(holes) && holes.length <= 100,
    `holes to be a list of at most 100, got ${holes?.length}`,
  );
  requireThat(
    'finishAreas',
    Array.isArray(rabbets) && rabbets.length <= 8,
    `rabbets to be a list of at most 8, got ${rabbets?.length}`,
  );
  for (const [i, hole] of holes.entries()) {
    requireFields('finishAreas', `holes[${i}]`, hole, holeLimits);
    requireChoice('finishAreas', `holes[${i}].bored`, hole.bored, [
      'through',
      'from the top',
      'from the underside',
    ]);
    if (hole.bored === 'through') continue;
    const { depthMm } = hole;
    requireThat(
      'finishAreas',
      depthMm > 0 && depthMm < thicknessMm,
      `holes[${i}].depthMm above 0 and below ${thicknessMm}, got ${depthMm}`,
    );
  }
  requireRabbets(input);
  for (const [i, { bored, diameterMm }] of holes.entries()) {
    const roomMm = roomForHoles(bored, input);
    requireThat(
      'finishAreas',
      diameterMm <= roomMm,
      `holes[${i}].diameterMm at most ${roomMm}, got ${diameterMm}`,
    );
  }
}

/** The smaller side of what rabbets that run from end to end leave of the faces that a hole opens in, mm. */
function roomForHoles(bored: BoredHoles['bored'], { lengthMm, widthMm, rabbets }: FinishAreasInput): number {
  const taken = { front: 0, back: 0, left: 0, right: 0 };
  for (const one of rabbets) {
    const { edge, face } = one;
    const opens = bored === 'through' || bored.endsWith(face);
    if (opens && one.toMm - one.fromMm === (runsAlongX(one) ? lengthMm : widthMm))
      taken[edge] = Math.max(taken[edge], one.widthMm);
  }
  return Math.min(lengthMm - taken.left - taken.right, widthMm - taken.front - taken.back);
}

function requireRabbets(input: FinishAreasInput): void {
  const { lengthMm, widthMm, thicknessMm, rabbets } = input;
  for (const [i, rabbet] of rabbets.entries()) {
    const path = `rabbets[${i}]`;
    requireFields('finishAreas', path, rabbet, {
      widthMm: runLimit,
      depthMm: runLimit,
      fromMm: runLimit,
      toMm: runLimit,
    });
    requireChoice('finishAreas', `${path}.edge`, rabbet.edge, ['front', 'back', 'left', 'right']);
    requireChoice('finishAreas', `${path}.face`, rabbet.face, ['top', 'underside']);
    const [along, across] = runsAlongX(rabbet) ? [lengthMm, widthMm] : [widthMm, lengthMm];
    const { fromMm, toMm } = rabbet;
    requireThat(
      'finishAreas',
      rabbet.widthMm > 0 && rabbet.widthMm < across && rabbet.depthMm > 0 && rabbet.depthMm < thicknessMm,
      `${path}.widthMm and depthMm above 0 and within the panel, got ${rabbet.widthMm} and ${rabbet.depthMm}`,
    );
    requireThat(
      'finishAreas',
      fromMm < toMm && toMm <= along,
      `${path}.fromMm below toMm, and that at most ${along}, got ${fromMm} and ${toMm}`,
    );
    const near = rabbets
      .slice(0, i)
      .findIndex((other) => !apart(takenBy(rabbet, input), takenBy(other, input)));
    requireThat('finishAreas', near < 0, `${path} clear of every other, got one that meets rabbets[${near}]`);
  }
}

/**
 * Area of every face of a panel with holes and rabbets, exact: what a coat plan counts its finish by. Mouths of holes
 * and open ends of rabbets are taken off; walls, floors and shelves are counted by themselves.
 *
 * @throws RangeError where an input is outside its limits, a hole is too wide for the panel, rabbets meet, or holes
 * and rabbets leave nothing of a face.
 * Source: geometry.
 * @example
 * ```ts
 * import { finishAreas } from '@scantling/finishing';
 * const panel = { lengthMm: 1000, widthMm: 500, thicknessMm: 40, holes: [], rabbets: [] };
 * finishAreas(panel).totalM2 // => 1.12
 * // Ten 20 mm holes through it: two mouths of 314.16 mm² each for walls of 2513.3 mm²
 * const bored = finishAreas({ ...panel, holes: [{ count: 10, diameterMm: 20, bored: 'through' }] });
 * [bored.topM2, bored.holeWallsM2] // => [0.496858, 0.025133]
 * ```
 */
export function finishAreas(input: FinishAreasInput): FinishAreas {
  requirePanel(input);
  const { lengthMm, widthMm, thicknessMm } = input;
  const mm2 = {
    top: lengthMm * widthMm,
    underside: lengthMm * widthMm,
    front: lengthMm * thicknessMm,
    back: lengthMm * thicknessMm,
    left: widthMm * thicknessMm,
    right: widthMm * thicknessMm,
    holeWalls: 0,
    holeFloors: 0,
    rabbets: 0,
  };
  for (const hole of input.holes) {
    const mouths = hole.count * Math.PI * (hole.diameterMm / 2) ** 2;
    const rim = hole.count * Math.PI * hole.diameterMm;
    mm2.holeWalls += rim * (hole.bored === 'through' ? thicknessMm : hole.depthMm);
    if (hole.bored !== 'from the underside') mm2.top -= mouths;
    if (hole.bored !== 'from the top') mm2.underside -= mouths;
    if (hole.bored !== 'through') mm2.holeFloors += mouths;
  }
  for (const rabbet of input.rabbets) {
    const { edge, face, fromMm, toMm } = rabbet;
    const runMm = toMm - fromMm;
    const endMm2 = rabbet.widthMm * rabbet.depthMm;
    mm2[face] -= rabbet.widthMm * runMm;
    mm2[edge] -= rabbet.depthMm * runMm;
    mm2.rabbets += (rabbet.widthMm + rabbet.depthMm) * runMm;
    const [before, after] = runsAlongX(rabbet) ? (['left', 'right'] as const) : (['front', 'back'] as const);
    if (fromMm === 0) mm2[before] -= endMm2;
    else mm2.rabbets += endMm2;
    if (toMm === (runsAlongX(rabbet) ? lengthMm : widthMm)) mm2[after] -= endMm2;
    else mm2.rabbets += endMm2;
  }
  const bare = (['top', 'underside', 'front', 'back', 'left', 'right'] as const).find(
    (face) => !(mm2[face] > 0),
  );
  requireThat('finishAreas', !bare, `holes and rabbets that leave some of the ${bare}, got none of it left`);
  const m2 = (area: number) => plusZero(area / 1e6);
  return {
    topM2: m2(mm2.top),
    undersideM2: m2(mm2.underside),
    frontM2: m2(mm2.front),
    backM2: m2(mm2.back),
    leftM2: m2(mm2.left),
    rightM2: m2(mm2.right),
    holeWallsM2: m2(mm2.holeWalls),
    holeFloorsM2: m2(mm2.holeFloors),
    rabbetsM2: m2(mm2.rabbets),
    totalM2: m2(Object.values(mm2).reduce((sum, area) => sum + area)),
  };
}
