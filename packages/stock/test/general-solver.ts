import loadHighs from 'highs';
import type { CutBarsInput } from '../src/index.ts';

const highs = await loadHighs();

/** Every way to fill a length into which no other part fits; a part takes its length and one cut. */
function fillings(sizes: readonly number[], demand: readonly number[], room: number): number[][] {
  const found: number[][] = [];
  const counts = sizes.map(() => 0);
  const fill = (kind: number, left: number): void => {
    if (kind === sizes.length) {
      const more = sizes.some((size, i) => size <= left && (counts[i] as number) < (demand[i] as number));
      if (!more && counts.some((count) => count > 0)) found.push([...counts]);
      return;
    }
    const most = Math.min(demand[kind] as number, Math.floor(left / (sizes[kind] as number)));
    for (let count = most; count >= 0; count--) {
      counts[kind] = count;
      fill(kind + 1, left - count * (sizes[kind] as number));
    }
    counts[kind] = 0;
  };
  fill(0, room);
  return found;
}

/**
 * A job as a mixed integer programme: one whole number for each way to fill a bar, cover every part, stay within the
 * bars there are. Whole millimetres, every bar carried whole.
 */
export function programmeOf({ parts, bars, kerfMm, endTrimMm }: CutBarsInput): string {
  const sizes = parts.map(({ lengthMm }) => lengthMm + kerfMm);
  const demand = parts.map(({ count }) => count);
  const columns = bars.flatMap((bar, at) =>
    fillings(sizes, demand, bar.lengthMm - 2 * endTrimMm + kerfMm).map((counts) => ({ at, counts })),
  );
  const sum = (terms: readonly string[]) => (terms.length > 0 ? terms.join(' + ') : '0 none');
  const terms = columns.map(({ at }, i) => `${bars[at]?.eachPrice} x${i}`);
  const cover = demand.map((count, kind) => {
    const used = columns.flatMap(({ counts }, i) => (counts[kind] ? [`${counts[kind]} x${i}`] : []));
    return ` cover${kind}: ${sum(used)} >= ${count}`;
  });
  const limits = bars.flatMap(({ count }, at) => {
    if (count === undefined) return [];
    const used = columns.flatMap((column, i) => (column.at === at ? [`x${i}`] : []));
    return [` limit${at}: ${sum(used)} <= ${count}`];
  });
  return [
    'Minimize',
    ` price: ${sum(terms)}`,
    ...['Subject To', ...cover, ...limits],
    ...['Generals', ` ${columns.map((_, i) => `x${i}`).join(' ')}`, 'End'],
  ].join('\n');
}

/** The least price by HiGHS, a general solver; `null` where the bars do not suffice. */
export function solveByHighs(programme: string): number | null {
  const { Status, ObjectiveValue } = highs.solve(programme, {
    output_flag: false,
    mip_rel_gap: 0,
    mip_abs_gap: 0,
  });
  if (Status === 'Infeasible') return null;
  if (Status !== 'Optimal') throw new Error(`HiGHS ends with ${Status}`);
  return ObjectiveValue;
}

export const leastPriceByHighs = (job: CutBarsInput): number | null => solveByHighs(programmeOf(job));
