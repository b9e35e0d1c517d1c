import { textWidth } from '../drawing/lettering.ts';
import { BREAKS } from '../report/text.ts';

/** As much of a word as there is room for, sign by sign, at least one a line. */
function pieces(word: string, height: number, room: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const sign of word) {
    if (line && textWidth(line + sign, height) > room) {
      lines.push(line);
      line = '';
    }
    line += sign;
  }
  return [...lines, line];
}

/** Text broken at blanks into lines no wider than there is room; a word that is wider is broken within. */
export function linesOf(text: string, height: number, room: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(BREAKS).filter((one) => one !== '')) {
    const longer = line ? `${line} ${word}` : word;
    if (textWidth(longer, height) <= room) {
      line = longer;
      continue;
    }
    if (line) lines.push(line);
    const broken = pieces(word, height, room);
    lines.push(...broken.slice(0, -1));
    line = broken.at(-1) ?? '';
  }
  return [...lines, line];
}
