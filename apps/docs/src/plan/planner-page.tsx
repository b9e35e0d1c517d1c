import type { WorktopPlan } from '@scantling/worktop';
import { hydrate, render, type VNode } from 'preact';
import { withAnotherRow, withChoice, withoutOneRow, withSection } from './desk.ts';
import { at, type Path } from './draft.ts';
import { FileRefused, sheetInFile } from './file.ts';
import { show, takeAway } from './jump.ts';
import { pathIn } from './labels.ts';
import { linkOf, sheetInLink } from './link.ts';
import type { Told } from './on-demand.ts';
import { fileName, isPaper, outputs, type PaperName } from './outputs.ts';
import type { Problems } from './read.ts';
import { outcomeSoon } from './soon.ts';
import { verdictOf } from './verdict.ts';
import type { Actions } from './view/actions.ts';
import { Checks } from './view/Checks.tsx';
import { PlanForm } from './view/Form.tsx';
import { Further, type FurtherActions } from './view/Further.tsx';
import { type ToolActions, Tools } from './view/Tools.tsx';
import { Verdict } from './view/Verdict.tsx';
import {
  asked,
  begun,
  changed,
  filledIn,
  inUnit,
  type Outcome,
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
  /** What came of the last sheet that was planned; the page came with that of its first. */
  #outcome: Outcome | null = null;
  #problems: Problems;
  #link = '#';
  #says: readonly string[] = [];
  #told: readonly Told[] = [];
  #paper: PaperName = 'A4';
  #linkTimer = 0;
  #sayTimer = 0;

  /** Takes over the page that came with this sheet and its outcome. */
  constructor(sheet: Sheet) {
    this.#work = begun(sheet);
    this.#problems = asked(sheet).reading.problems;
    this.#show(hydrate);
    addEventListener('hashchange', () => {
      if (location.hash !== this.#link) this.openLink();
    });
    part('planner').addEventListener('click', (event) => this.#follow(event));
    part('plan-form').addEventListener('focusin', () => this.#result(), { once: true });
    this.#keep(false);
  }

  /** Takes the sheet that the page's address holds, if it holds one. */
  async openLink(): Promise<void> {
    try {
      const sheet = await sheetInLink(location.hash);
      if (!sheet) return;
      this.#link = location.hash;
      await this.#begin(sheet, []);
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      this.#say([error.message]);
    }
  }

  /** A link to a place on the page opens what it is in, and leaves the plan in the address. */
  #follow(event: MouseEvent) {
    const link = (event.target as Element).closest('a')?.getAttribute('href');
    if (!link?.startsWith('#') || link === this.#link) return;
    event.preventDefault();
    show(pathIn(link.slice(1)));
  }

  #show(put: (what: VNode, place: HTMLElement) => void = render) {
    const { sheet } = this.#work;
    const problems = this.#problems;
    const tools = { work: this.#work, link: this.#link, says: this.#says, tools: this.#tools };
    const missing = Object.keys(problems).length > 0;
    const hasMachine = sheet.plan.drilling !== undefined;
    const further = { missing, hasMachine, paper: this.#paper, told: this.#told, further: this.#further };
    put(<Tools {...tools} />, part('plan-tools'));
    put(<PlanForm sheet={sheet} problems={problems} act={this.#act} />, part('plan-form'));
    put(<Further {...further} />, part('plan-further'));
  }

  #showOutcome(sheet: Sheet, outcome: Outcome) {
    const name = typeof sheet.plan.name === 'string' ? sheet.plan.name : '';
    render(<Verdict outcome={outcome} name={name} />, part('plan-verdict'));
    render(<Checks sheet={sheet} outcome={outcome} />, part('plan-checks'));
  }

  #say(lines: readonly string[]) {
    this.#says = lines;
    this.#show();
  }

  /** A change of the form, and everything that follows from it. */
  async #take(work: Work): Promise<void> {
    const { sheet } = work;
    this.#work = work;
    this.#outcome = null;
    this.#problems = asked(sheet).reading.problems;
    this.#says = [];
    this.#told = [];
    this.#show();
    this.#keep();
    const outcome = await outcomeSoon(sheet);
    if (sheet !== this.#work.sheet) return;
    this.#outcome = outcome;
    if (this.#problems !== outcome.problems) {
      this.#problems = outcome.problems;
      this.#show();
    }
    this.#showOutcome(sheet, outcome);
    this.#draw(outcome.result);
    part('planner').dispatchEvent(new Event('planned'));
  }

  /** The plan of the sheet as it stands; `null` while there is something to mend. */
  async #result(): Promise<WorktopPlan | null> {
    const { sheet } = this.#work;
    const outcome = this.#outcome ?? (await outcomeSoon(sheet));
    if (sheet === this.#work.sheet) this.#outcome = outcome;
    return outcome.result;
  }

  /** A plan from elsewhere; the one before can be had back. */
  async #begin(sheet: Sheet, says: readonly string[]) {
    await this.#take(changed(this.#work, sheet));
    this.#say(says);
  }

  #change(sheet: Sheet, run?: string) {
    return this.#take(changed(this.#work, sheet, run));
  }

  async #draw(result: WorktopPlan | null) {
    part('plan-drawing').classList.toggle('stale', result === null);
    if (result === null) return;
    const { showDrawing } = await import('./drawing.ts');
    requestAnimationFrame(() => {
      if (result === this.#outcome?.result) showDrawing(part('plan-drawing'), result);
    });
  }

  /** The address and the spoken verdict follow after a pause. */
  #keep(intoAddress = true) {
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
      const verdict = this.#outcome ? verdictOf(this.#outcome) : '';
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
    fill: (path, draft, run) => {
      this.#change(filledIn(this.#work.sheet, path, draft), run);
    },
    choose: async (path, left) => {
      const result = await this.#result();
      this.#change(withChoice(this.#work.sheet, path, left, result));
    },
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
      await this.#change(withSection(this.#work.sheet, path, example));
      this.#say(['Added with the figures of an example: put in your own.']);
      show(path);
    },
    setUnit: (unit) => {
      this.#change(inUnit(this.#work.sheet, unit));
    },
  };

  readonly #tools: ToolActions = {
    startFrom: async (name) => {
      const { contents } = await import('./examples.ts');
      this.#begin(sheetOf(contents[name]), []);
    },
    open: async (file) => {
      try {
        await this.#begin(await sheetInFile(file), [`Opened ${file.name}.`]);
      } catch (error) {
        if (!(error instanceof FileRefused)) throw error;
        this.#say([`${file.name} is not opened; your plan is as it was.`, ...error.lines]);
      }
    },
    undo: () => {
      this.#take(undone(this.#work));
    },
    copyLink: async () => {
      const link = await linkOf(this.#work.sheet);
      await navigator.clipboard.writeText(new URL(link, location.href).href);
      this.#say(['The link is copied.']);
    },
    save: async () => {
      const result = await this.#result();
      if (result === null) return this.#say([MEND_FIRST]);
      const content = `${JSON.stringify(planContent(this.#work.sheet), null, 2)}\n`;
      takeAway(fileName(result.plan.name, 'plan.json'), 'application/json', content);
    },
  };

  readonly #further: FurtherActions = {
    take: async (name) => {
      const result = await this.#result();
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
      this.#told = [{ title: 'Working it out …', lines: [] }];
      this.#show();
      const result = await this.#result();
      if (result === null) return;
      const { answers } = await import('./on-demand.ts');
      // A frame, so that this is seen before the work begins.
      await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
      if (result !== this.#outcome?.result) return;
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
