import { formatLength } from '@scantling/units';
import type { Choice, Figure, Figures, Text } from '@scantling/worktop/fields';
import { printLength, readLength } from '../../calculator/lengths.ts';
import { CHOOSE, dotted, type Path } from '../draft.ts';
import { labelOf, unitSign } from '../labels.ts';
import type { InForm } from './actions.ts';

export interface EntryProps extends InForm {
  readonly name: string;
  readonly path: Path;
  readonly field: Figure | Figures | Text | Choice;
  readonly text: string;
  readonly problem: string | undefined;
  /** Where the sentence about it stands, if not here. */
  readonly aboutId?: string;
}

const SIXTY_FOURTH_MM = 25.4 / 64;

const isInInches = (text: string, unit: InForm['unit']) =>
  /[fn"″'′]/.test(text) || (unit === 'in' && !text.includes('m'));

/** A length once more: inches in millimetres, millimetres as the nearest mark on an inch tape. */
function otherwise(text: string, unit: InForm['unit']): string {
  const reading = readLength(text, unit);
  if ('problem' in reading) return '';
  const { value } = reading;
  if (isInInches(text, unit)) return `= ${printLength(value, 'mm')}`;
  const ticks = value / SIXTY_FOURTH_MM;
  const sign = Math.abs(ticks - Math.round(ticks)) < 1e-6 ? '=' : '≈';
  return `${sign} ${formatLength(value, { unit: 'in', denominator: 64 })}`;
}

/** Names that a text may repeat are offered by lists on the page. */
const namesFor = (name: string) =>
  name === 'name' ? undefined : name === 'species' ? 'woods' : 'plan-names';

function Control({ name, path, field, text, problem, act, ...rest }: EntryProps & { describedBy: string }) {
  const id = dotted(path);
  const common = {
    id,
    'aria-describedby': rest.describedBy,
    'aria-invalid': problem !== undefined,
  };
  if (field.kind === 'choice') {
    return (
      <select {...common} value={text} onChange={({ currentTarget }) => act.fill(path, currentTarget.value)}>
        {field.names.includes(text) ? null : (
          <option value={text} selected>
            choose one
          </option>
        )}
        {field.names.map((one) => (
          <option key={one} value={one} selected={one === text}>
            {one}
          </option>
        ))}
      </select>
    );
  }
  return (
    <input
      {...common}
      type="text"
      value={text}
      list={field.kind === 'text' ? namesFor(name) : undefined}
      inputMode={field.kind === 'figure' && !name.endsWith('Mm') ? 'decimal' : undefined}
      autocomplete="off"
      onInput={({ currentTarget }) => act.fill(path, currentTarget.value, id)}
    />
  );
}

/** One field with its label, its unit, what it is, and what is wrong with it. */
export function Entry(props: EntryProps) {
  const { name, path, field, text, problem, unit, act, aboutId } = props;
  const id = dotted(path);
  const left = field.open && text === CHOOSE;
  const hasOwnUnit = name.endsWith('Mm') && 'value' in readLength(text);
  const sign = hasOwnUnit ? '' : unitSign(name, unit);
  const describedBy = `${aboutId ?? `${id}-about`} ${id}-problem`;
  return (
    <div class={`field ${field.kind}${problem === undefined ? '' : ' wrong'}`}>
      <label for={id}>{labelOf(name || 'name')}</label>
      {left ? (
        <p class="left-open" id={id} tabIndex={-1}>
          the planner chooses
        </p>
      ) : (
        <div class="entry">
          <Control {...props} describedBy={describedBy} />
          {sign === '' || field.kind === 'choice' ? null : <span class="unit">{sign}</span>}
        </div>
      )}
      {name.endsWith('Mm') && field.kind === 'figure' ? (
        <p class="otherwise">{left ? '' : otherwise(text, unit)}</p>
      ) : null}
      {field.open ? (
        <label class="open">
          <input
            type="checkbox"
            checked={left}
            onChange={({ currentTarget }) => act.choose(path, currentTarget.checked)}
          />{' '}
          leave it to the planner
        </label>
      ) : null}
      {aboutId === undefined ? (
        <p class="help" id={`${id}-about`}>
          {field.about}
        </p>
      ) : null}
      <p class="problem" id={`${id}-problem`}>
        {problem}
      </p>
    </div>
  );
}
