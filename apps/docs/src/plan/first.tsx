import { planDrawing, planWorktop } from '@scantling/worktop';
import { render } from 'preact-render-to-string';
import { Checks } from './view/Checks.tsx';
import { PlanForm } from './view/Form.tsx';
import { Further } from './view/Further.tsx';
import { Tools } from './view/Tools.tsx';
import { Verdict } from './view/Verdict.tsx';
import { begun, outcome, sheetOf } from './work.ts';

/** Nothing can be asked for before the script is there. */
const none = new Proxy({} as never, { get: () => () => {} });

/** The parts of the page as they first stand, for a page without script and for the script to take over. */
export function firstParts(content: unknown) {
  const sheet = sheetOf(content);
  const first = outcome(sheet, planWorktop);
  if (!first.result)
    throw new Error(`The planner refuses its own example: ${JSON.stringify(first.problems)}`);
  const { drilling } = sheet.plan;
  const further = {
    missing: false,
    hasMachine: drilling !== undefined,
    paper: 'A4',
    told: [],
    further: none,
  } as const;
  return {
    tools: render(<Tools work={begun(sheet)} link="#" says={[]} tools={none} />),
    form: render(<PlanForm sheet={sheet} problems={first.problems} act={none} />),
    verdict: render(<Verdict outcome={first} name={`${sheet.plan.name}`} />),
    checks: render(<Checks sheet={sheet} outcome={first} />),
    further: render(<Further {...further} />),
    drawing: planDrawing(first.result),
  };
}
