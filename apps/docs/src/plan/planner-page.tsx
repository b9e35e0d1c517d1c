import { hydrate, render, type VNode } from 'preact';
import { withAnotherRow, withChoice, withoutOneRow, withSection } from './desk.ts';
import { at, type Path } from './draft.ts';
import { showDrawing } from './drawing.ts';
import { FileRefused, sheetInFile } from './file.ts';
import { show, takeAway } from './jump.ts';
import { linkOf, sheetInLink } from './link.ts';
import type { Told } from './on-demand.ts';
import { fileName, isPaper, outputs, type PaperName } from './outputs.ts';
import { verdictOf } from './verdict.ts';
import type { Actions } from './view/actions.ts';
import { Checks } from './view/Checks.tsx';
import { PlanForm } from './view/Form.tsx';
import { Further, type FurtherActions } from './view/Further.tsx';
import { type ToolActions, Tools } from './view/Tools.tsx';
import { Verdict } from './view/Verdict.tsx';
import {
  begun,
  changed,
  filledIn,
  inUnit,
  type Outcome,
  outcome,
  planContent,
  type Sheet,
  sheetOf,
  undone,
  type Work,
} from './work.ts';

/** The address follows after a pause: browsers allow only so many changes of it in a while. */
const LINK_AFTER_MS = 400;
/** The verdict is said aloud once typing has come to rest. */
const SAY_AFTER_MS = 900;

const MEND_FIRST = 'Mend the fields that are marked first: there is no plan yet.';

const part = (id: string) => document.getElementById(id) as HTMLElement;

/** Keeps the page and its address up to date with what its form says. */
export class PlannerPage {
  #work: Work;
  #outcome: Outcome;
  #link = '#';
  #says: readonly string[] = [];
  #told: readonly Told[] = [];
  #paper: PaperName = 'A4';
  #linkTimer = 0;
  #sayTimer = 0;
  #drawn: object | null = null;

  /** Takes over the page that came with the outcome of this sheet. */
  constructor(sheet: Sheet) {
    this.#work = begun(sheet);
    this.#outcome = outcome(sheet);
    this.#drawn = this.#outcome.result;
    this.#show(hydrate);
    addEventListener('hashchange', () => this.#hashChanged());
    this.#follow(false);
  }

  /** Takes the sheet that the page's address holds, if it holds one. */
  async openLink(): Promise<void> {
    try {
      const sheet = await sheetInLink(location.hash);
      if (!sheet) return;
      this.#link = location.hash;
      this.#begin(sheet, []);
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      this.#say([error.message]);
    }
  }

  /** A link to a part of the page goes there, and leaves the plan in the address. */
  #hashChanged() {
    if (document.getElementById(location.hash.slice(1))) history.replaceState(null, '', this.#link);
    else if (location.hash !== this.#link) this.openLink();
  }

  #show(put: (what: VNode, place: HTMLElement) => void = render) {
    const { sheet } = this.#work;
    const outcome = this.#outcome;
    const name = typeof sheet.plan.name === 'string' ? sheet.plan.name : '';
    const tools = { work: this.#work, link: this.#link, says: this.#says, tools: this.#tools };
    const further = { outcome, paper: this.#paper, told: this.#told, further: this.#further };
    put(<Tools {...tools} />, part('plan-tools'));
    put(<PlanForm sheet={sheet} outcome={outcome} act={this.#act} />, part('plan-form'));
    put(<Verdict outcome={outcome} name={name} />, part('plan-verdict'));
    put(<Checks sheet={sheet} outcome={outcome} act={this.#act} />, part('plan-checks'));
    put(<Further {...further} />, part('plan-further'));
  }

  #say(lines: readonly string[]) {
    this.#says = lines;
    this.#show();
  }

  /** A change of the form: everything that follows from it. */
  #take(work: Work) {
    this.#work = work;
    this.#outcome = outcome(work.sheet);
    this.#says = [];
    this.#told = [];
    this.#show();
    this.#draw();
    this.#follow();
  }

  /** A plan from elsewhere; the one before can be had back. */
  #begin(sheet: Sheet, says: readonly string[]) {
    this.#take(changed(this.#work, sheet));
    this.#say(says);
  }

  #change(sheet: Sheet, run?: string) {
    this.#take(changed(this.#work, sheet, run));
  }

  #draw() {
    const { result } = this.#outcome;
    part('plan-drawing').classList.toggle('stale', result === null);
    if (result === null || result === this.#drawn) return;
    this.#drawn = result;
    requestAnimationFrame(() => {
      if (result === this.#drawn) showDrawing(part('plan-drawing'), result);
    });
  }

  /** The address and the spoken verdict, after a pause. */
  #follow(intoAddress = true) {
    clearTimeout(this.#linkTimer);
    clearTimeout(this.#sayTimer);
    const { sheet } = this.#work;
    this.#linkTimer = window.setTimeout(async () => {
      const link = await linkOf(sheet);
      if (sheet !== this.#work.sheet) return;
      this.#link = link;
      if (intoAddress) history.replaceState(null, '', link);
      this.#show();
    }, LINK_AFTER_MS);
    this.#sayTimer = window.setTimeout(() => {
      const said = part('plan-spoken');
      const verdict = verdictOf(this.#outcome);
      if (said.textContent !== verdict) said.textContent = verdict;
    }, SAY_AFTER_MS);
  }

  /** What an example has in a place, for a place that has nothing yet. */
  async #example(path: Path): Promise<unknown> {
    const { contents } = await import('./examples.ts');
    const likeFirst = path.map((key) => (typeof key === 'number' ? 0 : key));
    return Object.values(contents)
      .map((content) => at(sheetOf(content).plan, likeFirst))
      .find((draft) => draft !== undefined && !(Array.isArray(draft) && draft.length === 0));
  }

  readonly #act: Actions = {
    fill: (path, draft, run) => this.#change(filledIn(this.#work.sheet, path, draft), run),
    choose: (path, left) => this.#change(withChoice(this.#work.sheet, path, left, this.#outcome.result)),
    addRow: async (path) => {
      const example = await this.#example(path);
      this.#change(withAnotherRow(this.#work.sheet, path, example));
    },
    removeRow: (path, index) => {
      this.#change(withoutOneRow(this.#work.sheet, path, index));
      show(path);
    },
    addSection: async (path) => {
      const example = await this.#example(path);
      this.#change(withSection(this.#work.sheet, path, example));
      this.#say(['Added with the figures of an example: put in your own.']);
      show(path);
    },
    setUnit: (unit) => this.#change(inUnit(this.#work.sheet, unit)),
    goTo: show,
  };

  readonly #tools: ToolActions = {
    startFrom: async (name) => {
      const { contents } = await import('./examples.ts');
      this.#begin(sheetOf(contents[name]), []);
    },
    open: async (file) => {
      try {
        this.#begin(await sheetInFile(file), [`Opened ${file.name}.`]);
      } catch (error) {
        if (!(error instanceof FileRefused)) throw error;
        this.#say([`${file.name} is not opened; your plan is as it was.`, ...error.lines]);
      }
    },
    undo: () => this.#take(undone(this.#work)),
    copyLink: async () => {
      const link = await linkOf(this.#work.sheet);
      await navigator.clipboard.writeText(new URL(link, location.href).href);
      this.#say(['The link is copied.']);
    },
    save: () => {
      const { sheet } = this.#work;
      if (this.#outcome.result === null) return this.#say([MEND_FIRST]);
      const content = `${JSON.stringify(planContent(sheet), null, 2)}\n`;
      takeAway(fileName(this.#outcome.result.plan.name, 'plan.json'), 'application/json', content);
    },
  };

  readonly #further: FurtherActions = {
    take: async (name) => {
      const { result } = this.#outcome;
      const output = outputs[name];
      if (result === null || !output) return;
      try {
        const content = await output.make({ result, sheet: this.#work.sheet, paper: this.#paper });
        if (content !== null) takeAway(fileName(result.plan.name, output.file), output.type, content);
      } catch (error) {
        if (!(error instanceof RangeError)) throw error;
        this.#say([`${output.label}: ${error.message}`]);
      }
    },
    ask: async (question) => {
      const { result } = this.#outcome;
      if (result === null) return;
      this.#told = [{ title: 'Working it out …', lines: [] }];
      this.#show();
      const { answers } = await import('./on-demand.ts');
      // A frame, so that this is seen before the work begins.
      await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
      if (result !== this.#outcome.result) return;
      this.#told = answers[question](result);
      this.#show();
    },
    setPaper: (paper) => {
      if (isPaper(paper)) this.#paper = paper;
      this.#show();
    },
    print: () => window.print(),
  };
}
