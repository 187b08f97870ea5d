import { type ReactNode, useState } from 'react';
import type { BoatOnList } from '../../../core/boat-store-shape.ts';
import type { Refusal } from '../../workers/protocol.ts';
import { browserKept } from '../store/the-store.ts';
import { exportBoat } from './export-boat.ts';
import { exportReminder, quietFrom } from './export-reminder.ts';
import { forgetBoat } from './forget-boat.ts';
import { lookAtFacts, useFacts } from './kept-facts-store.ts';
import './kept-here.css';
import { words } from './words.ts';

const quietKey = (id: string): string => `fairlead-export-later ${id}`;

const quietUntil = (id: string): number => {
  try {
    return Number(localStorage.getItem(quietKey(id)) ?? 0);
  } catch {
    return 0;
  }
};

const keepQuiet = (id: string): void => {
  try {
    localStorage.setItem(quietKey(id), String(quietFrom(Date.now())));
  } catch {
    // where nothing is kept, it is asked again with the next visit
  }
};

interface RowProps {
  readonly boat: BoatOnList;
  readonly onRefusal: (refusal: Refusal) => void;
  /** the boat is deleted */
  readonly onGone: (id: string) => void;
}

/** What can be done with a boat that only this browser has: all of her taken out as one file, or deleted after a question. */
export const RowTools = ({ boat: { id, name }, onRefusal, onGone }: RowProps): ReactNode => {
  const facts = useFacts(id);
  const [isAsking, setIsAsking] = useState(false);
  const [file, setFile] = useState<string | undefined>(undefined);
  const [isQuiet, setIsQuiet] = useState(false);
  const reminder =
    facts === undefined || isQuiet
      ? undefined
      : exportReminder(facts, { nowMs: Date.now(), quietUntilMs: quietUntil(id) });
  const takeOut = async (): Promise<void> => {
    if (browserKept === undefined) return;
    const done = await exportBoat(browserKept, id);
    if ('refusal' in done) onRefusal(done.refusal);
    else setFile(done.file);
    await lookAtFacts();
  };
  const remove = async (): Promise<void> => {
    if (browserKept === undefined) return;
    const done = await forgetBoat(browserKept, id);
    if (done === undefined) onGone(id);
    else onRefusal(done.refusal);
  };
  return (
    <>
      <button type="button" className="copy-button" aria-label={words.exportOf(name)} onClick={() => void takeOut()}>
        {words.export}
      </button>
      <button type="button" className="copy-button" aria-label={words.deleteOf(name)} onClick={() => setIsAsking(true)}>
        {words.delete}
      </button>
      <div className="row-says" role="status">
        {isAsking ? (
          <>
            <p>{words.sure(name, facts?.changes ?? 0)}</p>
            <button type="button" className="press-link" onClick={() => void remove()}>
              {words.yes(name)}
            </button>
            <button type="button" className="press-link" onClick={() => setIsAsking(false)}>
              {words.no}
            </button>
          </>
        ) : null}
        {file === undefined || isAsking ? null : <p>{words.exported(file)}</p>}
        {reminder === undefined || isAsking ? null : (
          <>
            <p>{words.due(reminder.changes, reminder.days, reminder.isFirst)}</p>
            <button
              type="button"
              className="press-link"
              onClick={() => {
                keepQuiet(id);
                setIsQuiet(true);
              }}
            >
              {words.notNow}
            </button>
          </>
        )}
      </div>
    </>
  );
};
