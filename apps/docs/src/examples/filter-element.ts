import { type Facet, type Facts, facets, passes, queryOf, readFilter, shownInWords } from './filter.ts';

/** Shows those worked examples of its page that are asked for, in its fields or in the link. */
class ExampleFilter extends HTMLElement {
  #examples: { element: HTMLElement; facts: Facts }[] = [];
  #groups: HTMLElement[] = [];

  connectedCallback() {
    const elements = document.querySelectorAll<HTMLElement>('[data-example]');
    this.#examples = [...elements].map((element) => {
      const { source = '', known = '' } = element.dataset;
      const { package: name = '' } = element.closest<HTMLElement>('[data-package]')?.dataset ?? {};
      return { element, facts: { source, package: name, known } };
    });
    this.#groups = [...document.querySelectorAll<HTMLElement>('[data-group]')];

    const offered = (facet: Facet) => [...this.#select(facet).options].map(({ value }) => value);
    const { filter, unknown } = readFilter(location.search, {
      source: offered('source'),
      package: offered('package'),
      known: offered('known'),
    });
    for (const facet of facets) this.#select(facet).value = filter[facet];
    this.addEventListener('change', () => this.#show([], true));
    this.addEventListener('reset', () => setTimeout(() => this.#show([], true)));
    this.addEventListener('submit', (event) => event.preventDefault());
    this.#show(unknown, false);
    this.toggleAttribute('data-ready', true);
  }

  #select(facet: Facet): HTMLSelectElement {
    return this.querySelector(`[name=${facet}]`) as HTMLSelectElement;
  }

  #show(unknown: readonly Facet[], changed: boolean) {
    const filter = {
      source: this.#select('source').value,
      package: this.#select('package').value,
      known: this.#select('known').value,
    };
    let shown = 0;
    for (const { element, facts } of this.#examples) {
      element.hidden = !passes(facts, filter);
      if (!element.hidden) shown += 1;
    }
    for (const group of this.#groups)
      group.hidden = group.querySelector('[data-example]:not([hidden])') === null;
    const status = this.querySelector('[role=status]') as HTMLElement;
    status.textContent = shownInWords(shown, this.#examples.length, unknown);
    if (changed) history.replaceState(null, '', `${location.pathname}${queryOf(filter)}`);
  }
}

customElements.define('example-filter', ExampleFilter);
