import { type ReactNode, type SubmitEvent, useCallback, useMemo, useRef, useState } from 'react';
import { indexBoat } from '../../../../../core/boat/boat-index.ts';
import type { LogEntry } from '../../../../../core/log/log-entry.ts';
import type { SurveyEntry } from '../../../../../core/log/survey-edits.ts';
import { cardBoat } from '../../../../../papers/cards/card-boat.ts';
import { surveyWords } from '../../../../../papers/phone/survey-words.ts';
import { testWords } from '../../../../../papers/proof/test-words.ts';
import { trialName } from '../../../../../papers/proof/trial-words.ts';
import { useCommands } from '../../../commands/use-commands.ts';
import { keepOwnName, ownName } from '../../../forms/own-name.ts';
import { type OpenLog, useBoatLog } from '../../../log/use-boat-log.ts';
import type { StepMarginProps } from '../../step.ts';
import './log-block.css';
import { words } from './words.ts';

/** Of a long log only the latest are drawn, until somebody asks for all. */
const latestShown = 20;

const wordsOf = (
  entry: LogEntry,
  nameOf: (test: string) => string,
  foundOf: (entry: SurveyEntry) => string,
): string => {
  switch (entry.kind) {
    case 'reading':
      return words.reading(nameOf(entry.test), entry.value, entry.right);
    case 'tick':
      return words.tick(entry.of, entry.done);
    case 'note':
      return entry.text;
    case 'measure':
    case 'seen':
    case 'aboard':
    case 'photo':
      return foundOf(entry);
    case 'withdrawn':
      return '';
  }
};

const shownMoment = (at: string): string => new Date(at).toLocaleString([], { dateStyle: 'short', timeStyle: 'short' });

interface LineProps {
  readonly entry: LogEntry;
  readonly nameOf: (test: string) => string;
  readonly foundOf: (entry: SurveyEntry) => string;
  readonly append: OpenLog['append'];
}

const Line = ({ entry, nameOf, foundOf, append }: LineProps): ReactNode => {
  const says = wordsOf(entry, nameOf, foundOf);
  return (
    <li>
      <p>{says}</p>
      <p className="quiet">{words.signed(shownMoment(entry.at), entry.by)}</p>
      <button type="button" className="press-link" onClick={() => append({ kind: 'withdrawn', entry: entry.id })}>
        {words.takeBack}
        <span className="unseen">{words.takeBackOf(says)}</span>
      </button>
    </li>
  );
};

const NoteForm = ({ append }: Pick<OpenLog, 'append'>): ReactNode => {
  const put = (event: SubmitEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const text = String(form.get('text') ?? '').trim();
    const by = String(form.get('by') ?? '').trim();
    if (text === '') return;
    keepOwnName(by);
    append({ kind: 'note', about: [], text, ...(by === '' ? {} : { by }) });
    event.currentTarget.reset();
  };
  return (
    <form className="log-form" onSubmit={put}>
      <label>
        <span>{words.note}</span>
        <textarea name="text" rows={2} maxLength={2000} required placeholder={words.noteHint} />
      </label>
      <label>
        <span>{words.by}</span>
        <input name="by" defaultValue={ownName()} maxLength={120} autoComplete="off" />
      </label>
      <button type="submit" className="press-link">
        {words.add}
      </button>
    </form>
  );
};

/** The log beside the boat: a note is written here, and every line of it can be read and taken back. */
export const LogBlock = ({ boat, plan }: StepMarginProps): ReactNode => {
  const { log, append, waiting, refused, unread } = useBoatLog(boat.name);
  const block = useRef<HTMLElement>(null);
  const [isWhole, setIsWhole] = useState(false);
  const write = useCallback(() => block.current?.querySelector<HTMLElement>('textarea')?.focus(), []);
  useCommands(
    useMemo(
      () => [
        { id: 'write-note', group: 'change', says: words.commandSays, foundBy: words.foundBy, run: write } as const,
      ],
      [write],
    ),
  );
  const nameOf = useMemo(() => {
    const index = cardBoat(boat);
    const tests = new Map(plan.tests.map((test) => [test.id, test]));
    return (id: string): string => {
      const test = tests.get(id);
      if (test !== undefined) return testWords(index, test);
      return id.startsWith('trial/') ? trialName(id.slice('trial/'.length)) : id;
    };
  }, [boat, plan]);
  const foundOf = useMemo(() => {
    const index = indexBoat(boat);
    return (entry: SurveyEntry): string => surveyWords(index, entry);
  }, [boat]);
  const newestFirst = [...log.entries].reverse();
  const shown = isWhole ? newestFirst : newestFirst.slice(0, latestShown);
  return (
    <section ref={block} className="block log-block">
      <h2>{words.heading(newestFirst.length)}</h2>
      <p className="quiet">{newestFirst.length === 0 ? words.none : words.about}</p>
      <p role="status">{waiting === 0 ? (refused ?? '') : words.waiting(waiting)}</p>
      {unread === 0 ? null : <p className="quiet">{words.unread(unread)}</p>}
      <NoteForm append={append} />
      <ol className="log-lines">
        {shown.map((entry) => (
          <Line key={entry.id} entry={entry} nameOf={nameOf} foundOf={foundOf} append={append} />
        ))}
      </ol>
      {shown.length === newestFirst.length ? null : (
        <button type="button" className="press-link" onClick={() => setIsWhole(true)}>
          {words.all(newestFirst.length)}
        </button>
      )}
    </section>
  );
};
