import { type ReactNode, type SubmitEvent, useCallback, useMemo, useRef, useState } from 'react';
import { nextMark } from '../../../../core/as-fitted/next-mark.ts';
import { standingOf } from '../../../../core/as-fitted/standing.ts';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Revision } from '../../../../core/boat/revision.ts';
import { useCommands } from '../../commands/use-commands.ts';
import { useEdit } from '../../edit-context.ts';
import { keepOwnName } from '../../forms/own-name.ts';
import { openFold } from './fitted-block.tsx';
import { readRevision, useReadRevision } from './read-choice.ts';
import { SignedFields, signedBy } from './signed-fields.tsx';
import { SinceRevision } from './since-revision.tsx';
import { words } from './words.ts';

const standings = ['planned', 'fitted'] as const;

/** Gives out the next revision: the boat as she stands is kept under its mark. */
const GiveOut = ({ boat, mark, onGiven }: { boat: Boat; mark: string; onGiven: () => void }): ReactNode => {
  const edit = useEdit();
  const [chosen, setChosen] = useState<Revision['standing'] | undefined>(undefined);
  const standing = chosen ?? standingOf(boat);
  const give = (event: SubmitEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const says = String(form.get('says') ?? '').trim();
    if (says === '') return;
    const signed = signedBy(form);
    if (signed.by !== undefined) keepOwnName(signed.by);
    event.currentTarget.reset();
    setChosen(undefined);
    onGiven();
    edit([{ edit: 'issue-revision', params: { mark, standing, says, ...signed } }]);
  };
  return (
    <form className="binder-form" onSubmit={give}>
      <label>
        <span>{words.stands}</span>
        <select
          value={standing}
          onChange={({ currentTarget: { value } }) => setChosen(standings.find((one) => one === value))}
        >
          {standings.map((one) => (
            <option key={one} value={one}>
              {words.asStands(words.standing[one])}
            </option>
          ))}
        </select>
      </label>
      <label>
        <span>{words.whatFor}</span>
        <input name="says" required maxLength={400} autoComplete="off" placeholder={words.whatForHint} />
      </label>
      <SignedFields />
      <button type="submit" className="binder-put">
        {words.giveOut(mark, words.standing[standing])}
      </button>
    </form>
  );
};

/** What was given out, each to be read again as it was, and the next one. */
export const RevisionsBlock = ({ boat }: { boat: Boat }): ReactNode => {
  const fold = useRef<HTMLDetailsElement>(null);
  const read = useReadRevision();
  const given = boat.revisions ?? [];
  const mark = nextMark(given.map((revision) => revision.mark));
  const last = given.at(-1);
  const open = useCallback(() => openFold(fold.current), []);
  useCommands(
    useMemo(
      () =>
        mark === undefined
          ? []
          : [
              {
                id: 'give-out-revision',
                group: 'change',
                says: words.giveOutNext(mark),
                foundBy: words.giveOutFoundBy,
                run: open,
              } as const,
            ],
      [mark, open],
    ),
  );
  return (
    <section className="block binder-block">
      <h2>{words.revisionsHeading}</h2>
      {given.length === 0 ? <p className="quiet">{words.noneGiven}</p> : null}
      <ol className="binder-noted">
        {given.map((revision) => (
          <li key={revision.mark}>
            <p>{words.revision(revision.mark, words.standing[revision.standing], revision.says)}</p>
            <p className="quiet">{words.signed(revision.on, revision.by, undefined)}</p>
            <button
              type="button"
              className="press-link"
              aria-pressed={revision.mark === read}
              onClick={() => readRevision(revision.mark === read ? undefined : revision.mark)}
            >
              {words.readIt}
              <span className="unseen">{words.revisionOf(revision.mark)}</span>
            </button>
          </li>
        ))}
      </ol>
      {last === undefined ? null : <SinceRevision boat={boat} revision={last} />}
      {mark === undefined ? null : (
        <details ref={fold}>
          <summary>{words.giveOutNext(mark)}</summary>
          <GiveOut
            boat={boat}
            mark={mark}
            onGiven={() => {
              if (fold.current !== null) fold.current.open = false;
            }}
          />
        </details>
      )}
    </section>
  );
};
