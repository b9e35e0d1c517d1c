import type { Told } from '../on-demand.ts';
import { outputs, type PaperName, papers } from '../outputs.ts';
import { type Question, questions } from '../questions.ts';

export interface FurtherActions {
  take(output: string): void;
  ask(question: Question): void;
  setPaper(paper: string): void;
  print(): void;
}

interface FurtherProps {
  /** There is no plan while a field has to be mended. */
  readonly missing: boolean;
  readonly hasMachine: boolean;
  readonly paper: PaperName;
  readonly told: readonly Told[];
  readonly further: FurtherActions;
}

/** Files to take away, and questions that take longer. */
export function Further({ missing, hasMachine, paper, told, further }: FurtherProps) {
  const offered = Object.entries(outputs).filter(([name]) => name !== 'drilling' || hasMachine);
  return (
    <>
      <section aria-labelledby="further">
        <h2 id="further">Ask further</h2>
        <p class="buttons">
          {Object.entries(questions).map(([name, title]) => (
            <button key={name} type="button" disabled={missing} onClick={() => further.ask(name as Question)}>
              {title}
            </button>
          ))}
        </p>
        <div class="told" role="status">
          {told.map(({ title, lines }) => (
            <div key={title}>
              <h3>{title}</h3>
              <ul>
                {lines.map((line) => (
                  <li key={line}>{line}</li>
                ))}
              </ul>
            </div>
          ))}
        </div>
      </section>
      <section aria-labelledby="take">
        <h2 id="take">Into the shop</h2>
        <p class="paper">
          <label for="paper">Paper</label>{' '}
          <select
            id="paper"
            value={paper}
            onChange={({ currentTarget }) => further.setPaper(currentTarget.value)}
          >
            {Object.keys(papers).map((name) => (
              <option key={name} value={name}>
                {name}
              </option>
            ))}
          </select>
        </p>
        <p class="buttons">
          {offered.map(([name, { label, file }]) => (
            <button key={name} type="button" disabled={missing} onClick={() => further.take(name)}>
              {label} <small>{file}</small>
            </button>
          ))}
          <button type="button" onClick={further.print}>
            Print this page
          </button>
        </p>
        <p class="help">
          Nothing here knows your machine: its manual comes before the drilling program. Measure the bars on
          every printed template before you drill.
        </p>
      </section>
    </>
  );
}
