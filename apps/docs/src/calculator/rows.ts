import type { AnyCalculation, Field } from './calculation.ts';
import { countRows, nameInRow, type Texts } from './form.ts';

const NUMBERED = [
  'id',
  'name',
  'for',
  'aria-describedby',
  'aria-label',
  'data-field',
  'data-also',
  'data-fills',
];

/** Gives a row made from a template its number: the template says `#` for it, people count from one. */
function numberRow(row: Element, rows: string, i: number) {
  for (const element of [row, ...row.querySelectorAll('*')]) {
    for (const attribute of NUMBERED) {
      const text = element.getAttribute(attribute);
      if (!text) continue;
      const numbered = text.replaceAll(`${rows}.#.`, `${rows}.${i}.`).replace(/ #$/, ` ${i + 1}`);
      if (numbered !== text) element.setAttribute(attribute, numbered);
    }
  }
  const title = row.querySelector('.row-title')?.firstChild;
  if (title) title.textContent = `${title.textContent}`.replace('#', `${i + 1}`);
}

/** Makes each list of rows as long as the texts ask for. */
export function fitRows(form: HTMLFormElement, { fields }: AnyCalculation, texts: Texts) {
  for (const [name, field] of Object.entries<Field>(fields)) {
    if (field.kind !== 'rows') continue;
    const set = form.querySelector(`[data-rows="${name}"]`);
    const list = set?.querySelector('.list');
    const template = set?.querySelector('template')?.content.firstElementChild;
    if (!list || !template) continue;
    const count = Math.min(countRows(name, field, texts), field.maxRows);
    while (list.children.length > count) list.lastElementChild?.remove();
    while (list.children.length < count) {
      const row = template.cloneNode(true) as Element;
      numberRow(row, name, list.children.length);
      list.append(row);
    }
    for (const button of set.querySelectorAll<HTMLButtonElement>('.remove'))
      button.disabled = count <= field.minRows;
    const add = set.querySelector<HTMLButtonElement>('.add');
    if (add) add.disabled = count >= field.maxRows;
  }
}

/** The texts with one row more, which begins as a copy of the last, or as the first row that the calculator began with. */
export function withRowAdded({ fields, first }: AnyCalculation, texts: Texts, name: string): Texts {
  const field = fields[name];
  const count = countRows(name, field, texts);
  const begin = Array.isArray(first[name]) ? first[name][0] : undefined;
  const added = Object.keys(field.fields).map((one) => [
    nameInRow(name, count, one),
    texts[nameInRow(name, count - 1, one)] ?? begin?.[one] ?? '',
  ]);
  return { ...texts, ...Object.fromEntries(added) };
}

/** The texts without one row; those after it move up. */
export function withRowRemoved({ fields }: AnyCalculation, texts: Texts, name: string, row: number): Texts {
  const field = fields[name];
  const count = countRows(name, field, texts);
  const left: Record<string, string> = { ...texts };
  for (const one of Object.keys(field.fields)) {
    for (let i = row; i < count - 1; i += 1) {
      left[nameInRow(name, i, one)] = texts[nameInRow(name, i + 1, one)] ?? '';
    }
    delete left[nameInRow(name, count - 1, one)];
  }
  return left;
}
