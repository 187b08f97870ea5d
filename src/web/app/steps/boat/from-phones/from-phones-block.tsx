import { type ReactNode, useCallback, useMemo } from 'react';
import { indexBoat } from '../../../../../core/boat/boat-index.ts';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { EditCall } from '../../../../../core/boat/history.ts';
import type { EntryOf } from '../../../../../core/log/log-entry.ts';
import { leftTickId, type OfferedEntry, offeredEntries } from '../../../../../core/log/survey-edits.ts';
import { surveyWords } from '../../../../../papers/phone/survey-words.ts';
import { useCommands } from '../../../commands/use-commands.ts';
import { useEdit } from '../../../edit-context.ts';
import { useBoatLog } from '../../../log/use-boat-log.ts';
import { noticePicture, usePicture } from '../../../pictures/picture-keeper.ts';
import './from-phones.css';
import { words } from './words.ts';

const shownMoment = (at: string): string => new Date(at).toLocaleString([], { dateStyle: 'short', timeStyle: 'short' });

const Photo = ({ entry: { picture }, alt }: { entry: EntryOf<'photo'>; alt: string }): ReactNode => {
  const found = usePicture(picture.hash);
  if (found.kind === 'here') return <img src={found.url} alt={alt} width={picture.widthPx} height={picture.heightPx} />;
  return found.kind === 'missing' ? <p className="quiet">{words.noPicture}</p> : null;
};

interface OfferProps {
  readonly offer: OfferedEntry;
  readonly says: string;
  readonly onTake: (offers: readonly OfferedEntry[]) => void;
  readonly onLeave: () => void;
}

const Offer = ({ offer, says, onTake, onLeave }: OfferProps): ReactNode => {
  const { entry, edit } = offer;
  return (
    <li>
      <p>{says}</p>
      <p className="quiet">{words.signed(shownMoment(entry.at), entry.by)}</p>
      {entry.kind === 'photo' ? <Photo entry={entry} alt={says} /> : null}
      {edit === undefined ? <p className="quiet">{words.byHand}</p> : null}
      <div className="found-presses">
        {edit === undefined ? null : (
          <button type="button" className="press-link" onClick={() => onTake([offer])}>
            {words.take}
            <span className="unseen">{words.of(says)}</span>
          </button>
        )}
        <button type="button" className="press-link" onClick={onLeave}>
          {edit === undefined ? words.seenTo : words.leave}
          <span className="unseen">{words.of(says)}</span>
        </button>
      </div>
    </li>
  );
};

/** What phones found aboard and the boat file has not: to be taken over one by one or all at once, or left. */
export const FromPhonesBlock = ({ boat }: { boat: Boat }): ReactNode => {
  const { log, append } = useBoatLog(boat.name);
  const edit = useEdit();
  const offers = useMemo(() => offeredEntries(boat, log), [boat, log]);
  const index = useMemo(() => indexBoat(boat), [boat]);
  const ready = useMemo(() => offers.filter((offer) => offer.edit !== undefined), [offers]);
  const take = useCallback(
    (some: readonly OfferedEntry[]): void => {
      const edits = some.flatMap((one): EditCall[] => (one.edit === undefined ? [] : [one.edit]));
      if (edits.length === 0) return;
      for (const { entry } of some) if (entry.kind === 'photo') void noticePicture(entry.picture.hash);
      edit(edits, edits.length === 1 ? undefined : words.allTitle(edits.length));
    },
    [edit],
  );
  useCommands(
    useMemo(
      () =>
        ready.length === 0
          ? []
          : [
              {
                id: 'take-over-found',
                group: 'change',
                says: words.commandSays,
                foundBy: words.foundBy,
                run: () => take(ready),
              } as const,
            ],
      [ready, take],
    ),
  );
  if (offers.length === 0) return null;
  return (
    <section className="block found-aboard">
      <h2>{words.heading(offers.length)}</h2>
      <p className="quiet">{words.about}</p>
      {ready.length === 0 ? null : (
        <button type="button" className="press-link" onClick={() => take(ready)}>
          {words.all(ready.length)}
        </button>
      )}
      <ol>
        {offers.map((offer) => (
          <Offer
            key={offer.entry.id}
            offer={offer}
            says={surveyWords(index, offer.entry)}
            onTake={take}
            onLeave={() => append({ kind: 'tick', of: leftTickId(offer.entry.id), done: true })}
          />
        ))}
      </ol>
    </section>
  );
};
