import packages from 'virtual:rules';
import { type AnyRule, rulesIn } from '@scantling/rules';
import { type Answer, answer } from './answer.ts';
import { restateField } from './field.ts';
import { isLengthUnit, LENGTH_UNIT, type LengthUnit } from './lengths.ts';

/** A link can carry any text: fields show its beginning, which is enough to be refused. */
const LONGEST_TEXT = 2100;

/** One chunk a rule: a page loads only its own card and function. */
async function loadRule(id: string): Promise<AnyRule> {
  const [name = '', file = ''] = id.split('/');
  const ofPackage = await packages[name]?.();
  const exported = await ofPackage?.default[file]?.();
  const rule = exported && rulesIn(exported).find((one) => one.id === id);
  if (!rule) throw new Error(`There is no rule ${id}.`);
  return rule;
}

/** Keeps a calculator that came with its first answer up to date with its fields, and the page's link with both. */
class RuleCalculator extends HTMLElement {
  #form!: HTMLFormElement;
  #rule!: AnyRule;
  #link = new URLSearchParams(location.search);
  #linkTimer = 0;
  #lengthUnit: LengthUnit | undefined = 'mm';

  async connectedCallback() {
    this.#form = this.querySelector('form') as HTMLFormElement;
    this.#form.addEventListener('submit', (event) => event.preventDefault());
    this.#fillFromLink();
    try {
      this.#rule = await loadRule(this.dataset.rule ?? '');
    } catch {
      this.#say(['The calculator did not load. The answer shown is that of a worked example.']);
      return;
    }
    this.#form.addEventListener('input', ({ target }) => {
      if (target instanceof HTMLSelectElement) this.#fillFromTable(target);
      this.#changed();
    });
    this.#form.addEventListener('reset', () => this.#reset());
    if (this.#link.size > 0) this.#show();
    this.dataset.ready = '';
  }

  /** What the fields say; for a choice that the link gave and the form does not offer, what the link says. */
  #texts(): Record<string, string> {
    const fields = new FormData(this.#form);
    const names = new Set(
      [...this.#form.querySelectorAll('[name]')].map((field) => field.getAttribute('name') ?? ''),
    );
    return Object.fromEntries(
      [...names].map((name) => [name, `${fields.get(name) ?? this.#link.get(name) ?? ''}`]),
    );
  }

  #fillFromLink() {
    for (const field of this.#form.querySelectorAll<HTMLInputElement | HTMLSelectElement>('[name]')) {
      const text = this.#link.get(field.name)?.slice(0, LONGEST_TEXT);
      if (text === undefined) continue;
      if (field instanceof HTMLInputElement && field.type === 'radio') field.checked = field.value === text;
      else field.value = text;
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

  #changed() {
    const chosen = this.#chosenUnit();
    if (this.#lengthUnit && chosen && chosen !== this.#lengthUnit)
      this.#restateLengths(this.#lengthUnit, chosen);
    this.#lengthUnit = chosen;
    this.#show();
    const link = `?${new URLSearchParams(this.#texts())}`;
    this.#setLink(link);
  }

  #reset() {
    this.#link = new URLSearchParams();
    this.#lengthUnit = 'mm';
    // Fields return to their first values only after this event.
    setTimeout(() => this.#show());
    this.#setLink(location.pathname);
  }

  #restateLengths(from: LengthUnit, to: LengthUnit) {
    for (const field of this.#form.querySelectorAll<HTMLInputElement>('input[data-length]')) {
      const spec = this.#rule.inputs[field.name];
      if (spec) field.value = restateField(spec, field.value, from, to);
    }
  }

  /** Browsers allow only so many changes of the address in a while, so it waits for a pause. */
  #setLink(link: string) {
    this.#form.querySelector('.share')?.setAttribute('href', link);
    clearTimeout(this.#linkTimer);
    this.#linkTimer = window.setTimeout(() => history.replaceState(null, '', link), 200);
  }

  #show() {
    const texts = this.#texts();
    const shown = answer(this.#rule, texts);
    for (const select of this.querySelectorAll<HTMLSelectElement>('[data-fills]')) {
      const text = texts[select.dataset.fills ?? ''] ?? '';
      if (select.value === text) continue;
      select.value = text;
      if (select.selectedIndex < 0) select.value = '';
    }
    this.#showProblems(shown);
    for (const sign of this.querySelectorAll('[data-length] + .unit'))
      sign.textContent = this.#lengthUnit ?? 'mm';
    for (const line of this.querySelectorAll<HTMLElement>('[data-also]')) {
      const length = shown.lengths[line.dataset.also ?? ''];
      line.textContent = length ? `= ${length}` : '';
    }
    for (const place of this.querySelectorAll<HTMLElement>('[data-result]')) {
      const result = shown.results.find(({ name }) => name === place.dataset.result);
      place.textContent = result?.text ?? '–';
      if (place.nextElementSibling) place.nextElementSibling.textContent = result?.otherwise ?? '';
    }
    this.#say(shown.notes);
    this.dispatchEvent(new CustomEvent('answer', { bubbles: true, detail: shown }));
  }

  #showProblems({ problems }: Answer) {
    for (const field of this.querySelectorAll<HTMLElement>('[data-field]')) {
      const problem = problems[field.dataset.field ?? ''] ?? '';
      const line = field.querySelector('.problem');
      if (line && line.textContent !== problem) line.textContent = problem;
      for (const control of field.querySelectorAll('input, select')) {
        control.setAttribute('aria-invalid', `${problem !== ''}`);
      }
    }
  }

  #say(notes: readonly string[]) {
    const lines = notes.map((note) => Object.assign(document.createElement('p'), { textContent: note }));
    this.querySelector('.notes')?.replaceChildren(...lines);
  }
}

customElements.define('rule-calculator', RuleCalculator);
