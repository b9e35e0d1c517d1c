import { mmFromGauge, mmFromIn, pitchFromThreads, type ScrewKind } from './screw.ts';

/** What a text asks for. */
export interface AskedScrew {
  readonly kinds: readonly ScrewKind[];
  readonly series: 'inch' | 'metric';
  readonly diameterMm: number;
  /** From thread to thread, where that is asked for as well, mm. */
  readonly pitchMm: number | null;
}

type AskedSize = Omit<AskedScrew, 'pitchMm'>;

// Figures that are not part of a longer one; a gauge or a bare whole figure has no nought before it.
const wholeFigure = '(?:0|[1-9]\\d*)(?!\\.?\\d)';
const decimalFigure = '(?<![\\d.])(?:\\d+(?:\\.\\d+)?|\\.\\d+)(?!\\.?\\d)';
const fractionFigure = '(?<![\\d.])(?:\\d+[ -])?\\d+\\/\\d+';
const inchMark = '(?:"|in\\b|inch(?:es)?\\b)';

// Only `findScrew` pays for its patterns: they are marked as free of effects.
const patternOf = (...parts: readonly string[]) => new RegExp(parts.join(''));

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
  {
    pattern: /* @__PURE__ */ patternOf('\\bm ?(', decimalFigure, ')'),
    read: (size) => [metric(size, ['machine screw'])],
  },
  {
    pattern: /* @__PURE__ */ patternOf('(', decimalFigure, ') ?mm\\b'),
    read: (size) => [metric(size, ['wood screw', 'lag screw'])],
  },
  {
    pattern: /* @__PURE__ */ patternOf('(?:#|\\bno\\.?|\\bnumber|\\bgau?ge) ?(', wholeFigure, ')\\b'),
    read: (size) => [gauge(size, ['wood screw'])],
  },
  {
    pattern: /* @__PURE__ */ patternOf('(?<![\\d.])(', wholeFigure, ')[ -]?(?:gau?ge|ga?)\\b'),
    read: (size) => [gauge(size, ['wood screw'])],
  },
  {
    pattern: /* @__PURE__ */ patternOf('(', fractionFigure, '|', decimalFigure, ') ?', inchMark),
    read: (size) => [inches(size, ['lag screw', 'machine screw'])],
  },
  {
    pattern: /* @__PURE__ */ patternOf('(', fractionFigure, ')\\b'),
    read: (size) => [inches(size, ['lag screw', 'machine screw'])],
  },
  {
    pattern: /(?<![\d.])(\d*\.\d+)(?![\d.])/,
    read: (size) => [metric(size, ['wood screw', 'lag screw'])],
  },
  {
    pattern: /* @__PURE__ */ patternOf('(?<![\\w.])(', wholeFigure, ')\\b'),
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
    .replace(/[−–‐‑]/g, '-')
    .replace(/(\d),(?=\d)/g, '$1.');

/** `x 1 1/4 in` after a size. Its unit tells what a bare size is: `6 x 60 mm` is metric. */
const length = /* @__PURE__ */ patternOf(
  '(?<=[\\d"m]|in|inch) ?x ?(?:',
  fractionFigure,
  '|',
  decimalFigure,
  ') ?(',
  inchMark,
  '|mm\\b)?',
);

/** `-20` after a size, which is no part of a mixed number. */
const threads = /(?<=[\d"]|in|inch)-(\d+)\b(?![/.])/;

/** `M8 x 1`: the figure after a metric thread is its pitch where it is at most half of the diameter, else its length. */
const finePitch = /* @__PURE__ */ patternOf(
  '\\bm ?(',
  decimalFigure,
  ') ?[x-] ?(',
  decimalFigure,
  ')(?![ -]?\\d*\\/| ?(?:mm\\b|',
  inchMark,
  '))',
);

/** A minus before a figure, which no size has. */
const minus = /(?<![\p{L}\p{N}"])- ?[.\d]/u;

/** The text without the metric pitch that it names, and that pitch. */
function splitPitch(text: string): readonly [string, number | null] {
  const [pair = '', diameterMm, pitchMm] = finePitch.exec(text) ?? [];
  return diameterMm && Number(pitchMm) <= Number(diameterMm) / 2
    ? [text.replace(pair, `m${diameterMm}`), Number(pitchMm)]
    : [text, null];
}

/**
 * What a text asks for: one size, or several that it may mean. Nothing where something is left over that does not
 * belong to a screw.
 */
export function readScrew(text: string): readonly AskedScrew[] {
  const [plainText, metricPitchMm] = splitPitch(plain(text));
  if (minus.test(plainText)) return [];
  const unit = length.exec(plainText)?.[1];
  const shortened = plainText.replace(length, ' ');
  const threadsPerIn = threads.exec(shortened)?.[1];
  const sized = shortened.replace(threads, ' ');
  const notation = notations.find(({ pattern }) => pattern.test(sized));
  if (!notation) return [];
  const said = kindWords.filter(([, word]) => word.test(sized)).map(([kind]) => kind);
  const rest = kindWords
    .reduce((left, [, word]) => left.replace(word, ' '), sized.replace(notation.pattern, ' '))
    .replace(besideSize, ' ');
  if (/[\p{L}\p{N}#]/u.test(rest)) return [];
  const read = notation.read(notation.pattern.exec(sized)?.[1] ?? '');
  const ofUnit = read.filter(({ series }) => unit && series === (unit === 'mm' ? 'metric' : 'inch'));
  const pitchMm = threadsPerIn ? pitchFromThreads(Number(threadsPerIn)) : metricPitchMm;
  const threaded: readonly ScrewKind[] | null = threadsPerIn ? ['machine screw'] : null;
  return (ofUnit.length > 0 ? ofUnit : read)
    .filter(({ diameterMm, series }) => Number.isFinite(diameterMm) && (!threadsPerIn || series === 'inch'))
    .map((asked) => ({ ...asked, kinds: said.length > 0 ? said : (threaded ?? asked.kinds), pitchMm }));
}
