import { type Answer, answer, type Ranges, type Result, refused, withOutcome } from './answer.ts';
import type { AnyCalculation } from './calculation.ts';
import { linkedTexts, linkOf, restateLengths, type Texts } from './form.ts';
import { isLengthUnit, LENGTH_UNIT, type LengthUnit, readLength } from './lengths.ts';
import { loadCalculation } from './load.ts';
import { patch } from './piece.ts';
import type * as Rows from './rows.ts';
import { answerText, drawingPieces, notePieces, resultPieces, tablePieces } from './view.ts';

type Control = HTMLInputElement | HTMLSelectElement;

/** Keeps a calculator that came with its first answer up to date with its fields, and the page's link with both. */
class LiveCalculator extends HTMLElement {
  #form!: HTMLFormElement;
  #calculation!: AnyCalculation;
  /** Loaded only once rows are about to be added or taken away. */
  #rows: typeof Rows | undefined;
  #ranges: Ranges = {};
  #first: Texts = {};
  /** What the fields were last given: of a choice that is not offered, no field can say it. */
  #filled: Texts = {};
  #linkTimer = 0;
  #lengthUnit: LengthUnit | undefined = 'mm';
  #answer!: Answer;
  /** The last results that there were: their places stay where there is a problem. */
  #results: readonly Result[] = [];

  async connectedCallback() {
    this.#form = this.querySelector('form') as HTMLFormElement;
    this.#form.addEventListener('submit', (event) => event.preventDefault());
    try {
      this.#calculation = await loadCalculation(this.dataset);
      if (location.search) await this.#loadRows();
    } catch {
      this.#part('.notes').textContent =
        'The calculator did not load. The answer shown is that of a worked example.';
      return;
    }
    this.#ranges = JSON.parse(this.dataset.ranges ?? '{}');
    this.#first = this.#texts();
    this.#answer = answer(this.#calculation, this.#first, this.#ranges);
    this.#results = this.#builtResults();
    this.#listen();
    const link = new URLSearchParams(location.search);
    if (link.size > 0) {
      this.#fill(linkedTexts(this.#calculation.fields, this.#first, link));
      this.#show();
    }
    this.dataset.ready = '';
  }

  #listen() {
    this.#form.addEventListener('input', ({ target }) => {
      if (target instanceof HTMLSelectElement) this.#fillFromTable(target);
      this.#changed();
    });
    this.#form.addEventListener('reset', (event) => {
      event.preventDefault();
      this.#fill(this.#first);
      this.#show();
      this.#setLink(location.pathname);
    });
    for (const near of ['focusin', 'pointerover'])
      this.#form.addEventListener(near, () => this.#loadRows(), { once: true });
    this.#form.addEventListener('click', ({ target }) => this.#pressed(target as HTMLElement));
    if (this.querySelector('[data-drag-x], [data-drag-y]')) this.#letDrag();
  }

  async #loadRows() {
    if (this.querySelector('[data-rows]')) this.#rows = await import('./rows.ts');
  }

  async #letDrag() {
    const { makeDraggable } = await import('./drag.ts');
    makeDraggable(this.#part('.drawing'), {
      unit: () => this.#lengthUnit ?? 'mm',
      lengthOf: (name) => {
        const reading = readLength(this.#texts()[name] ?? '', this.#lengthUnit);
        return 'value' in reading ? reading.value : undefined;
      },
      set: (moved) => this.#take({ ...this.#texts(), ...moved }),
    });
  }

  /** The results that the page came with: their names and labels. */
  #builtResults = (): Result[] =>
    [...this.querySelectorAll<HTMLElement>('.result')].map((result) => {
      const place = result.querySelector<HTMLElement>('[data-result]');
      return {
        name: place?.dataset.result ?? '',
        label: result.querySelector('.label')?.textContent ?? '',
        text: '',
        otherwise: '',
        words: place?.classList.contains('words') ?? false,
      };
    });

  #part = (selector: string) => this.querySelector(selector) as HTMLElement;

  #controls = () => [...this.#form.querySelectorAll<Control>('[name]')];

  #texts(): Record<string, string> {
    const fields = new FormData(this.#form);
    const names = new Set(this.#controls().map(({ name }) => name));
    return Object.fromEntries(
      [...names].map((name) => [name, `${fields.get(name) ?? this.#filled[name] ?? ''}`]),
    );
  }

  #fill(texts: Texts) {
    this.#filled = texts;
    this.#rows?.fitRows(this.#form, this.#calculation, texts);
    for (const field of this.#controls()) {
      const text = texts[field.name] ?? '';
      if (field instanceof HTMLInputElement && field.type === 'radio') field.checked = field.value === text;
      else if (field.value !== text) field.value = text;
    }
    this.#lengthUnit = this.#chosenUnit();
  }

  /** Takes a value of a table into the field that it is offered for. */
  #fillFromTable({ dataset, value }: HTMLSelectElement) {
    const field = dataset.fills && this.#form.elements.namedItem(dataset.fills);
    if (value && field instanceof HTMLInputElement) field.value = value;
  }

  #chosenUnit(): LengthUnit | undefined {
    const chosen = this.#texts()[LENGTH_UNIT] ?? 'mm';
    return isLengthUnit(chosen) ? chosen : undefined;
  }

  #take(texts: Texts) {
    this.#fill(texts);
    this.#changed();
  }

  #changed() {
    const chosen = this.#chosenUnit();
    const before = this.#lengthUnit;
    if (before && chosen && chosen !== before) {
      this.#fill(restateLengths(this.#calculation.fields, this.#texts(), before, chosen));
    }
    this.#lengthUnit = chosen;
    this.#show();
    this.#setLink(linkOf(this.#calculation.fields, this.#texts()));
  }

  #pressed(target: HTMLElement) {
    if (target.matches('.add, .remove')) this.#changeRows(target);
    else if (target.matches('.print')) print();
    else if (target.matches('.copy')) this.#copy();
  }

  async #changeRows(button: HTMLElement) {
    const list = button.closest<HTMLElement>('[data-rows]');
    const name = list?.dataset.rows ?? '';
    if (!this.#rows) await this.#loadRows();
    if (!list || !this.#rows) return;
    const { withRowAdded, withRowRemoved } = this.#rows;
    const row = button.closest('.row');
    if (!row) {
      this.#take(withRowAdded(this.#calculation, this.#texts(), name));
      list.querySelector<HTMLElement>('.row:last-child [name]')?.focus();
      return;
    }
    const index = [...(row.parentElement?.children ?? [])].indexOf(row);
    this.#take(withRowRemoved(this.#calculation, this.#texts(), name, index));
    list.querySelector<HTMLElement>('.add')?.focus();
  }

  async #copy() {
    const done = this.#part('.done');
    try {
      await navigator.clipboard.writeText(answerText(`${this.dataset.title}`, this.#answer));
      done.textContent = 'Copied.';
    } catch {
      done.textContent = 'The browser does not let this page copy.';
    }
  }

  /** Browsers allow only so many changes of the address in a while, so it waits for a pause. */
  #setLink(link: string) {
    this.#part('.share').setAttribute('href', link);
    clearTimeout(this.#linkTimer);
    this.#linkTimer = window.setTimeout(() => history.replaceState(null, '', link), 200);
  }

  #show() {
    const texts = this.#texts();
    this.#answer = answer(this.#calculation, texts, this.#ranges);
    const { lengths } = this.#answer;
    for (const select of this.querySelectorAll<HTMLSelectElement>('[data-fills]')) {
      const text = texts[select.dataset.fills ?? ''] ?? '';
      if (select.value === text) continue;
      select.value = text;
      if (select.selectedIndex < 0) select.value = '';
    }
    this.#showProblems();
    for (const sign of this.querySelectorAll('[data-length] + .unit'))
      sign.textContent = this.#lengthUnit ?? 'mm';
    for (const line of this.querySelectorAll<HTMLElement>('[data-also]')) {
      const length = lengths[line.dataset.also ?? ''];
      line.textContent = length ? `= ${length}` : '';
    }
    this.#part('.done').textContent = '';
    this.#showAnswer();
  }

  #showAnswer() {
    const { results, computed } = this.#answer;
    if (results.length > 0) this.#results = results;
    const waits = computed?.outcome.later !== undefined && results.length === 0;
    this.classList.toggle('stale', computed === null || waits);
    if (waits) {
      this.#showLater(this.#answer);
      return;
    }
    patch(this.#part('.figures'), resultPieces(this.#answer, this.#results));
    patch(this.#part('.notes'), notePieces(this.#answer));
    if (computed) {
      patch(this.#part('.tables'), tablePieces(this.#answer));
      const { drawing } = computed.outcome;
      if (drawing) patch(this.#part('.drawing'), drawingPieces(drawing));
    }
    this.dispatchEvent(new CustomEvent('answer', { bubbles: true, detail: this.#answer }));
    this.#showLater(this.#answer);
  }

  /** What comes later is shown if nothing was changed meanwhile. */
  async #showLater(shown: Answer) {
    const later = shown.computed?.outcome.later;
    if (!later) return;
    const refusal = (error: unknown): Answer =>
      refused(shown, error, this.#calculation.fields, this.#texts());
    const next = await later().then((outcome) => withOutcome(shown, outcome, this.#ranges), refusal);
    if (this.#answer !== shown) return;
    this.#answer = next;
    this.#showAnswer();
  }

  #showProblems() {
    for (const field of this.querySelectorAll<HTMLElement>('[data-field]')) {
      const problem = this.#answer.problems[field.dataset.field ?? ''] ?? '';
      const line = field.querySelector(':scope > .problem');
      if (line && line.textContent !== problem) line.textContent = problem;
      if (field.matches('.rows')) continue;
      for (const control of field.querySelectorAll('input, select')) {
        control.setAttribute('aria-invalid', `${problem !== ''}`);
      }
    }
  }
}

customElements.define('live-calculator', LiveCalculator);
