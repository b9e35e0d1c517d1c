import { isStart, starts } from '../starts.ts';
import type { Work } from '../work.ts';

export interface ToolActions {
  startFrom(name: string): void;
  open(file: File): void;
  undo(): void;
  copyLink(): void;
  save(): void;
}

interface ToolsProps {
  readonly work: Work;
  readonly link: string;
  /** What came of the last thing that was asked for. */
  readonly says: readonly string[];
  readonly tools: ToolActions;
}

/** Where a plan comes from and goes to. */
export function Tools({ work, link, says, tools }: ToolsProps) {
  return (
    <>
      <div class="tools">
        <span class="start">
          <label for="start-from">Start from</label>{' '}
          <select id="start-from">
            {Object.entries(starts).map(([name, title]) => (
              <option key={name} value={name}>
                {title}
              </option>
            ))}
          </select>{' '}
          <button
            type="button"
            onClick={() => {
              const chosen = document.getElementById('start-from') as HTMLSelectElement;
              if (isStart(chosen.value)) tools.startFrom(chosen.value);
            }}
          >
            Start
          </button>
        </span>
        <label class="file">
          Open a plan file{' '}
          <input
            type="file"
            accept=".json,application/json"
            onChange={({ currentTarget }) => {
              const file = currentTarget.files?.[0];
              if (file) tools.open(file);
              currentTarget.value = '';
            }}
          />
        </label>
        <button type="button" onClick={tools.save}>
          Save the plan file
        </button>
        <button type="button" onClick={tools.undo} disabled={work.before.length === 0}>
          Undo
        </button>
        <a class="link" href={link}>
          Link to this plan
        </a>
        <button type="button" onClick={tools.copyLink}>
          Copy the link
        </button>
      </div>
      <div class="says" role="status">
        {says.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </div>
    </>
  );
}
