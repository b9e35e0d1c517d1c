import { choice, figure, list, open, section, text } from './field.ts';
import { area, gap, named, place, share, side } from './limits.ts';
import type { Obstacle, Open } from './place.ts';

/** How a board's growth rings lie: flatsawn boards move by the tangential coefficient, quartersawn by the radial. */
export type Cut = 'flatsawn' | 'quartersawn';

export interface Top {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
  /** As the tables of `@scantling/species` name it, or a name that means one wood alone. */
  readonly species: string;
  readonly cut: Cut;
  /** Moisture content on building day, % of ovendry mass. */
  readonly moisturePct: number;
  /** What is let into the top and moves with it. */
  readonly inlays: readonly Obstacle[];
}

/** How the top is glued up from rough boards. */
export interface GlueUp {
  readonly boardCount: number | Open;
  /** Narrowest and widest rough boards on offer, mm. */
  readonly leastWidthMm: number;
  readonly mostWidthMm: number;
  /** Off the thickness of each board before it is glued, both faces together, mm. */
  readonly planingMm: number;
  /** Off the width of each board, both edges together, mm. */
  readonly jointingMm: number;
  /** Off the thickness of the glued panel, both faces together, mm. */
  readonly flatteningMm: number;
  /** Off the width of the panel, both edges together, mm. */
  readonly trimWidthMm: number;
  /** Off the length of the panel, both ends together, mm. */
  readonly trimLengthMm: number;
  /** Whether hearts look up and down by turns. */
  readonly order: 'alternate' | 'match';
  readonly glue: Glue;
  /** What one clamp is tightened to, N. */
  readonly clampForceN: number;
}

export interface Glue {
  readonly name: string;
  readonly pressureMPa: number;
  readonly spreadGPerM2: number;
  readonly lossPct: number;
  /** Moisture content of the wood that it is for, % of ovendry mass: see its sheet. */
  readonly leastMoisturePct: number;
  readonly mostMoisturePct: number;
}

const offWood = { min: 0, max: 500 };
const moisture = { min: 0, max: 30 };

export const obstacle = (about: string) =>
  section<Obstacle>(about, {
    ...named,
    ...place,
    ...area,
    clearanceMm: figure('Least distance that a hole’s rim keeps from it in every season.', gap),
  });

export const topField = section<Top>('The finished top.', {
  lengthMm: figure('Along the grain.', side),
  widthMm: figure('Across the grain.', side),
  thicknessMm: figure('Finished thickness.', { min: 5, max: 300 }),
  species: text('The wood, by the name of the tables or a name that means one wood alone.'),
  cut: choice('How the growth rings lie.', ['flatsawn', 'quartersawn']),
  moisturePct: figure('Moisture content on building day, % of ovendry mass.', moisture),
  inlays: list('What is let into the top.', obstacle('Something let into the top.'), 0, 20),
});

const glue = section<Glue>('The glue, by its sheet.', {
  ...named,
  pressureMPa: figure('Pressure on the glue line.', { min: 0, max: 5 }),
  spreadGPerM2: figure('Glue for a square metre of joint, both faces together.', { min: 0, max: 5000 }),
  lossPct: figure('Share that stays in brush and pot.', share),
  leastMoisturePct: figure('Driest wood that it is for.', moisture),
  mostMoisturePct: figure('Wettest wood that it is for.', moisture),
});

export const glueUpField = section<GlueUp>('How the top is glued up from rough boards.', {
  boardCount: open(figure('Boards side by side.', { min: 1, max: 200, integer: true })),
  leastWidthMm: figure('Narrowest rough boards on offer.', { min: 1, max: 2000 }),
  mostWidthMm: figure('Widest rough boards on offer.', { min: 1, max: 2000 }),
  planingMm: figure('Off each board’s thickness before gluing, both faces together.', offWood),
  jointingMm: figure('Off each board’s width, both edges together.', offWood),
  flatteningMm: figure('Off the panel’s thickness, both faces together.', offWood),
  trimWidthMm: figure('Off the panel’s width, both edges together.', offWood),
  trimLengthMm: figure('Off the panel’s length, both ends together.', offWood),
  order: choice('Hearts up and down by turns, or all one way.', ['alternate', 'match']),
  glue,
  clampForceN: figure('What one clamp is tightened to.', { min: 1, max: 1e7 }),
});
