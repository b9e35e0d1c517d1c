import { figure, list, section, text } from './field.ts';
import { named, position } from './limits.ts';

/** What the top carries, and how far it may sag. */
export interface Load {
  /** Names of the two members that carry it, left and right; it rests on the middle of each. */
  readonly leftSupport: string;
  readonly rightSupport: string;
  /** Spread over the whole top for good, kg. */
  readonly spreadKg: number;
  /** What bears on one place for a while. */
  readonly heavyThings: readonly HeavyThing[];
  /** Most that the top may sag after years, mm. */
  readonly mostSagMm: number;
}

export interface HeavyThing {
  readonly name: string;
  /** Along the grain from the left end, mm. */
  readonly xMm: number;
  readonly massKg: number;
}

/** Cables that pass through the top to a base that rises and falls. */
export interface Cables {
  /** Of the hole that they pass through, mm. */
  readonly holeDiameterMm: number;
  /** Place of that hole. */
  readonly xMm: number;
  readonly yMm: number;
  readonly bundle: readonly CableKind[];
  /** Share of the hole that cables may fill, %. */
  readonly mostFillPct: number;
  /** From the hole to where the cables are held below, with the base lowered, mm along the shortest way. */
  readonly heldBelowMm: number;
  /** Length of cable that there is between the two, mm. */
  readonly cableLengthMm: number;
  /** What stays slack when the base stands highest, % of the distance. */
  readonly slackPct: number;
}

export interface CableKind {
  readonly name: string;
  readonly diameterMm: number;
  readonly count: number;
}

const mass = { min: 0, max: 10_000 };

export const loadField = section<Load>('What the top carries.', {
  leftSupport: text('The member that carries it on the left.'),
  rightSupport: text('The member that carries it on the right.'),
  spreadKg: figure('Spread over the whole top for good.', mass),
  heavyThings: list(
    'What bears on one place.',
    section<HeavyThing>('Something heavy.', {
      ...named,
      xMm: figure('Along the grain from the left end.', position),
      massKg: figure('Its mass.', mass),
    }),
    0,
    20,
  ),
  mostSagMm: figure('Most that the top may sag after years.', { min: 0.01, max: 100 }),
});

const length = { min: 0, max: 20_000 };

export const cablesField = section<Cables>('Cables that pass through the top.', {
  holeDiameterMm: figure('Of the hole that they pass through.', { min: 1, max: 300 }),
  xMm: figure('Place of that hole along the grain.', position),
  yMm: figure('Place of that hole across the grain.', position),
  bundle: list(
    'The cables.',
    section<CableKind>('Cables that are alike.', {
      ...named,
      diameterMm: figure('Of one cable.', { min: 0.5, max: 100 }),
      count: figure('How many.', { min: 1, max: 100, integer: true }),
    }),
    1,
    20,
  ),
  mostFillPct: figure('Share of the hole that cables may fill.', { min: 1, max: 100 }),
  heldBelowMm: figure('From the hole to where the cables are held below, base lowered.', length),
  cableLengthMm: figure('Length of cable between the two.', length),
  slackPct: figure('What stays slack when the base stands highest.', { min: 0, max: 100 }),
});
