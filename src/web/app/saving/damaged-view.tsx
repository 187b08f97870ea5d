import { type ReactNode, useEffect, useId, useState } from 'react';
import type { PlanClient } from '../../workers/plan-client.ts';
import type { Refusal } from '../../workers/protocol.ts';
import { RefusalView } from '../refusal-view.tsx';
import { store } from '../store/the-store.ts';
import { whenWords } from './when-words.ts';
import { words } from './words.ts';
import './saving.css';

/** One good text of a boat whose file is damaged. */
interface Choice {
  readonly kind: 'kept' | 'backup';
  readonly says: string;
  readonly text: string;
  readonly atMs: number;
}

/** What there is of a boat, the newest first, and the tag of her damaged file. */
interface Found {
  readonly tag: string;
  readonly choices: readonly Choice[];
}

const found = async (id: string, client: PlanClient): Promise<Found | { refusal: Refusal }> => {
  const damaged = await store.damaged(id);
  if ('refusal' in damaged) return damaged;
  const { good, tag, folder } = damaged;
  const { kept } = await client.ask({ asks: 'kept', key: `${folder}/${id}` });
  const choices: Choice[] = [];
  const now = Date.now();
  if (kept !== undefined) {
    const when = kept.atMs === undefined ? undefined : whenWords(kept.atMs, now);
    choices.push({ kind: 'kept', says: words.asKept(when), text: kept.text, atMs: kept.atMs ?? 0 });
  }
  if (good !== undefined) {
    const says = words.asBackedUp(whenWords(good.untilMs, now));
    choices.push({ kind: 'backup', says, text: good.text, atMs: good.untilMs });
  }
  return { tag, choices: choices.sort((one, other) => other.atMs - one.atMs) };
};

/** Under the refusal of a damaged file: the good texts there are of the boat, each to go on from. */
export const DamagedView = ({
  id,
  client,
  onRecovered,
}: {
  id: string;
  client: PlanClient;
  onRecovered: () => void;
}): ReactNode => {
  const [offer, setOffer] = useState<Found | undefined>(undefined);
  const [refusal, setRefusal] = useState<Refusal | undefined>(undefined);
  const title = useId();
  useEffect(() => {
    let isGone = false;
    void found(id, client).then((told) => {
      // why the file cannot be read is said above already
      if (!isGone && 'choices' in told) setOffer(told);
    });
    return () => {
      isGone = true;
    };
  }, [id, client]);
  if (offer === undefined) return null;
  const goOn = (text: string): void => {
    void store.putInPlace({ id, tag: offer.tag }, text).then((why) => {
      if (why === undefined) onRecovered();
      else setRefusal(why.refusal);
    });
  };
  return (
    <section className="states" aria-labelledby={title}>
      <h2 id={title}>{words.damagedTitle}</h2>
      <p className="quiet">{offer.choices.length === 0 ? words.noneLeft : words.damagedLead}</p>
      {refusal === undefined ? null : <RefusalView refusal={refusal} />}
      <ol>
        {offer.choices.map(({ kind, says, text }) => (
          <li key={kind}>
            <span className="states-then">{says}</span>
            <button
              type="button"
              className="edit-link"
              aria-label={`${words.goOnFrom}: ${says}`}
              onClick={() => goOn(text)}
            >
              {words.goOnFrom}
            </button>
          </li>
        ))}
      </ol>
    </section>
  );
};
