import { type Answer, printValue, type Result } from './answer.ts';
import type { Drawing, Table } from './calculation.ts';
import { unitInWords } from './field.ts';
import { type LengthUnit, printOtherwise } from './lengths.ts';
import { type Piece, piece } from './piece.ts';

/** The label of a result, where the page can be asked for it. */
const labelId = (name: string) => `${name}-label`;

function resultPiece({ name, label, text, otherwise, words }: Result): Piece {
  const style = ['dimension', words && 'words', !words && text.includes(', ') && 'several'].filter(Boolean);
  return piece(
    'div',
    { class: 'result' },
    piece('span', { class: 'label', id: labelId(name) }, label),
    piece(
      'output',
      { 'aria-labelledby': labelId(name) },
      piece('span', { class: style.join(' '), 'data-result': name }, text),
      piece('span', { class: 'otherwise' }, otherwise),
    ),
  );
}

/** The figures of an answer; where there is a problem, the places of those before it stay and are empty. */
export function resultPieces({ results, computed }: Answer, before: readonly Result[]): Piece[] {
  const shown = results.length > 0 ? results : before.map((one) => ({ ...one, text: '–', otherwise: '' }));
  const verdict = computed?.outcome.verdict;
  return [
    ...(verdict
      ? [piece('p', { class: `verdict ${verdict.good ? 'good' : 'bad'}`, role: 'status' }, verdict.says)]
      : []),
    ...shown.map(resultPiece),
  ];
}

export const notePieces = ({ notes }: Answer): Piece[] => notes.map((note) => piece('p', {}, note));

function cellPiece(
  cell: string | number | null,
  unit: Table['columns'][number]['unit'],
  lengthUnit: LengthUnit,
) {
  if (cell === null) return piece('td', {}, '–');
  if (typeof cell === 'string') return piece('td', {}, cell);
  const printed = printValue(cell, unit === 'mm' ? 'mm' : '1', false, lengthUnit);
  const length = unit === 'mm' && piece('span', { class: 'otherwise' }, printOtherwise(cell, lengthUnit));
  return piece('td', { class: 'number' }, printed, length);
}

function tablePiece({ caption, columns, rows }: Table, lengthUnit: LengthUnit): Piece {
  const heads = columns.map(({ label, unit }) =>
    piece(
      'th',
      { scope: 'col' },
      unit && !['1', '¤', 'mm'].includes(unit) ? `${label}, ${unitInWords(unit)}` : label,
    ),
  );
  const lines = rows.map((row) =>
    piece('tr', {}, ...row.map((cell, i) => cellPiece(cell, columns[i]?.unit, lengthUnit))),
  );
  return piece(
    'div',
    { class: 'scrolling', tabindex: 0, role: 'region', 'aria-label': caption },
    piece(
      'table',
      {},
      piece('caption', {}, caption),
      piece('thead', {}, piece('tr', {}, ...heads)),
      piece('tbody', {}, ...lines),
    ),
  );
}

/** Tables and reasons of an answer. */
export function tablePieces({ computed, lengthUnit }: Answer): Piece[] {
  if (!computed) return [];
  const { tables = [], reasons = [] } = computed.outcome;
  return [
    ...tables.map((table) => tablePiece(table, lengthUnit)),
    ...(reasons.length > 0
      ? [piece('ul', { class: 'reasons' }, ...reasons.map((reason) => piece('li', {}, reason)))]
      : []),
  ];
}

const svgPiece = ({ title, box, shapes }: Drawing): Piece =>
  piece('svg', { viewBox: box.join(' '), role: 'img', 'aria-label': title }, ...shapes);

/** The drawing of an answer; where there is a problem, the last one stays and is shown as stale. */
export const drawingPieces = (drawing: Drawing | undefined): Piece[] => (drawing ? [svgPiece(drawing)] : []);

/** The answer as lines of text, for another program. */
export function answerText(title: string, { results, notes, computed, lengthUnit }: Answer): string {
  const lines = results.map(
    ({ label, text, otherwise }) => `${label}: ${text}${otherwise ? ` (${otherwise})` : ''}`,
  );
  const tables = (computed?.outcome.tables ?? []).map(({ caption, columns, rows }) =>
    [
      '',
      caption,
      columns.map(({ label }) => label).join('\t'),
      ...rows.map((row) =>
        row
          .map((cell, i) =>
            typeof cell === 'number'
              ? printValue(cell, columns[i]?.unit ?? '1', false, lengthUnit)
              : (cell ?? '–'),
          )
          .join('\t'),
      ),
    ].join('\n'),
  );
  const verdict = computed?.outcome.verdict?.says;
  return [title, ...(verdict ? [verdict] : []), ...lines, ...notes, ...tables].join('\n');
}
