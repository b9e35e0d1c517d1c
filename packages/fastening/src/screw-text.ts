import { mmFromGauge, mmFromIn, type ScrewKind } from './screw.ts';

/** What a text asks for. */
export interface AskedScrew {
  readonly kinds: readonly ScrewKind[];
  readonly series: 'inch' | 'metric';
  readonly diameterMm: number;
  /** Threads to the inch that are asked for as well. */
  readonly threadsPerIn: number | null;
}

type AskedSize = Omit<AskedScrew, 'threadsPerIn'>;

const gauge = (size: string, kinds: readonly ScrewKind[]): AskedSize => ({
  kinds,
  series: 'inch',
  diameterMm: mmFromGauge(Number(size)),
});

const metric = (size: string, kinds: readonly ScrewKind[]): AskedSize => ({
  kinds,
  series: 'metric',
  diameterMm: Number(size),
});

function inches(size: string, kinds: readonly ScrewKind[]): AskedSize {
  const [, whole = '0', above, below] = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(size) ?? [];
  const value = above ? Number(whole) + Number(above) / Number(below) : Number(size);
  return { kinds, series: 'inch', diameterMm: mmFromIn(value) };
}

/** A way to write a size: the whole of it, with the figure in the first group, and what it means by itself. */
interface Notation {
  readonly pattern: RegExp;
  readonly read: (size: string) => readonly AskedSize[];
}

const notations: readonly Notation[] = [
  { pattern: /\bm ?(\d+(?:\.\d+)?)\b/, read: (size) => [metric(size, ['machine screw'])] },
  { pattern: /(\d+(?:\.\d+)?) ?mm\b/, read: (size) => [metric(size, ['wood screw', 'lag screw'])] },
  { pattern: /(?:#|\bno\.?|\bnumber|\bgau?ge) ?(\d+)\b/, read: (size) => [gauge(size, ['wood screw'])] },
  { pattern: /\b(\d+)[ -]?(?:gau?ge|ga)\b/, read: (size) => [gauge(size, ['wood screw'])] },
  {
    pattern: /((?:\d+[ -])?\d+\/\d+|\d+(?:\.\d+)?) ?(?:"|in\b|inch(?:es)?\b)/,
    read: (size) => [inches(size, ['lag screw', 'machine screw'])],
  },
  {
    pattern: /\b((?:\d+[ -])?\d+\/\d+)\b/,
    read: (size) => [inches(size, ['lag screw', 'machine screw'])],
  },
  { pattern: /\b(\d+\.\d+)\b/, read: (size) => [metric(size, ['wood screw', 'lag screw'])] },
  {
    pattern: /\b(\d+)\b/,
    read: (size) => [gauge(size, ['wood screw']), metric(size, ['wood screw', 'lag screw'])],
  },
];

const kindWords: readonly (readonly [ScrewKind, RegExp])[] = [
  ['wood screw', /\bwood/],
  ['machine screw', /\bmachine\b/],
  ['lag screw', /\b(lag|coach (?=screw))/],
];

/** Words that may stand beside size and kind: common practice, no source. */
const besideSize =
  /\b(screws?|bolts?|flat|countersunk|round|oval|hex|hexagon|socket|head(ed)?|slotted|cross|recess(ed)?|steel|stainless|brass)\b/g;

/** The text in lower case, with plain marks for inches, fractions, crosses and decimals. */
const plain = (text: string): string =>
  text
    .replace(/(\d)(?=[¼-¾⅐-⅞])/g, '$1 ')
    .replace(/[″“”]|''|′′/g, '"')
    .normalize('NFKC')
    .toLowerCase()
    .replace(/\s+/g, ' ')
    .replaceAll('⁄', '/')
    .replaceAll('×', 'x')
    .replace(/(\d),(?=\d)/g, '$1.');

/** `x 1 1/4 in` after a size. Its unit tells what a bare size is: `6 x 60 mm` is metric. */
const length = /(?<=[\d"m]|in|inch) ?x ?((?:\d+[ -])?\d+\/\d+|\d+(?:\.\d+)?) ?("|in\b|inch(es)?\b|mm\b)?/;

/** `-20` after a size, which is no part of a mixed number. */
const threads = /(?<=\d)-(\d+)\b(?!\/)/;

/**
 * What a text asks for: one size, or several that it may mean. Nothing where something is left over that does not
 * belong to a screw.
 */
export function readScrew(text: string): readonly AskedScrew[] {
  const written = plain(text);
  const unit = length.exec(written)?.[2];
  const whole = written.replace(length, ' ');
  const threadsPerIn = threads.exec(whole)?.[1];
  const sized = whole.replace(threads, ' ');
  const notation = notations.find(({ pattern }) => pattern.test(sized));
  if (!notation) return [];
  const said = kindWords.filter(([, word]) => word.test(sized)).map(([kind]) => kind);
  const rest = kindWords
    .reduce((left, [, word]) => left.replace(word, ' '), sized.replace(notation.pattern, ' '))
    .replace(besideSize, ' ');
  if (/[\p{L}\p{N}]/u.test(rest)) return [];
  const read = notation.read(notation.pattern.exec(sized)?.[1] ?? '');
  const ofUnit = read.filter(({ series }) => unit && series === (unit === 'mm' ? 'metric' : 'inch'));
  return (ofUnit.length > 0 ? ofUnit : read)
    .filter(({ diameterMm, series }) => Number.isFinite(diameterMm) && (!threadsPerIn || series === 'inch'))
    .map((asked) => ({
      ...asked,
      kinds: threadsPerIn ? ['machine screw'] : said.length > 0 ? said : asked.kinds,
      threadsPerIn: threadsPerIn ? Number(threadsPerIn) : null,
    }));
}
