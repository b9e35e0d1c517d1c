/** A point on the top, mm from the datum: the front-left corner seen from above; x along the grain, y across. */
export interface Point {
  readonly xMm: number;
  readonly yMm: number;
}

/** A rectangle seen from above, by its corner nearest the datum. */
export interface Rectangle extends Point {
  /** Along x, mm. */
  readonly lengthMm: number;
  /** Along y, mm. */
  readonly widthMm: number;
}

/** Something that holes must miss. */
export interface Obstacle extends Rectangle {
  readonly name: string;
  /**
   * Least distance that a hole's rim keeps from it in every season, mm. It has to cover what no plan knows: the error of
   * marking out and drilling, and the play of the screws in their slots.
   */
  readonly clearanceMm: number;
}

/** How a board's growth rings lie: flatsawn boards move by the tangential coefficient, quartersawn by the radial. */
export type Cut = 'flatsawn' | 'quartersawn';

export interface Air {
  readonly temperatureC: number;
  readonly relativeHumidityPct: number;
}

/** A screw through the base into the top, and the slot that the base gives it. */
export interface Fixing extends Point {
  readonly name: string;
  /** Length across the grain of the slot in the base, mm; of a round hole, its diameter. */
  readonly slotMm: number;
}

/** A liquid of the mix: how many parts of it, and how much there is. */
export interface Liquid {
  readonly name: string;
  readonly parts: number;
  readonly onHandMl: number;
}

/** What is to be built, every length in millimetres. `parsePlan` reads it from a plan file. */
export interface Plan {
  readonly version: 1;
  readonly name: string;
  readonly top: {
    readonly lengthMm: number;
    readonly widthMm: number;
    readonly thicknessMm: number;
    readonly species: string;
    readonly cut: Cut;
    /** Moisture content on building day, % of ovendry mass. */
    readonly moisturePct: number;
    /** What is let into the top and moves with it. */
    readonly inlays: readonly Obstacle[];
  };
  /** Room air when the top is at its driest and at its wettest. */
  readonly seasons: { readonly driest: Air; readonly wettest: Air };
  readonly base: {
    readonly members: readonly Obstacle[];
    /** Where the top is held so that it moves away from there on both sides, mm from the front edge. */
    readonly fixedLineMm: number;
    readonly shankDiameterMm: number;
    /** Room left at each end of a slot at the end of the season, mm. */
    readonly slotClearanceMm: number;
    /** Least distance that a hole's rim keeps from a screw, mm. */
    readonly screwClearanceMm: number;
    readonly fixings: readonly Fixing[];
  };
  readonly holes: {
    readonly diameterMm: number;
    readonly pitchXMm: number;
    readonly pitchYMm: number;
    readonly first: Point;
    readonly columns: number;
    readonly rows: number;
    /** Least distance from a hole's rim to the edge of the top, mm. */
    readonly edgeMarginMm: number;
    /** What happens to a hole that comes too near: the plan fails, or the hole is left out. */
    readonly blocked: 'fail' | 'leave out';
  };
  readonly finish: {
    readonly coats: number;
    /** The finish as it is sold, with its solids by volume, %. */
    readonly product: Liquid & { readonly volumeSolidsPct: number };
    /** Left out where the product is used as it is sold. */
    readonly thinner?: Liquid | undefined;
    /** Dry film that one coat is to leave, µm. */
    readonly dryFilmUm: number;
    /** Share of the mix that stays in rags, pads and jars, %. */
    readonly lossPct: number;
  };
}
