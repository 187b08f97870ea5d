import type { ReactNode } from 'react';
import type { Kit } from '../../../core/boat/boat-schema.ts';
import type { UnitCard, WantedReading } from '../../../papers/cards/unit-card.ts';
import type { LightStore } from '../../drawing/light-store.ts';
import type { Note } from '../margin/notes.ts';
import { FateChoice } from '../steps/kit/fate-choice.tsx';
import { useExplained, Word } from '../words/explained.tsx';
import { WordsHere } from '../words/words-here.tsx';
import type { CardChoice } from './card-choice.ts';
import { CardFrame, type CardHand, CardPart } from './card-frame.tsx';
import { PlugsView } from './plugs-view.tsx';
import { TalkView } from './talk-view.tsx';
import { TeesView } from './tees-view.tsx';
import { words } from './words.ts';

interface UnitCardViewProps {
  readonly card: UnitCard;
  /** the unit itself, to choose what becomes of it */
  readonly unit: Kit | undefined;
  readonly balloon: number | undefined;
  readonly notes: readonly Note[];
  readonly titles: ReadonlyMap<string, string>;
  readonly lights: LightStore;
  readonly hand: CardHand;
  readonly onGoOn: (choice: CardChoice) => void;
  /** brings a note of the margin into sight */
  readonly onNote: (note: Note) => void;
}

const Sentences = ({ texts }: { texts: readonly string[] }): ReactNode =>
  useExplained(texts).map((told, at) => <p key={texts[at]}>{told}</p>);

const readingChoice = ({ reading, instance }: WantedReading): CardChoice => ({
  kind: 'reading',
  reading,
  ...(instance === undefined ? {} : { instance }),
});

const Wants = ({
  wants,
  onGoOn,
}: {
  wants: readonly WantedReading[];
  onGoOn: (choice: CardChoice) => void;
}): ReactNode => (
  <>
    <ul>
      {wants.map((want) => (
        <li key={`${want.reading} ${want.instance ?? ''} ${want.fact}`}>
          <button type="button" className="row-button" onClick={() => onGoOn(readingChoice(want))}>
            <span className={want.arrives ? undefined : 'wanting'}>{want.name}</span>
            <span className="row-fact"> {want.fact}</span>
          </button>
        </li>
      ))}
    </ul>
    <WordsHere texts={wants.flatMap(({ name, fact }) => [name, fact])} names={wants.map(({ name }) => name)} />
  </>
);

const Findings = ({ notes, titles, onNote }: Pick<UnitCardViewProps, 'notes' | 'titles' | 'onNote'>): ReactNode => {
  if (notes.length === 0) return <p className="quiet">{words.nothingToPutRight}</p>;
  return (
    <ul>
      {notes.map((note) => (
        <li key={note.finding.id}>
          <button type="button" className="row-button" onClick={() => onNote(note)}>
            <span className="wanting">{note.finding.level}:</span> {titles.get(note.finding.rule) ?? note.finding.says}
          </button>
        </li>
      ))}
    </ul>
  );
};

/** Everything there is to say of one unit: what it is, says, hears, wants and draws, where its plugs go, what it rests on. */
export const UnitCardView = ({
  card,
  unit,
  balloon,
  notes,
  titles,
  lights,
  hand,
  onGoOn,
  onNote,
}: UnitCardViewProps): ReactNode => {
  const [kind, stands] = useExplained([card.kind ?? '', card.stands]);
  return (
    <CardFrame title={card.name} number={balloon} hand={hand}>
      {card.kind === undefined ? null : <p className="quiet">{kind}</p>}
      <p>{stands}</p>
      {unit === undefined ? null : <FateChoice unit={unit} />}
      <CardPart heading={<Word of="rests on">{words.restsOn}</Word>}>
        <Sentences texts={card.rests} />
      </CardPart>
      <CardPart heading={<Word of="finding">{words.findings}</Word>}>
        <Findings notes={notes} titles={titles} onNote={onNote} />
      </CardPart>
      {card.wants.length === 0 ? null : (
        <CardPart heading={<Word of="need">{words.wants}</Word>}>
          <Wants wants={card.wants} onGoOn={onGoOn} />
        </CardPart>
      )}
      <CardPart heading={words.says}>
        <TalkView talks={card.says} empty={words.saysNothing} />
      </CardPart>
      <CardPart heading={words.hears}>
        <TalkView talks={card.hears} empty={words.hearsNothing} />
      </CardPart>
      <CardPart heading={words.draws}>
        <Sentences texts={card.draws} />
      </CardPart>
      {card.reaches.length === 0 ? null : (
        <CardPart heading={words.reaches}>
          <Sentences texts={card.reaches} />
        </CardPart>
      )}
      {card.tees.length === 0 ? null : (
        <CardPart heading={<Word of="tee">{words.whyTee}</Word>}>
          <TeesView tees={card.tees} />
        </CardPart>
      )}
      <CardPart heading={<Word of="plug">{words.plugs}</Word>}>
        {card.plugs.length === 0 ? <p className="quiet">{words.noPlugs}</p> : null}
        <PlugsView plugs={card.plugs} lights={lights} />
      </CardPart>
      <CardPart heading={words.unitBefore}>
        <Sentences texts={card.before} />
      </CardPart>
    </CardFrame>
  );
};
