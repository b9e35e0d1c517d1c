import { isSameSize, type Screw, type ScrewKind } from './screw.ts';
import { type AskedScrew, readScrew } from './screw-text.ts';
import { joinScrews } from './screws.ts';

/** What a text means. */
export interface FoundScrew {
  /** The one screw that the text means; `null` where it means several or none. */
  readonly screw: Screw | null;
  /** The screws that an ambiguous text may mean; or those of its size with another thread; or the next sizes. */
  readonly candidates: readonly Screw[];
  /** Why it is not one screw; `null` where it is. */
  readonly why: string | null;
}

let screws: readonly Screw[] | undefined;

const allScrews = (): readonly Screw[] => {
  screws ??= joinScrews();
  return screws;
};

const isOfSize = (screw: Screw, { kinds, series, diameterMm }: AskedScrew) =>
  kinds.includes(screw.kind) && series === screw.series && isSameSize(screw.diameterMm.value, diameterMm);

const hasThread = (screw: Screw, { pitchMm }: AskedScrew) =>
  pitchMm === null || isSameSize(screw.pitchMm?.value ?? 0, pitchMm);

/** The next smaller and the next larger screw of each kind that was asked for. */
function nextTo({ kinds, series, diameterMm }: AskedScrew): Screw[] {
  return kinds.flatMap((kind: ScrewKind) => {
    const ofKind = allScrews().filter((screw) => screw.kind === kind && screw.series === series);
    const smaller = ofKind.filter((screw) => screw.diameterMm.value <= diameterMm).slice(-1);
    const larger = ofKind.filter((screw) => screw.diameterMm.value > diameterMm).slice(0, 1);
    return [...smaller, ...larger];
  });
}

/**
 * The screw that a text means, as it stands on a drawing or a box: a gauge (`#8`, `No. 8`), a metric thread (`M6`),
 * millimetres or inches, with the kind where it is needed. A gauge by itself is a wood screw, `M` a machine screw;
 * a length after a cross (`#8 × 1 1/4 in`) is passed over. After a metric thread a figure of at most half its diameter is
 * the pitch (`M8 × 1`); the tables have coarse threads alone. Names that mean several screws give them all.
 *
 * @param text - Size and kind, in any case.
 * @returns The one screw with its figures, each with its source; or several that the text may mean; or, where no table has
 * its thread, that size with another thread; or, where none has the size, the next smaller and larger; and why it is not
 * one screw. None of these, where the text is not of a screw.
 * @throws RangeError where `text` is not text.
 * Source: standards as the tables name them; what a bare size means is common practice, no source.
 * @example
 * ```ts
 * import { findScrew } from '@scantling/fastening';
 * const { screw } = findScrew('#8');
 * screw.name // => 'No. 8 wood screw'
 * screw.diameterMm.value // => 4.1656
 * screw.heads[0].angleDeg // => 82
 * screw.rootDiameterMm.citation.confirmed // => 'memory'
 * findScrew('M6').screw.tapDrillDiameterMm.value // => 5
 * findScrew('1/4 in lag').screw.name // => '1/4 in lag screw'
 * findScrew('6 mm').candidates.map(({ name }) => name) // => ['6 mm wood screw', '6 mm lag screw']
 * findScrew('#11').candidates.map(({ name }) => name) // => ['No. 10 wood screw', 'No. 12 wood screw']
 * findScrew('M8 x 1').why // => 'No table has this thread: these are of its size.'
 * findScrew('8 penny nail') // => { screw: null, candidates: [], why: 'No size of a screw can be read from this text.' }
 * findScrew(8) // throws findScrew requires text to be text, got number
 * ```
 */
export function findScrew(text: string): FoundScrew {
  if (typeof text !== 'string')
    throw new RangeError(`findScrew requires text to be text, got ${typeof text}`);
  const asked = readScrew(text);
  const ofSize = asked.flatMap((one) => allScrews().filter((screw) => isOfSize(screw, one)));
  const found = allScrews().filter((screw) =>
    asked.some((one) => isOfSize(screw, one) && hasThread(screw, one)),
  );
  const [first] = found;
  if (found.length === 1 && first) return { screw: first, candidates: [], why: null };
  const none = (why: string, candidates: readonly Screw[]) => ({ screw: null, candidates, why });
  if (found.length > 1) return none('It may mean each of these.', found);
  if (ofSize.length > 0) return none('No table has this thread: these are of its size.', ofSize);
  const next = asked.flatMap(nextTo);
  if (next.length > 0) return none('No table has this size: these are the next ones.', next);
  return none('No size of a screw can be read from this text.', []);
}
