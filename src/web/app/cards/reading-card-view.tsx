import type { ReactNode } from 'react';
import type { ReadingCard, ReadingEnd } from '../../../papers/cards/reading-card.ts';
import type { ReadingSend, ReadingStop } from '../../../papers/cards/reading-tree.ts';
import type { LightStore } from '../../drawing/light-store.ts';
import { useExplained, Word } from '../words/explained.tsx';
import { WordsHere } from '../words/words-here.tsx';
import type { CardChoice } from './card-choice.ts';
import { CardFrame, type CardHand, CardPart } from './card-frame.tsx';
import { WhyNotView } from './why-not-view.tsx';
import { words } from './words.ts';

interface ReadingCardViewProps {
  readonly card: ReadingCard;
  readonly currency: string;
  readonly lights: LightStore;
  readonly hand: CardHand;
  readonly onGoOn: (choice: CardChoice) => void;
}

/** What each stop of a way needs to know of the card it is on. */
interface WayContext extends Pick<ReadingCardViewProps, 'lights' | 'onGoOn' | 'currency'> {
  readonly ends: ReadonlyMap<string, ReadingEnd>;
  /** what each stop does and what each line carries, each trade word of the whole way explained once */
  readonly told: ReadonlyMap<ReadingStop | ReadingSend, readonly ReactNode[]>;
}

/** Every text on a way, in reading order. */
const textsOf = (stops: readonly ReadingStop[]): (readonly [ReadingStop | ReadingSend, readonly string[]])[] =>
  stops.flatMap((stop) => [
    [stop, [stop.does ?? '']] as const,
    ...stop.sends.flatMap((send) => [[send, [send.form, send.on]] as const, ...textsOf(send.to)]),
  ]);

const useWayWords = (stops: readonly ReadingStop[]): WayContext['told'] => {
  const all = textsOf(stops);
  const explained = useExplained(all.flatMap(([, texts]) => texts));
  let at = 0;
  return new Map(
    all.map(([of, texts]) => {
      const own = explained.slice(at, at + texts.length);
      at += texts.length;
      return [of, own];
    }),
  );
};

const UnitButton = ({
  name,
  unit,
  lit,
  context,
}: {
  name: string;
  unit: string;
  /** ids it lights while it is rested on */
  lit: readonly string[];
  context: WayContext;
}): ReactNode => {
  const { lights, onGoOn } = context;
  return (
    <button
      type="button"
      className="stop-unit"
      onClick={() => onGoOn({ kind: 'unit', id: unit })}
      onPointerEnter={() => lights.rest(lit)}
      onPointerLeave={() => lights.rest([])}
      onFocus={() => lights.rest(lit)}
      onBlur={() => lights.rest([])}
    >
      {name}
    </button>
  );
};

const SendView = ({ send, context }: { send: ReadingSend; context: WayContext }): ReactNode => {
  const [form, on] = context.told.get(send) ?? [];
  return (
    <>
      <div className="hop">
        <p>{form}</p>
        <p className="quiet">{on}</p>
      </div>
      <ul className={send.to.length > 1 ? 'stops forked' : 'stops'}>
        {send.to.map((stop) => (
          <StopView key={stop.unit} stop={stop} context={context} />
        ))}
      </ul>
    </>
  );
};

const StopView = ({ stop, context }: { stop: ReadingStop; context: WayContext }): ReactNode => {
  const [does] = context.told.get(stop) ?? [];
  const end = stop.wants ? context.ends.get(stop.unit) : undefined;
  return (
    <li className={stop.wants ? 'stop wants' : 'stop'}>
      <UnitButton name={stop.name} unit={stop.unit} lit={end?.lights ?? [stop.unit]} context={context} />
      {end === undefined ? null : <p className="row-fact">{words.wantsIt(end.fact)}</p>}
      {stop.does === undefined ? null : <p className="quiet">{does}</p>}
      {stop.sends.map((send) => (
        <SendView key={`${send.form} ${send.on}`} send={send} context={context} />
      ))}
    </li>
  );
};

const Backups = ({ ends, lights }: { ends: readonly ReadingEnd[]; lights: LightStore }): ReactNode => {
  const backed = ends.filter(({ backups }) => backups.length > 0);
  if (backed.length === 0) return <p className="quiet">{words.noBackup}</p>;
  return backed.map(({ at, name, backups }) => (
    <div key={at}>
      <p>{words.backupsAt(name)}</p>
      <ul>
        {backups.map((backup) => (
          <li key={backup.says}>
            <button
              type="button"
              className="row-button"
              onClick={() => lights.pick(backup.lights)}
              onPointerEnter={() => lights.rest(backup.lights)}
              onPointerLeave={() => lights.rest([])}
              onFocus={() => lights.rest(backup.lights)}
              onBlur={() => lights.rest([])}
            >
              {backup.says}
            </button>
          </li>
        ))}
      </ul>
    </div>
  ));
};

const Missing = ({ ends, context }: { ends: readonly ReadingEnd[]; context: WayContext }): ReactNode =>
  ends.map(({ at, name, lights, whyNot }) => (
    <div key={at} className="gap">
      <UnitButton name={name} unit={at} lit={lights} context={context} />
      {whyNot === undefined ? null : <WhyNotView whyNot={whyNot} currency={context.currency} />}
    </div>
  ));

/** One reading from where it is made to every screen that wants it, hop by hop; or where its way breaks, and the cures. */
export const ReadingCardView = ({ card, currency, lights, hand, onGoOn }: ReadingCardViewProps): ReactNode => {
  const told = useWayWords(card.sources);
  const context = { lights, onGoOn, currency, told, ends: new Map(card.ends.map((end) => [end.at, end])) };
  const missing = card.ends.filter(({ whyNot }) => whyNot !== undefined);
  const isComing = card.sources.length > 0;
  return (
    <CardFrame title={card.name} hand={hand}>
      <p>{card.stands}</p>
      <WordsHere texts={[card.name, ...card.ends.map(({ fact }) => fact)]} names={[card.name]} />
      {missing.length === 0 ? null : (
        <CardPart heading={words.missingAt}>
          <Missing ends={missing} context={context} />
        </CardPart>
      )}
      {isComing ? (
        <>
          <CardPart heading={words.itsWay}>
            <ul className={card.sources.length > 1 ? 'stops forked' : 'stops'}>
              {card.sources.map((stop) => (
                <StopView
                  key={`${stop.unit} ${stop.sends.map(({ on }) => on).join(' ')}`}
                  stop={stop}
                  context={context}
                />
              ))}
            </ul>
          </CardPart>
          <CardPart heading={<Word of="backup">{words.backups}</Word>}>
            <Backups ends={card.ends} lights={lights} />
          </CardPart>
        </>
      ) : null}
      <CardPart heading={words.readingBefore}>
        <p>{card.before}</p>
      </CardPart>
    </CardFrame>
  );
};
