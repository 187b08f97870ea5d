import type { ReactNode } from 'react';
import { byCodeUnit } from '../../../../../core/boat/ids.ts';
import { readingName } from '../../../../../core/facts/reading-words.ts';
import { ageWords } from '../../../../../core/proof/live/age-words.ts';
import type { LiveReading, LiveSnapshot } from '../../../../../core/proof/live/live-snapshot.ts';
import { useIsLit } from '../../../../drawing/light-store.ts';
import type { RowHand } from '../../../margin/lit-rows.tsx';
import { useWords } from '../../../words/units.ts';
import { live } from './live-store.ts';
import { whoSays } from './who-says.ts';
import { words } from './words.ts';

interface ReadingListProps {
  readonly snapshot: LiveSnapshot;
  readonly names: ReadonlyMap<string, string>;
  readonly picked: number | undefined;
  readonly hand: RowHand;
}

const saidOf = ({ empty, says, short }: LiveReading): string => {
  if (empty === true) return words.noValue;
  return says ?? short ?? words.comes;
};

const nothing: readonly string[] = [];

const ReadingRow = ({
  reading,
  who,
  isPicked,
  hand,
}: {
  reading: LiveReading;
  who: string;
  isPicked: boolean;
  hand: RowHand;
}): ReactNode => {
  const say = useWords();
  const about = reading.unit === undefined ? nothing : [reading.unit];
  const lit = useIsLit(hand.lights, about);
  return (
    <li
      className={['row', 'live-row', ...(lit ? ['lit'] : []), ...(reading.silent === true ? ['stale'] : [])].join(' ')}
    >
      <button
        type="button"
        className="row-button"
        aria-pressed={isPicked}
        onClick={() => {
          live.pick(isPicked ? undefined : reading.id);
          if (!isPicked && reading.unit !== undefined) hand.onShow(about);
        }}
        onFocus={() => hand.lights.rest(about)}
        onBlur={() => hand.lights.rest([])}
        onPointerEnter={() => hand.lights.rest(about)}
        onPointerLeave={() => hand.lights.rest([])}
      >
        <span className="live-what">{readingName(reading)}</span> {say(saidOf(reading))}
        <span className="row-fact">
          {' '}
          {who}, {words.age(ageWords(reading.ageMs))}
          {reading.silent === true ? ` – ${words.stale}` : ''}
        </span>
      </button>
    </li>
  );
};

/** Every reading that is heard, units of the plan first, each with who says it and how old it is. */
export const ReadingList = ({ snapshot, names, picked, hand }: ReadingListProps): ReactNode => {
  const rows = snapshot.readings
    .map((reading) => ({ reading, who: whoSays(snapshot, reading, names), name: readingName(reading) }))
    .sort(
      (a, b) =>
        Number(a.reading.unit === undefined) - Number(b.reading.unit === undefined) ||
        byCodeUnit(a.name, b.name) ||
        byCodeUnit(a.who, b.who),
    );
  if (rows.length === 0) return <p className="quiet">{words.noReadings}</p>;
  return (
    <>
      <h3>{words.readings}</h3>
      <ul className="live-readings">
        {rows.map(({ reading, who }) => (
          <ReadingRow key={reading.id} reading={reading} who={who} isPicked={reading.id === picked} hand={hand} />
        ))}
      </ul>
    </>
  );
};
