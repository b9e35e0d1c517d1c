import {
  type Amount,
  type Change,
  recheckPlan,
  shoppingPlan,
  type Tightness,
  type WorktopPlan,
  whatIf,
} from '@scantling/worktop';
import { statusWords } from './verdict.ts';

/** What is worked out only when somebody asks for it, and so is loaded only then. */
export {
  cutList,
  drillingProgram,
  holeTable,
  planDrawing,
  shoppingList,
  workSheet,
} from '@scantling/worktop';

/** An answer, part by part. */
export interface Told {
  readonly title: string;
  readonly lines: readonly string[];
}

/** Wood a point of moisture off, a pitch read a millimetre wrong, a base set half a centimetre off. */
const steps = { moisturePct: 1, pitchMm: 1, spreadMm: 5 };

/** Less is not worth a line. */
const LEAST_TOLD = 0.05;

const amount = ({ value, unit }: Amount) => `${Math.abs(value).toFixed(1)} ${unit}`;

const spare = ({ sparePct }: Tightness) => {
  if (sparePct === null) return 'not met';
  const whole = Math.round(sparePct);
  return whole < 0 ? `${-whole} % short` : `${whole + 0} % to spare`;
};

function told({ what, by, status, checks }: Change, titles: ReadonlyMap<string, string>): Told {
  const worse = checks.filter(
    ({ status: now, gain }) => now !== 'pass' || (gain !== null && gain.value <= -LEAST_TOLD),
  );
  const lines = worse.map(({ id, status: now, gain }) => {
    const change =
      gain && Math.abs(gain.value) >= LEAST_TOLD
        ? `, ${amount(gain)} ${gain.value < 0 ? 'less' : 'more'} to spare`
        : '';
    return `${titles.get(id) ?? id}: ${statusWords[now]}${change}`;
  });
  const sign = by.value < 0 ? '−' : '+';
  const title = `${what.charAt(0).toUpperCase()}${what.slice(1)} ${sign}${amount(by)}: ${statusWords[status]}`;
  return { title, lines: lines.length > 0 ? lines : ['Nothing gets tighter.'] };
}

/** What is tightest, and what comes of little changes. */
function littleChanges(result: WorktopPlan): Told[] {
  const { tightest, changes, notTried } = whatIf(result, steps);
  const titles = new Map(result.checks.map(({ id, title }) => [id, title]));
  return [
    {
      title: 'Tightest',
      lines: tightest.map((one) => `${one.title}: ${spare(one)}`),
    },
    ...changes.map((change) => told(change, titles)),
    ...(notTried.length > 0 ? [{ title: 'Not tried', lines: notTried }] : []),
  ];
}

/** What another computation makes of the plan. */
function secondLook(result: WorktopPlan): Told[] {
  const { agrees, findings } = recheckPlan(result);
  const title = agrees
    ? 'Computed once more by other code: every claim is borne out.'
    : 'Computed once more by other code, which does not bear out:';
  return [{ title, lines: findings.map(({ path, says }) => `${path}: ${says}`) }];
}

/** What to get, and what it costs. */
function purchases(result: WorktopPlan): Told[] {
  const { boards, bars, strip, screws, glue, liquids, checks, totalPrice, boundPrice, proven } =
    shoppingPlan(result);
  const mm = (value: number) => `${Number(value.toFixed(1))} mm`;
  const things = [
    ...(boards?.offer?.buy ?? []).map(({ boardId }) => `Board: ${boardId}`),
    ...bars.flatMap(({ buy, section }) => buy.map(({ name, count }) => `${count} × ${name}, ${section}`)),
    ...(strip
      ? [`${strip.name}: ${mm(strip.lengthMm)} × ${mm(strip.widthMm)} × ${mm(strip.thicknessMm)}`]
      : []),
    ...screws.map(
      ({ name, count, diameterMm, lengthMm }) =>
        `${count} ${name}: ${mm(diameterMm)}${lengthMm === null ? '' : ` × ${mm(lengthMm)}`}`,
    ),
    ...(glue ? [`${Math.ceil(glue.massG)} g of ${glue.name}`] : []),
    ...liquids.flatMap(({ name, buy }) =>
      (buy ?? []).map(({ count, volumeMl }) => `${count} × ${volumeMl} mL of ${name}`),
    ),
  ];
  const price =
    totalPrice === null
      ? 'What to get'
      : `What to get, for ${totalPrice.toFixed(2)} in all${
          proven
            ? ', proven to be the least'
            : `; not proven to be the least, none is below ${boundPrice?.toFixed(2)}`
        }`;
  return [
    { title: price, lines: things },
    ...checks.map(({ title, status, says }) => ({
      title: `${title}: ${statusWords[status]}`,
      lines: says.split('\n'),
    })),
  ];
}

export const answers = { littleChanges, secondLook, purchases } as const;
