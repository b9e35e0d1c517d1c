import { standingOf, verdictOf } from '../verdict.ts';
import type { Outcome } from '../work.ts';

interface VerdictProps {
  readonly outcome: Outcome;
  readonly name: string;
}

/** The verdict, in sight wherever on the page one is. */
export function Verdict({ outcome, name }: VerdictProps) {
  return (
    <div class={`verdict ${standingOf(outcome)}`}>
      <h2 id="verdict">{name || 'Without a name'}</h2>
      <p>{verdictOf(outcome)}</p>
      <a href="#checks">See the checks</a>
    </div>
  );
}
