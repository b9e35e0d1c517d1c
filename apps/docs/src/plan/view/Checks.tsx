import type { Check, WorktopPlan } from '@scantling/worktop';
import { dotted, type Path } from '../draft.ts';
import { placesOf } from '../faults.ts';
import { pathIn, placeInWords } from '../labels.ts';
import { inOrder, marginText, statusWords } from '../verdict.ts';
import type { Outcome, Sheet } from '../work.ts';

interface Shown {
  readonly sheet: Sheet;
}

/** Leads to a place in the form; the page opens what it is in. */
const Jump = ({ path, sheet }: Shown & { path: Path }) => (
  <a href={`#${dotted(path)}`}>{placeInWords(sheet.plan, path)}</a>
);

function OneCheck({ check, result, ...shown }: Shown & { check: Check; result: WorktopPlan }) {
  const margin = marginText(check, shown.sheet.unit);
  const places = placesOf(check, result, shown.sheet.plan);
  const says = check.says.split('\n');
  const details = (
    <>
      {says.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <ul class="places">
        {places.map((path) => (
          <li key={dotted(path)}>
            <Jump {...shown} path={path} />
          </li>
        ))}
      </ul>
    </>
  );
  return (
    <li class={check.status} id={`check-${check.id}`}>
      <h3>
        <span class="status">{statusWords[check.status]}</span> {check.title}
      </h3>
      {margin === '' ? null : <p class="margin">{margin}</p>}
      {check.status === 'pass' ? (
        <details>
          <summary>What it says</summary>
          {details}
        </details>
      ) : (
        details
      )}
    </li>
  );
}

function Chosen({ result, ...shown }: Shown & { result: WorktopPlan }) {
  if (result.chosen.length === 0) return null;
  return (
    <section aria-labelledby="chosen">
      <h2 id="chosen">What the planner chose</h2>
      <ul class="chosen">
        {result.chosen.map(({ path, says, proven }) => (
          <li key={path}>
            <h3>
              <Jump {...shown} path={pathIn(path)} />
            </h3>
            <p>{says}</p>
            <p class="help">{proven ? 'Proven: no other value is better.' : 'Not proven to be the best.'}</p>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** What has to be mended before anything can be planned. */
function Mend({ problems, ...shown }: Shown & { problems: Outcome['problems'] }) {
  return (
    <ul class="mend">
      {Object.entries(problems).map(([path, problem]) => (
        <li key={path} class="fail">
          {path === '' ? null : <Jump {...shown} path={pathIn(path)} />} {problem}
        </li>
      ))}
    </ul>
  );
}

/** Everything that is said of a plan. */
export function Checks({ outcome, ...shown }: Shown & { outcome: Outcome }) {
  const { result, problems } = outcome;
  return (
    <>
      <section aria-labelledby="checks">
        <h2 id="checks">{result ? 'Checks' : 'To mend first'}</h2>
        {result ? (
          <ol class="checks">
            {inOrder(result.checks).map((check) => (
              <OneCheck key={check.id} {...shown} check={check} result={result} />
            ))}
          </ol>
        ) : (
          <Mend {...shown} problems={problems} />
        )}
      </section>
      {result ? <Chosen {...shown} result={result} /> : null}
      {result ? (
        <section aria-labelledby="cautions">
          <h2 id="cautions">With care</h2>
          <ul class="cautions">
            {result.cautions.map((caution) => (
              <li key={caution}>{caution}</li>
            ))}
          </ul>
        </section>
      ) : null}
    </>
  );
}
