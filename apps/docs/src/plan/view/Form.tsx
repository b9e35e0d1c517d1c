import { type Field, planField } from '@scantling/worktop/fields';
import { isLengthUnit, lengthUnits } from '../../calculator/lengths.ts';
import { type Draft, isSection } from '../draft.ts';
import { labelOf, sections } from '../labels.ts';
import type { Problems } from '../read.ts';
import type { Sheet } from '../work.ts';
import type { Actions, InForm } from './actions.ts';
import { Entry } from './Entry.tsx';
import { FieldGrid, RowsOf } from './Fields.tsx';
import { Memo } from './memo.tsx';

const NONE: Problems = {};

const isOf = (key: string, path: string) =>
  path === key || path.startsWith(`${key}.`) || path.startsWith(`${key}[`);

/** The problems of one section, by whole paths; always the same object where there are none. */
function problemsOf(key: string, problems: Problems): Problems {
  const own = Object.entries(problems).filter(([path]) => isOf(key, path));
  return own.length > 0 ? Object.fromEntries(own) : NONE;
}

interface SectionProps extends InForm {
  readonly name: string;
  readonly field: Field;
  readonly draft: Draft | undefined;
  readonly problems: Problems;
}

function Contents({ name, field, draft, ...part }: SectionProps) {
  const path = [name];
  if (field.kind === 'list') return <RowsOf {...part} path={path} name={name} field={field} draft={draft} />;
  if (field.kind !== 'section' || !isSection(draft)) return null;
  return <FieldGrid {...part} path={path} section={field} draft={draft} />;
}

/** One section of the plan, to open and close; or an offer to plan it. */
function PlanSection(props: SectionProps) {
  const { name, field, draft, problems, act } = props;
  const count = Object.keys(problems).length;
  const state = draft === undefined ? 'not planned' : count > 0 ? `${count} to mend` : '';
  return (
    <details class="plan-section" id={name} open={name === 'top'}>
      <summary>
        <span class="section-title">{labelOf(name)}</span>
        <span class={count > 0 ? 'state wrong' : 'state'}>{state}</span>
      </summary>
      <p class="help">{field.about}</p>
      <Contents {...props} />
      {field.optional ? (
        <p class="section-actions">
          <button
            type="button"
            onClick={() => (draft === undefined ? act.addSection([name]) : act.fill([name], undefined))}
          >
            {draft === undefined ? 'Plan this, with the figures of an example' : 'Leave this section out'}
          </button>
        </p>
      ) : null}
      <p class="problem">{problems[name]}</p>
    </details>
  );
}

interface FormProps {
  readonly sheet: Sheet;
  readonly problems: Problems;
  readonly act: Actions;
}

/** Names that texts of the plan may repeat. */
function namesIn(draft: Draft | undefined): string[] {
  if (Array.isArray(draft)) return draft.flatMap(namesIn);
  if (!isSection(draft)) return [];
  const own = typeof draft.name === 'string' ? [draft.name] : [];
  return [...own, ...Object.values(draft).flatMap(namesIn)];
}

/** The whole form. */
export function PlanForm({ sheet: { plan, unit }, problems, act }: FormProps) {
  const names = [
    ...new Set(namesIn([plan.top, plan.base, plan.finish].filter((part) => part !== undefined))),
  ];
  return (
    <>
      <fieldset class="lengths">
        <legend>Lengths without a unit are</legend>
        {Object.entries(lengthUnits).map(([value, label]) => (
          <label key={value}>
            <input
              type="radio"
              name="length-unit"
              value={value}
              checked={value === unit}
              onChange={() => isLengthUnit(value) && act.setUnit(value)}
            />{' '}
            {label}
          </label>
        ))}
        <p class="help">As on the tape, with a unit or without: 5 3/8, 5 3/8 in, 137 mm.</p>
      </fieldset>
      <Entry
        name="name"
        path={['name']}
        field={{ kind: 'text', about: planField.fields.name?.about ?? '' }}
        text={typeof plan.name === 'string' ? plan.name : ''}
        problem={problems.name}
        unit={unit}
        act={act}
      />
      {sections.map((key) => (
        <Memo
          key={key}
          of={PlanSection}
          name={key}
          field={planField.fields[key] as Field}
          draft={plan[key]}
          problems={problemsOf(key, problems)}
          unit={unit}
          act={act}
        />
      ))}
      <datalist id="plan-names">
        {names.map((name) => (
          <option key={name} value={name} />
        ))}
      </datalist>
    </>
  );
}
