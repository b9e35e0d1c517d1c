import { isLengthUnit } from '../calculator/lengths.ts';
import { type Sheet, sheetOf } from './work.ts';

/** What a link may hold, packed and unpacked. */
const LONGEST_LINK = 200_000;
const MOST_BYTES = 1_000_000;

export const LINK_BROKEN = 'This link does not hold a whole plan. The plan that was here is still here.';

/** Reads a stream to its end, or gives up where it is too long. */
async function bytesOf(stream: ReadableStream<Uint8Array>, most: number): Promise<Uint8Array<ArrayBuffer>> {
  const chunks: Uint8Array[] = [];
  let length = 0;
  const reader = stream.getReader();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    length += value.length;
    if (length > most) {
      await reader.cancel();
      throw new RangeError(LINK_BROKEN);
    }
    chunks.push(value);
  }
  const all = new Uint8Array(length);
  let offset = 0;
  for (const chunk of chunks) {
    all.set(chunk, offset);
    offset += chunk.length;
  }
  return all;
}

/** Bytes through a transformation of the platform's. */
const through = (bytes: Uint8Array<ArrayBuffer>, by: CompressionStream | DecompressionStream) =>
  bytesOf(new Blob([bytes]).stream().pipeThrough(by), MOST_BYTES);

function base64url(bytes: Uint8Array): string {
  const binary = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

const bytesIn = (text: string) =>
  Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (sign) => sign.charCodeAt(0));

/** The part of an address after `#` that holds a sheet as it stands, finished or not: its unit, then what was typed. */
export async function linkOf({ unit, plan }: Sheet): Promise<string> {
  const bytes = new TextEncoder().encode(JSON.stringify(plan));
  return `#${unit}=${base64url(await through(bytes, new CompressionStream('deflate-raw')))}`;
}

/**
 * The sheet that a link holds.
 *
 * @returns `null` where the link does not claim to hold one.
 * @throws RangeError where it claims to and does not.
 */
export async function sheetInLink(hash: string): Promise<Sheet | null> {
  const [, unit = '', packed = ''] = /^#(\w+)=(.*)$/s.exec(hash) ?? [];
  if (!isLengthUnit(unit)) return null;
  try {
    if (packed.length > LONGEST_LINK) throw new RangeError(LINK_BROKEN);
    const bytes = await through(bytesIn(packed), new DecompressionStream('deflate-raw'));
    const content: unknown = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
    const isPlan = typeof content === 'object' && content !== null && Object.hasOwn(content, 'top');
    if (!isPlan) throw new RangeError(LINK_BROKEN);
    return sheetOf(content, unit);
  } catch {
    throw new RangeError(LINK_BROKEN);
  }
}
