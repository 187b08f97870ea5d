import { type ReactNode, useState } from 'react';
import type { BoatOnList } from '../../../core/boat-store-shape.ts';
import type { Refusal } from '../../workers/protocol.ts';
import '../kept-here/kept-here.css';
import { forgetWaiting } from '../log/use-boat-log.ts';
import { store } from '../store/the-store.ts';
import { words } from './away-words.ts';

interface AwayProps {
  readonly boat: BoatOnList;
  readonly onRefusal: (refusal: Refusal) => void;
  /** she is off the list; where she stands, in a sentence */
  readonly onGone: (says: string) => void;
}

/** Takes a boat of the folder off the list after a question; her files are kept. */
export const RowAway = ({ boat: { id, name }, onRefusal, onGone }: AwayProps): ReactNode => {
  const [isAsking, setIsAsking] = useState(false);
  const remove = async (): Promise<void> => {
    const done = await store.remove(id);
    if ('refusal' in done) {
      onRefusal(done.refusal);
      return;
    }
    forgetWaiting(id);
    onGone(words.gone(name, done.aside ?? ''));
  };
  return (
    <>
      <button type="button" className="copy-button" aria-label={words.removeOf(name)} onClick={() => setIsAsking(true)}>
        {words.remove}
      </button>
      <div className="row-says" role="status">
        {isAsking ? (
          <>
            <p>{words.sure(name)}</p>
            <button type="button" className="press-link" onClick={() => void remove()}>
              {words.removeOf(name)}
            </button>
            <button type="button" className="press-link" onClick={() => setIsAsking(false)}>
              {words.keep}
            </button>
          </>
        ) : null}
      </div>
    </>
  );
};
