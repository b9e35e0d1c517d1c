import { needed, thereIs } from '../lengths.ts';
import type { PlannedSupport } from '../parts/sag.ts';
import type { Check, Computed } from '../result.ts';
import { figure } from './check.ts';

const rules = [
  'stock/rectangular-section',
  'stock/long-term-sag',
  'movement/specific-gravity-at-moisture',
  'movement/wood-density',
];

const listed = (names: readonly string[]) => (names.length ? names.join(' and ') : 'nothing heavy');

/** How far the top sags after years, or at once where that is more, against the most that is wanted. */
export function checkSag({ plan, sag }: Computed): Check | null {
  const { load, top } = plan;
  if (!sag || !load) return null;
  const title = 'The top stays flat enough under its load';
  const { modulusOfElasticityMPa, citation, sag: found, why, isFault } = sag;
  if (!found) {
    return { id: 'sag', title, status: isFault ? 'fail' : 'warn', says: why as string, figures: [], rules };
  }
  const { afterYearsMm, atOnceMm, atMm, under } = found;
  const mostMm = Math.max(afterYearsMm, atOnceMm);
  const enough = mostMm <= load.mostSagMm + 1e-9;
  const seen = citation?.confirmed === 'text' ? 'seen in the text' : 'quoted from memory';
  const stiffness = `Stiffness of ${top.species}: ${((modulusOfElasticityMPa ?? 0) / 1000).toFixed(1)} GPa at 12 % moisture content, ${citation?.source.title}, ${citation?.at}; ${seen}. Boards of one wood differ by a fifth and more.`;
  const there = `${needed(afterYearsMm, 2)} at x ${thereIs(atMm)} with ${listed(under)} on it, at once by at most ${needed(atOnceMm, 2)}`;
  return {
    id: 'sag',
    title,
    status: enough ? 'pass' : 'fail',
    says: [
      enough
        ? `After years it sags by ${there}; ${thereIs(load.mostSagMm, 2)} are allowed.`
        : `load.mostSag is ${thereIs(load.mostSagMm, 2)}; after years the top sags by ${there}. Make it thicker, set the supports nearer to what is heavy, or put less on it`,
      stiffness,
    ].join('\n'),
    figures: [
      figure('after years', afterYearsMm, 'mm'),
      figure('at once', atOnceMm, 'mm'),
      figure('allowed', load.mostSagMm, 'mm'),
      figure('at', atMm, 'mm'),
      figure('modulus of elasticity', modulusOfElasticityMPa ?? 0, 'MPa'),
    ],
    margin: { given: mostMm, max: load.mostSagMm, unit: 'mm' },
    rules,
  };
}

/** A support that the top would lift off: by what stays, or by what comes and goes. */
export function checkLiftOff({ sag }: Computed): Check | null {
  if (!sag?.sag) return null;
  const { left, right } = sag.sag;
  const supports = [left, right];
  const force = (newtons: number) => `${Math.ceil(Math.abs(newtons) - 1e-6)} N`;
  const lifted = supports.filter(({ leastReactionN }) => !(leastReactionN >= -1e-6));
  const always = lifted.filter(({ lastingReactionN }) => !(lastingReactionN >= -1e-6));
  const why = ({ name, leastReactionN, leastWith }: PlannedSupport) =>
    `load, ${name}: the top lifts off it under ${listed(leastWith)}. Screws there have to hold it down with ${force(leastReactionN)} at least, and the base must not tip; or set it farther out`;
  const tight = left.leastReactionN < right.leastReactionN ? left : right;
  return {
    id: 'lift-off',
    title: 'The top rests on both supports',
    status: always.length ? 'fail' : lifted.length ? 'warn' : 'pass',
    says: lifted.length
      ? lifted.map(why).join('\n')
      : `Both carry whatever stands on the top; ${tight.name} at least ${Math.floor(tight.leastReactionN + 1e-6)} N.`,
    figures: supports.flatMap(({ name, lastingReactionN, leastReactionN, mostReactionN }) => [
      figure(`${name}, under what stays`, lastingReactionN, 'N'),
      figure(`${name}, least`, leastReactionN, 'N'),
      figure(`${name}, most`, mostReactionN, 'N'),
    ]),
    margin: { given: tight.leastReactionN, min: 0, unit: 'N' },
    rules: ['movement/wood-density'],
  };
}
