import { type ReactNode, type SubmitEvent, useId, useMemo, useState } from 'react';
import { fittedEdits } from '../../../../core/as-fitted/fitted-edits.ts';
import { type FoundKind, foundKinds, foundOtherwise } from '../../../../core/as-fitted/found-otherwise.ts';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import { cardBoat } from '../../../../papers/cards/card-boat.ts';
import { type FoundSubject, foundSubjects } from '../../../../papers/lists/found-subjects.ts';
import { throughWords } from '../../../../papers/lists/led-words.ts';
import { useEdit } from '../../edit-context.ts';
import { keepOwnName } from '../../forms/own-name.ts';
import { useLeadChoices } from '../../sheet/route-answers.ts';
import { useWords } from '../../words/units.ts';
import { SignedFields, signedBy } from './signed-fields.tsx';
import { words } from './words.ts';

interface FittedFormProps {
  readonly boat: Boat;
  readonly plan: Plan;
}

const Options = ({ of }: { of: readonly FoundSubject[] }): ReactNode =>
  of.map(({ id, says }) => (
    <option key={id} value={id}>
      {says}
    </option>
  ));

/** The routes a line may have been led by instead. */
const RouteField = ({ boat, plan, line }: FittedFormProps & { line: string }): ReactNode => {
  const say = useWords();
  const names = useMemo(() => cardBoat(boat), [boat]);
  const known = useLeadChoices(
    plan,
    plan.lines.find(({ id }) => id === line),
  );
  const routes = new Map((known ?? []).map((choice) => [choice.ways.join(), choice]));
  return (
    <label>
      <span>{words.found.route}</span>
      <select name="typed" required disabled={routes.size === 0}>
        {line !== '' && known !== undefined && routes.size === 0 ? <option value="">{words.noOther}</option> : null}
        {[...routes].map(([ways, choice]) => (
          <option key={ways} value={ways}>
            {say(words.through(throughWords(names, choice), `${choice.lengthM.toFixed(2)} m`))}
          </option>
        ))}
      </select>
    </label>
  );
};

const ValueField = ({
  what,
  about,
  isWrong,
  ...of
}: FittedFormProps & { what: FoundKind; about: string; isWrong: boolean }): ReactNode => {
  const help = useId();
  if (what === 'route') return <RouteField {...of} line={about} />;
  if (what === 'place') {
    return (
      <label>
        <span>{words.found.place}</span>
        <select name="typed" required>
          <option value="">{words.choosePlace}</option>
          <Options of={foundSubjects(of.boat, of.plan).places} />
        </select>
      </label>
    );
  }
  return (
    <>
      <label>
        <span>{words.found[what]}</span>
        <input
          name="typed"
          required
          autoComplete="off"
          placeholder={words.hints[what]}
          aria-invalid={isWrong}
          aria-describedby={isWrong ? help : undefined}
        />
      </label>
      {isWrong ? (
        <p id={help} className="binder-wrong" role="alert">
          {words.wrong[what]}
        </p>
      ) : null}
    </>
  );
};

const subjectsFor = (what: FoundKind, all: ReturnType<typeof foundSubjects>): readonly FoundSubject[] => {
  switch (what) {
    case 'place':
      return all.units;
    case 'length':
    case 'route':
      return all.lines;
    case 'wire':
      return all.wires;
    case 'fuse':
      return all.circuits;
    case 'other':
      return [...all.units, ...all.lines, ...all.circuits, ...all.places];
  }
};

/** Takes in one thing that came out otherwise than planned: the boat file follows the boat, and the papers tell of it. */
export const FittedForm = ({ boat, plan }: FittedFormProps): ReactNode => {
  const edit = useEdit();
  const [what, setWhat] = useState<FoundKind>('place');
  const [asked, setAsked] = useState('');
  const [isWrong, setIsWrong] = useState(false);
  const all = useMemo(() => foundSubjects(boat, plan), [boat, plan]);
  const subjects = subjectsFor(what, all);
  const about = subjects.some(({ id }) => id === asked) ? asked : (subjects[0]?.id ?? '');
  const put = (event: SubmitEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const found = foundOtherwise({ what, about, typed: String(form.get('typed') ?? '') });
    setIsWrong(found === undefined);
    if (found === undefined) return;
    const signed = signedBy(form);
    if (signed.by !== undefined) keepOwnName(signed.by);
    const note = String(form.get('note') ?? '')
      .trim()
      .slice(0, 400);
    const by = { ...signed, ...(note === '' ? {} : { note }) };
    const name = subjects.find(({ id }) => id === about)?.says ?? about;
    edit(fittedEdits({ boat, plan }, found, by), words.noted(name));
    for (const field of event.currentTarget.querySelectorAll<HTMLInputElement>('input[name="typed"], [name="note"]')) {
      field.value = '';
    }
  };
  return (
    <form className="binder-form" onSubmit={put}>
      <label>
        <span>{words.differs}</span>
        <select
          value={what}
          onChange={({ currentTarget: { value } }) => {
            setWhat(foundKinds.find((kind) => kind === value) ?? 'other');
            setIsWrong(false);
          }}
        >
          {foundKinds.map((kind) => (
            <option key={kind} value={kind}>
              {words.kinds[kind]}
            </option>
          ))}
        </select>
      </label>
      <label>
        <span>{words.of}</span>
        <select value={about} onChange={({ currentTarget: { value } }) => setAsked(value)}>
          <Options of={subjects} />
        </select>
      </label>
      <ValueField key={what} boat={boat} plan={plan} what={what} about={about} isWrong={isWrong} />
      <SignedFields />
      <label>
        <span>{words.note}</span>
        <input name="note" maxLength={400} autoComplete="off" />
      </label>
      <button type="submit" className="binder-put" disabled={subjects.length === 0}>
        {words.noteIt}
      </button>
    </form>
  );
};
