import { type ReactNode, type SubmitEvent, useId, useState } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import { idOfName } from '../../../../../core/boat/id-of-name.ts';
import type { AirDraftPart } from '../../../../../core/boat/measures.ts';
import type { Plan } from '../../../../../core/plan-shape.ts';
import { useEdit } from '../../../edit-context.ts';
import { parseTyped } from '../../../forms/typed-length.ts';
import { useWords } from '../../../words/units.ts';
import { words } from './words.ts';

const metres = (valueM: number): string => `${valueM.toFixed(2)} m`;
// reason: the keys of a record of words are its words
const hows = Object.keys(words.hows) as (keyof typeof words.hows)[];

const partOf = (form: FormData, taken: ReadonlySet<string>): AirDraftPart | undefined => {
  const name = String(form.get('name') ?? '')
    .trim()
    .slice(0, 120);
  const valueM = parseTyped(String(form.get('length') ?? ''));
  const how = hows.find((one) => one === form.get('how'));
  if (name === '' || valueM === undefined || how === undefined) return undefined;
  const stem = idOfName(name) === '' ? 'part' : idOfName(name);
  const id = taken.has(stem) ? `${stem}-${taken.size + 1}` : stem;
  const unit = String(form.get('unit') ?? '');
  return { id, name, length: { valueM, how }, ...(unit === '' ? {} : { unit }) };
};

/** One part more, from the water up. */
const AddPart = ({ boat, onAdd }: { boat: Boat; onAdd: (part: AirDraftPart) => void }): ReactNode => {
  const [isWrong, setIsWrong] = useState(false);
  const help = useId();
  const taken = new Set((boat.measures?.airDraftParts ?? []).map(({ id }) => id));
  const put = (event: SubmitEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const part = partOf(new FormData(event.currentTarget), taken);
    setIsWrong(part === undefined);
    if (part === undefined) return;
    event.currentTarget.reset();
    onAdd(part);
  };
  return (
    <form className="form-fields" onSubmit={put}>
      <label className="form-field">
        <span>{words.partName}</span>
        <input name="name" required maxLength={120} autoComplete="off" />
      </label>
      <label className="form-field">
        <span>{words.partLength}</span>
        <input
          name="length"
          required
          inputMode="decimal"
          autoComplete="off"
          aria-invalid={isWrong}
          aria-describedby={isWrong ? help : undefined}
        />
      </label>
      <label className="form-field">
        <span>{words.partHow}</span>
        <select name="how">
          {hows.map((how) => (
            <option key={how} value={how}>
              {words.hows[how]}
            </option>
          ))}
        </select>
      </label>
      <label className="form-field">
        <span>{words.partUnit}</span>
        <select name="unit">
          <option value="">{words.noUnit}</option>
          {boat.kit.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      {isWrong ? (
        <p id={help} className="wide" role="alert">
          {words.lengthWrong}
        </p>
      ) : null}
      <button type="submit" className="press-link">
        {words.addPart}
      </button>
    </form>
  );
};

/** The air draft built up from its named parts, each with how it is known. */
export const AirDraftParts = ({ boat, plan }: { boat: Boat; plan: Plan }): ReactNode => {
  const edit = useEdit();
  const say = useWords();
  const parts = boat.measures?.airDraftParts ?? [];
  const { valueM, mostM, beforeM } = plan.airDraft;
  const set = (all: readonly AirDraftPart[]): void =>
    edit([
      { edit: 'set-measures', params: all.length === 0 ? { forget: ['airDraftParts'] } : { airDraftParts: [...all] } },
    ]);
  return (
    <details className="why">
      <summary>
        {words.airDraft}: {say(metres(valueM))}
      </summary>
      <p>
        {say(words.airDraftSum(metres(valueM), metres(mostM)))}{' '}
        {beforeM === undefined ? null : say(words.airDraftBefore(metres(beforeM)))}
      </p>
      {parts.length === 0 ? <p className="quiet">{words.noParts}</p> : null}
      <ul>
        {parts.map((part) => (
          <li key={part.id}>
            {part.name}: {say(metres(part.length.valueM))}, {words.hows[part.length.how]}{' '}
            <button type="button" className="press-link" onClick={() => set(parts.filter(({ id }) => id !== part.id))}>
              {words.takeOut}
              <span className="unseen"> {part.name}</span>
            </button>
          </li>
        ))}
      </ul>
      <AddPart boat={boat} onAdd={(part) => set([...parts, part])} />
    </details>
  );
};
