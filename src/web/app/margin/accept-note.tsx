import { type KeyboardEvent, type ReactNode, type SubmitEvent, useId, useState } from 'react';
import type { Finding } from '../../../core/plan-shape.ts';
import { useEdit } from '../edit-context.ts';
import './accept-note.css';
import { words } from './words.ts';

/** Where a person says why they live with what a note says; the reason stays in the boat file and on the papers. */
const AcceptForm = ({
  findings,
  title,
  onDone,
}: {
  findings: readonly Finding[];
  title: string;
  onDone: () => void;
}): ReactNode => {
  const edit = useEdit();
  const [isWrong, setIsWrong] = useState(false);
  const help = useId();
  const put = (event: SubmitEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const reason = String(new FormData(event.currentTarget).get('reason') ?? '').trim();
    setIsWrong(reason === '');
    if (reason === '') return;
    edit(
      findings.map(({ id }) => ({ edit: 'accept-finding', params: { finding: id, reason } })),
      words.stepTitle(title, reason),
    );
    onDone();
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Escape') onDone();
  };
  return (
    <form className="accept-form" onSubmit={put} onKeyDown={onKeyDown}>
      <label>
        {words.because}
        <input
          name="reason"
          maxLength={400}
          autoComplete="off"
          // biome-ignore lint/a11y/noAutofocus: whoever pressed “accept” is about to type here
          autoFocus={true}
          aria-invalid={isWrong}
          aria-describedby={isWrong ? help : undefined}
        />
      </label>
      {isWrong ? (
        <p id={help} role="alert">
          {words.reasonWanted}
        </p>
      ) : null}
      <button type="submit">{words.put}</button>
      <button type="button" onClick={onDone}>
        {words.leave}
      </button>
    </form>
  );
};

/** Offers to accept what a note says, with a reason. A danger offers none: it is mended. */
export const AcceptNote = ({ findings, title }: { findings: readonly Finding[]; title: string }): ReactNode => {
  const [isAsked, setIsAsked] = useState(false);
  if (findings.some(({ level }) => level === 'danger')) return null;
  return isAsked ? (
    <AcceptForm findings={findings} title={title} onDone={() => setIsAsked(false)} />
  ) : (
    <button
      type="button"
      className="accept-link"
      aria-label={words.acceptAbout(title)}
      onClick={() => setIsAsked(true)}
    >
      {words.accept}
    </button>
  );
};

/** What was accepted, each with its reason and the way back. */
export const AcceptedNotes = ({
  findings,
  titles,
}: {
  findings: readonly Finding[];
  titles: ReadonlyMap<string, string>;
}): ReactNode => {
  const edit = useEdit();
  if (findings.length === 0) return null;
  return (
    <details className="block accepted-notes">
      <summary>{words.accepted(findings.length)}</summary>
      <ul>
        {findings.map(({ id, rule, says, accepted = '' }) => (
          <li key={id}>
            <p>{says}</p>
            <p className="quiet">
              {words.because}: {accepted}
            </p>
            <button
              type="button"
              className="accept-link"
              aria-label={words.reopenAbout(says)}
              onClick={() =>
                edit([{ edit: 'reopen-finding', params: { finding: id } }], words.reopenTitle(titles.get(rule) ?? says))
              }
            >
              {words.reopen}
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
};
