import { millimetres, needed, thereIs } from '../lengths.ts';
import type { SlidingPart } from '../plan/base.ts';
import type { Plan } from '../plan/plan.ts';
import type { Chosen } from '../result.ts';
import type { ChosenLine, Hold } from './line.ts';
import { GAP_MM, holeCount, type Placement } from './place.ts';

const sentence = (...parts: readonly string[]) => parts.filter((part) => part !== '').join(' ');

/** How many holes there are, and how many are lost. */
function kept(plan: Plan, { keptCount }: Placement): string {
  const total = holeCount(plan);
  if (keptCount === total) return `All ${total} holes are kept`;
  const word = plan.holes.blocked === 'fail' ? 'Nothing fits: of' : 'Of';
  return `${word} ${total} holes ${keptCount} can be kept`;
}

const heldBy = ({ holding }: Hold) =>
  holding.length > 0
    ? `${holding.join(', ')} hold${holding.length === 1 ? 's' : ''} the top`
    : 'no screw holds the top';

const lacking = ({ lackMm }: Hold) => (lackMm > 0 ? `, slots ${needed(lackMm)} too short in all` : '');

const travel = (hold: Hold) => `a screw travels ${needed(hold.longestTravelMm)} at most${lacking(hold)}`;

/** So many other lines are spoken of. */
const MOST_OTHERS = 3;

/** What was chosen of the fixed line, and what speaks against the others. */
export function lineChosen(plan: Plan, { held, others, moving }: ChosenLine): Chosen {
  const { fixedLineMm, placement } = held;
  const beside = others
    .slice(0, MOST_OTHERS)
    .map((other) => `at ${millimetres(other.fixedLineMm)} ${heldBy(other)} and ${travel(other)}`)
    .join('; ');
  return {
    path: 'base.fixedLine',
    value: fixedLineMm,
    says: sentence(
      `${millimetres(fixedLineMm)} from the front: ${heldBy(held)}, and ${travel(held)}.`,
      `${kept(plan, placement)}.`,
      beside && `Held elsewhere: ${beside}.`,
    ),
    proven: !moving && isProven(placement),
  };
}

const isProven = ({ spread, offset }: Placement) => (spread?.proven ?? true) && (offset?.proven ?? true);

/** Less than this is written as 0.0 mm. */
const LEAST_SHOWN_MM = 0.05;

/** How far a part is slid, and what keeps it from going further. */
export function slideChosen(plan: Plan, part: SlidingPart, i: number, placement: Placement): Chosen {
  const slideMm = placement.slidesMm[i] as number;
  const { spreadMm, boundMm, proven } = placement.spread as NonNullable<Placement['spread']>;
  const open = (plan.base.sliding ?? []).filter((one) => one.slideMm === 'choose');
  const way =
    Math.abs(slideMm) < LEAST_SHOWN_MM
      ? 'stays where it is drawn'
      : `${millimetres(Math.abs(slideMm))} ${slideMm < 0 ? 'away from' : 'to'} the ${part.widensTowards}`;
  const limit = slideMm >= part.mostSlideMm - GAP_MM ? ', as far as it goes' : '';
  const wider = (mm: number) => (mm < 0 ? 'narrow' : 'widen');
  const together =
    open.length > 1
      ? `; all parts together ${wider(spreadMm)} the base by ${millimetres(Math.abs(spreadMm))}`
      : '';
  const most =
    boundMm < 0
      ? `narrows the base by less than ${thereIs(-boundMm)}`
      : `widens the base by more than ${needed(boundMm)}`;
  const bound = proven
    ? `No setting that keeps as many ${most}.`
    : `It is not proven that no setting is wider; none ${most}.`;
  return {
    path: `base.sliding[${i}].slide`,
    value: slideMm,
    says: sentence(`${part.name}: ${way}${limit}${together}.`, `${kept(plan, placement)}.`, bound),
    proven,
  };
}

/** Where the grid begins, and what is left at the tightest hole. */
export function firstChosen(plan: Plan, placement: Placement): Chosen {
  const { first, offset, spread } = placement;
  const { spareMm = null, boundMm = null, proven = false } = offset ?? {};
  const spare =
    spareMm === null || boundMm === null
      ? ''
      : `, each with ${thereIs(spareMm)} or more beyond the clearance asked for`;
  const setting = spread ? 'with the base as wide as that' : 'anywhere on the top';
  const bound =
    boundMm === null
      ? ''
      : proven
        ? `No place ${setting} keeps more, or leaves them more than ${needed(boundMm)}.`
        : `It is not proven that no place ${setting} is better.`;
  return {
    path: 'holes.first',
    value: first,
    says: sentence(
      `x ${millimetres(first.xMm)}, y ${millimetres(first.yMm)}: ${kept(plan, placement)}${spare}.`,
      bound,
    ),
    proven: isProven(placement),
  };
}
