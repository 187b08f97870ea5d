import { type ReactNode, useEffect, useId, useRef, useState } from 'react';
import type { SavedState } from '../../../core/boat-store-shape.ts';
import type { PlanClient } from '../../workers/plan-client.ts';
import type { Refusal } from '../../workers/protocol.ts';
import { RefusalView } from '../refusal-view.tsx';
import { store } from '../store/the-store.ts';
import { whenWords } from './when-words.ts';
import { words } from './words.ts';
import './saving.css';

/** An earlier state with its text, when it is looked at or restored. */
export interface EarlierState extends SavedState {
  readonly text: string;
  /** until when the boat was so, in words */
  readonly when: string;
  /** what restoring it is called as a step */
  readonly title: string;
}

/** States whose change is told at once; a list longer than this is told as one reads on. */
const toldAtMost = 24;

/** The earlier states of a boat, and what was changed after each, as the answers come in. */
const useStates = (id: string, { client, textNow }: { client: PlanClient; textNow: string }) => {
  const [states, setStates] = useState<readonly SavedState[] | undefined>(undefined);
  const [changes, setChanges] = useState<ReadonlyMap<string, string>>(new Map());
  const [refusal, setRefusal] = useState<Refusal | undefined>(undefined);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the list is of the moment it was opened
  useEffect(() => {
    let isGone = false;
    const tellChanges = async (found: readonly SavedState[]): Promise<void> => {
      let after = textNow;
      for (const state of found.slice(0, toldAtMost)) {
        const before = await store.state(id, state.id);
        if (isGone || 'refusal' in before) return;
        const { words: says } = await client.ask({ asks: 'compare', before: before.text, after });
        if (isGone) return;
        if (says !== undefined) setChanges((known) => new Map([...known, [state.id, says]]));
        after = before.text;
      }
    };
    void store.states(id).then((found) => {
      if (isGone) return;
      if ('refusal' in found) {
        setRefusal(found.refusal);
        return;
      }
      setStates(found.states);
      void tellChanges(found.states);
    });
    return () => {
      isGone = true;
    };
  }, [id, client]);
  return { states, changes, refusal, setRefusal };
};

const thenWords = (says: string | undefined): string => {
  if (says === undefined) return '';
  return says === '' ? words.sameAsNext : words.changedThen(says);
};

/** The earlier states of a boat: when, what was changed then, to look at or to restore. */
export const StatesView = ({
  id,
  client,
  textNow,
  onLook,
  onRestore,
  onClose,
}: {
  id: string;
  client: PlanClient;
  textNow: string;
  onLook: (state: EarlierState) => void;
  onRestore: (state: EarlierState) => void;
  onClose: () => void;
}): ReactNode => {
  const { states, changes, refusal, setRefusal } = useStates(id, { client, textNow });
  const title = useId();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const take = (state: SavedState, when: string, use: (found: EarlierState) => void): void => {
    void store.state(id, state.id).then((found) => {
      if ('refusal' in found) setRefusal(found.refusal);
      else use({ ...state, when, title: words.restored(when), text: found.text });
    });
  };
  return (
    <section className="states" aria-labelledby={title}>
      <h2 id={title} ref={heading} tabIndex={-1}>
        {words.earlierTitle}
      </h2>
      <p className="quiet">{states?.length === 0 ? words.noEarlier : words.earlierLead}</p>
      {refusal === undefined ? null : <RefusalView refusal={refusal} />}
      <ol>
        {(states ?? []).map((state) => {
          const when = whenWords(state.untilMs, Date.now());
          return (
            <li key={state.id}>
              <span className="states-when">{words.until(when)}</span>
              <span className="states-then">{thenWords(changes.get(state.id))}</span>
              <button
                type="button"
                className="edit-link"
                aria-label={words.lookSays(when)}
                onClick={() => take(state, when, onLook)}
              >
                {words.look}
              </button>
              <button
                type="button"
                className="edit-link"
                aria-label={words.restoreSays(when)}
                onClick={() => take(state, when, onRestore)}
              >
                {words.restore}
              </button>
            </li>
          );
        })}
      </ol>
      <button type="button" className="edit-link" onClick={onClose}>
        {words.close}
      </button>
    </section>
  );
};
