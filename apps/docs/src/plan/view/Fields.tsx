import type { Field, List, Section } from '@scantling/worktop/fields';
import { CHOOSE, type Draft, type DraftSection, dotted, isSection, type Path } from '../draft.ts';
import { labelOf } from '../labels.ts';
import type { Problems } from '../read.ts';
import { rowTitle } from '../rows.ts';
import type { InForm } from './actions.ts';
import { Entry } from './Entry.tsx';

interface Part extends InForm {
  readonly path: Path;
  /** Of everything under this top-level section, by whole paths. */
  readonly problems: Problems;
}

interface PlaceProps extends Part {
  readonly name: string;
  readonly field: Field;
  readonly draft: Draft | undefined;
  /** Rows after the first point to the sentences of the first. */
  readonly aboutPath?: Path | undefined;
}

/** A section that may be left out, or left to the planner, inside another. */
function Inner({ name, field, draft, ...part }: PlaceProps & { field: Section }) {
  const { path, act } = part;
  const id = dotted(path);
  const title = labelOf(name);
  return (
    <fieldset class="inner" id={id} tabIndex={-1}>
      <legend>{title}</legend>
      {part.aboutPath ? null : <p class="help">{field.about}</p>}
      {field.open ? (
        <label class="open">
          <input
            type="checkbox"
            checked={draft === CHOOSE}
            onChange={({ currentTarget }) => act.choose(path, currentTarget.checked)}
          />{' '}
          leave it to the planner
        </label>
      ) : null}
      {isSection(draft) ? <FieldGrid {...part} section={field} draft={draft} /> : null}
      {field.optional ? (
        <button
          type="button"
          onClick={() => (draft === undefined ? act.addSection(path) : act.fill(path, undefined))}
        >
          {draft === undefined ? 'Plan this' : 'Leave this out'}
        </button>
      ) : null}
      <p class="problem">{part.problems[id]}</p>
    </fieldset>
  );
}

/** Rows that are alike, with what adds and removes them. */
function Rows({ name, field, draft, aboutPath, ...part }: PlaceProps & { field: List }) {
  const { path, act, problems } = part;
  const id = dotted(path);
  const rows = Array.isArray(draft) ? (draft as readonly Draft[]) : [];
  const title = labelOf(name);
  const { of } = field;
  return (
    <fieldset class="rows" id={id} tabIndex={-1}>
      <legend>{title}</legend>
      {aboutPath ? null : <p class="help">{field.about}</p>}
      {rows.map((row, i) => {
        const place = [...path, i];
        const called = rowTitle(row, i);
        return (
          <div class={of.kind === 'text' ? 'row name' : 'row'} key={i} id={`${dotted(place)}-row`}>
            {of.kind === 'text' ? (
              <Place {...part} name="" field={of} draft={row} path={place} aboutPath={[...path, 0]} />
            ) : isSection(row) ? (
              <FieldGrid
                {...part}
                path={place}
                section={of}
                draft={row}
                aboutPath={aboutPath ?? (i > 0 ? [...path, 0] : undefined)}
              />
            ) : null}
            <button
              type="button"
              class="remove"
              aria-label={`Remove ${called} from ${title}`}
              onClick={() => act.removeRow(path, i)}
            >
              Remove
            </button>
          </div>
        );
      })}
      {rows.length < field.maxItems ? (
        <button type="button" onClick={() => act.addRow(path)}>
          Add to “{title}”
        </button>
      ) : null}
      <p class="problem">{problems[id]}</p>
    </fieldset>
  );
}

function Place({ aboutPath, ...props }: PlaceProps) {
  const { name, field, draft, path, problems, act, unit } = props;
  if (field.kind === 'section') return <Inner {...props} aboutPath={aboutPath} field={field} />;
  if (field.kind === 'list') return <Rows {...props} aboutPath={aboutPath} field={field} />;
  const text = typeof draft === 'string' ? draft : '';
  const about = aboutPath && { aboutId: `${dotted(aboutPath)}-about` };
  const entry = { name, path, field, text, act, unit, problem: problems[dotted(path)] };
  return <Entry {...entry} {...about} />;
}

/** All fields of a section. */
export function FieldGrid({
  section,
  draft,
  aboutPath,
  ...part
}: Part & { section: Section; draft: DraftSection; aboutPath?: Path | undefined }) {
  return (
    <div class="fields">
      {Object.entries(section.fields).map(([key, field]) => (
        <Place
          {...part}
          key={key}
          name={key}
          field={field}
          draft={draft[key]}
          path={[...part.path, key]}
          aboutPath={aboutPath && [...aboutPath, key]}
        />
      ))}
    </div>
  );
}

/** A list that is a section of its own. */
export const RowsOf = Rows;
