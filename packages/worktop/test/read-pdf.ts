import type { PDFPageProxy } from 'pdfjs-dist';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

const MM_PER_POINT = 25.4 / 72;

/** What a page shows, read by a general library: mm from its bottom left corner, y upwards. */
export interface ReadPage {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly circles: readonly { readonly x: number; readonly y: number; readonly radius: number }[];
  /** Upright rectangles; those that clip, which draw nothing, apart. */
  readonly rectangles: readonly Sides[];
  readonly clips: readonly Sides[];
  readonly lines: readonly { readonly from: Spot; readonly to: Spot }[];
  readonly texts: readonly {
    readonly text: string;
    readonly x: number;
    readonly y: number;
    readonly width: number;
  }[];
}

export type Spot = readonly [x: number, y: number];

interface Sides {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

/** Commands of a path as the library hands it over: move, line, cubic curve, close. */
const lengths = [2, 2, 6, 4, 0];

function commands(data: ArrayLike<number>): { command: number; spots: Spot[] }[] {
  const found: { command: number; spots: Spot[] }[] = [];
  for (let i = 0; i < data.length; ) {
    const command = data[i] as number;
    const count = lengths[command] as number;
    const numbers = Array.from({ length: count }, (_, j) => (data[i + 1 + j] as number) * MM_PER_POINT);
    const spots = Array.from(
      { length: count / 2 },
      (_, j): Spot => [numbers[2 * j] as number, numbers[2 * j + 1] as number],
    );
    found.push({ command, spots });
    i += 1 + count;
  }
  return found;
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

/** A circle is four curves whose ends lie as far from their mean as each other. */
function circleOf(path: ReturnType<typeof commands>) {
  const ends = path.flatMap(({ command, spots }) => (command === 2 ? [spots[2] as Spot] : []));
  if (ends.length !== 4) throw new Error(`a circle of ${ends.length} curves`);
  const [x, y] = [mean(ends.map((end) => end[0])), mean(ends.map((end) => end[1]))];
  const radii = ends.map((end) => Math.hypot(end[0] - x, end[1] - y));
  if (Math.max(...radii) - Math.min(...radii) > 0.01) throw new Error('an oval');
  return { x, y, radius: mean(radii) };
}

function sidesOf(path: ReturnType<typeof commands>): Sides {
  const spots = path.flatMap((one) => one.spots);
  const [xs, ys] = [spots.map((spot) => spot[0]), spots.map((spot) => spot[1])];
  return { left: Math.min(...xs), bottom: Math.min(...ys), right: Math.max(...xs), top: Math.max(...ys) };
}

async function readPage(page: PDFPageProxy): Promise<ReadPage> {
  const { fnArray, argsArray } = await page.getOperatorList();
  const circles: ReadPage['circles'][number][] = [];
  const [rectangles, clips]: [Sides[], Sides[]] = [[], []];
  const lines: ReadPage['lines'][number][] = [];
  fnArray.forEach((operator, i) => {
    // Coordinates are those of the page as long as nothing transforms them.
    if (operator === OPS.transform) throw new Error('a transform');
    if (operator !== OPS.constructPath) return;
    const path = commands(argsArray[i][1][0] as ArrayLike<number>);
    const kinds = path.map(({ command }) => command).join('');
    if (argsArray[i][0] === OPS.endPath) clips.push(sidesOf(path));
    else if (kinds.includes('2')) circles.push(circleOf(path));
    else if (kinds === '01114') rectangles.push(sidesOf(path));
    else if (kinds === '01') lines.push({ from: path[0]?.spots[0] as Spot, to: path[1]?.spots[0] as Spot });
  });
  const { items } = await page.getTextContent();
  const texts = items.flatMap((item) =>
    'str' in item && item.str.trim() !== ''
      ? [
          {
            text: item.str,
            x: item.transform[4] * MM_PER_POINT,
            y: item.transform[5] * MM_PER_POINT,
            width: item.width * MM_PER_POINT,
          },
        ]
      : [],
  );
  const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
  const size = { widthMm: (right - left) * MM_PER_POINT, heightMm: (top - bottom) * MM_PER_POINT };
  return { ...size, circles, rectangles, clips, lines, texts };
}

/** Every page of a PDF file. */
export async function readPdf(pdf: Uint8Array): Promise<ReadPage[]> {
  const task = getDocument({ data: pdf.slice(), verbosity: 0 });
  const document = await task.promise;
  const pages: ReadPage[] = [];
  for (let i = 1; i <= document.numPages; i += 1) pages.push(await readPage(await document.getPage(i)));
  await task.destroy();
  return pages;
}
