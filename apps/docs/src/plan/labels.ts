import { unitOf } from '@scantling/rules';
import type { Field, Fields } from '@scantling/worktop/fields';
import { unitInWords } from '../calculator/field.ts';
import { at, type Draft, type DraftSection, type Path } from './draft.ts';
import { rowTitle } from './rows.ts';

/** The sections of a plan in the order of the job. */
export const sections = [
  'top',
  'seasons',
  'base',
  'holes',
  'screws',
  'strip',
  'glueUp',
  'finish',
  'calendar',
  'shop',
  'load',
  'cables',
  'template',
  'accessories',
  'drilling',
  'stock',
] as const;

/** What names alone would not say. */
const words: Readonly<Record<string, string>> = {
  top: 'The top',
  seasons: 'Seasons',
  base: 'The base',
  holes: 'Holes',
  screws: 'Screws that hold the top',
  strip: 'Strip let into the top',
  glueUp: 'Glue-up',
  finish: 'Finish',
  calendar: 'Calendar of coats',
  shop: 'The shop on the day',
  load: 'Load',
  cables: 'Cables',
  template: 'Drilling template',
  accessories: 'What stands in the holes',
  drilling: 'Drilling machine',
  stock: 'Wood, bars and tins on offer',
  xMm: 'x, along the grain',
  yMm: 'y, across the grain',
  species: 'Wood',
  cut: 'Cut of the boards',
  moisturePct: 'Moisture on building day',
  inlays: 'Let into the top',
  inlay: 'Which of the inlays',
  clearanceMm: 'Clearance to holes',
  fixings: 'Screws through the base',
  slotMm: 'Slot',
  fixedLineMm: 'Fixed line',
  sliding: 'Parts that slide',
  slideMm: 'Slide',
  widensTowards: 'Widens towards the',
  lift: 'Rises and falls',
  layersMm: 'Layers under the head',
  stockLengthsMm: 'Lengths to be had',
  threadShare: 'Threaded share',
  leadHoleShare: 'Lead hole, share of the thread',
  leastStockMm: 'Least wood above a tip',
  leastThreadMm: 'Least thread in the wood',
  pitchXMm: 'Pitch along the grain',
  pitchYMm: 'Pitch across the grain',
  first: 'First hole',
  blocked: 'A hole that comes too near',
  columns: 'Holes along the grain',
  rows: 'Holes across the grain',
  driest: 'When the top is driest',
  wettest: 'When the top is wettest',
  product: 'The finish as sold',
  order: 'Order of hearts',
  mostFillPct: 'Most of the hole filled',
  count: 'How many',
  bundle: 'Cables in the hole',
  turned: 'Panel is turned',
  bars: 'Bars',
  buildingDayC: 'Air on building day',
  expansionUmPerMK: 'Thermal expansion',
  onHandMl: 'On hand',
  dryFilmUm: 'Dry film of a coat',
  parts: 'Parts',
  volumeMl: 'Content',
};

const UNIT = /(UmPerMK|KgPerM3|GPerM2|MmPerMin|MPa|Mm|Pct|Kg|Ml|Um|Rpm|Ms|Hours|Days|[CKN])$/;

/** What a field is called: `shankDiameterMm` is "Shank diameter". */
export function labelOf(key: string): string {
  const known = words[key];
  if (known !== undefined) return known;
  const spaced = key
    .replace(UNIT, '')
    .replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
    .trim();
  return `${spaced.charAt(0).toUpperCase()}${spaced.slice(1)}`;
}

/** The sign of a field's unit; of a length, the unit that bare lengths are in. */
export function unitSign(key: string, lengthUnit: string): string {
  const unit = unitOf(key);
  if (unit === 'mm') return lengthUnit;
  return unit === '1' || unit === '¤' ? '' : unitInWords(unit);
}

/** A place in words: `The base, front rail, width`. */
export function placeInWords(plan: DraftSection, path: Path): string {
  const names = path.map((key, i) =>
    typeof key === 'number' ? rowTitle(at(plan, path.slice(0, i + 1)), key) : labelOf(key),
  );
  return names
    .map((name, i) =>
      i === 0 || typeof path[i] === 'number' ? name : name.replace(/^[A-Z](?=[a-z])/, (c) => c.toLowerCase()),
    )
    .join(', ');
}

/**
 * The place that a path of a plan or a plan file leads to, as far as the form has it: `cables.holeDiameter` is a field,
 * `base.members[9]` of fewer rows is their list.
 */
export function placeOf(fields: Fields, plan: Draft | undefined, path: Path): Path {
  const [key, ...rest] = path;
  if (typeof key !== 'string') return [];
  const name = [key, `${key}Mm`].find((one) => Object.hasOwn(fields, one));
  if (name === undefined) return [];
  const inner = at(plan, [name]);
  if (inner === undefined) return [];
  return [name, ...within(fields[name] as Field, inner, rest)];
}

function within(field: Field, draft: Draft, path: Path): Path {
  if (field.kind === 'section') return placeOf(field.fields, draft, path);
  const [index, ...rest] = path;
  if (field.kind !== 'list' || typeof index !== 'number') return [];
  const row = at(draft, [index]);
  return row === undefined ? [] : [index, ...within(field.of, row, rest)];
}

/** `base.members[2].width` as a path. */
export const pathIn = (text: string): Path =>
  [...text.matchAll(/\[(\d+)\]|[^.[\]]+/g)].map(([key, index]) =>
    index === undefined ? key : Number(index),
  );
