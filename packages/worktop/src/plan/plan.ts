import { type Base, baseField, type SlidingPart } from './base.ts';
import { type Drilling, drillingField } from './drilling.ts';
import { list, optional, section, text } from './field.ts';
import {
  type Air,
  airField,
  type Calendar,
  calendarField,
  type Finish,
  finishField,
  type Shop,
  shopField,
} from './finish.ts';
import {
  type Accessory,
  accessoryField,
  type Holes,
  holesField,
  type Template,
  templateField,
} from './holes.ts';
import { type Cables, cablesField, type Load, loadField } from './load.ts';
import type { Open } from './place.ts';
import { type Screws, type Strip, screwsField, stripField } from './screws.ts';
import { type Stock, stockField } from './stock.ts';
import { type GlueUp, glueUpField, type Top, topField } from './top.ts';

/**
 * What is to be built, every length in millimetres. `parsePlan` reads it from a plan file. A section that is left out is
 * not planned, and nothing is checked of it.
 */
export interface Plan {
  readonly version: 2;
  readonly name: string;
  readonly top: Top;
  readonly glueUp?: GlueUp | undefined;
  /** Room air when the top is at its driest and at its wettest. */
  readonly seasons: { readonly driest: Air; readonly wettest: Air };
  readonly base: Base;
  readonly screws?: Screws | undefined;
  readonly strip?: Strip | undefined;
  readonly holes: Holes;
  readonly template?: Template | undefined;
  readonly accessories?: readonly Accessory[] | undefined;
  readonly load?: Load | undefined;
  readonly cables?: Cables | undefined;
  readonly finish: Finish;
  readonly calendar?: Calendar | undefined;
  readonly shop?: Shop | undefined;
  readonly drilling?: Drilling | undefined;
  readonly stock?: Stock | undefined;
}

/** A type with every choice made. */
type Settled<T> = { readonly [K in keyof T]: Exclude<T[K], Open> };

/** A plan with nothing left to choose. Members, and the fixings in them, stand where they have slid to. */
export type SettledPlan = Omit<Plan, 'glueUp' | 'base' | 'screws' | 'holes'> & {
  readonly glueUp?: Settled<GlueUp> | undefined;
  readonly base: Settled<Omit<Base, 'sliding'>> & {
    readonly sliding?: readonly Settled<SlidingPart>[] | undefined;
  };
  readonly screws?: Settled<Screws> | undefined;
  readonly holes: Settled<Holes>;
};

/** What may stand in a plan besides its version. */
export const planField = section<Omit<Plan, 'version'>>('What is to be built.', {
  name: text('What the plan is called.'),
  top: topField,
  glueUp: optional(glueUpField),
  seasons: section<Plan['seasons']>('Room air at the extremes of the year.', {
    driest: airField,
    wettest: airField,
  }),
  base: baseField,
  screws: optional(screwsField),
  strip: optional(stripField),
  holes: holesField,
  template: optional(templateField),
  accessories: optional(list('What stands in the holes.', accessoryField, 0, 20)),
  load: optional(loadField),
  cables: optional(cablesField),
  finish: finishField,
  calendar: optional(calendarField),
  shop: optional(shopField),
  drilling: optional(drillingField),
  stock: optional(stockField),
});
