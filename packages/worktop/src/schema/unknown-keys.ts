import { closestMatch } from 'leven';

/** More than these are counted only. */
const MOST_NAMED = 5;
const LONGEST_SHOWN = 40;

/** `"memebers"; did you mean "members"?`: a third of the letters may differ. */
function unknownKey(key: string, known: readonly string[]): string {
  const short = key.slice(0, LONGEST_SHOWN);
  // A program's name for a length is near its name in a file, however short: `xMm` and `x`.
  const bare = short.replace(/Mm$/, '');
  const near = known.includes(bare)
    ? bare
    : closestMatch(short, known, { maxDistance: Math.round(short.length / 3) });
  const said = `unknown key ${JSON.stringify(short)}`;
  return near === undefined ? `${said}; known here: ${known.join(', ')}` : `${said}; did you mean "${near}"?`;
}

/** A line for each key that is not known, with the nearest name that is, or all that are. */
export function unknownKeys(keys: readonly string[], known: readonly string[]): string {
  const more = keys.length - MOST_NAMED;
  return [
    ...keys.slice(0, MOST_NAMED).map((key) => unknownKey(key, known)),
    ...(more > 0 ? [`unknown keys, ${more} more`] : []),
  ].join('\n');
}
