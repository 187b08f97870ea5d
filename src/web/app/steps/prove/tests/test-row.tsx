import type { ReactNode } from 'react';
import { type Found, judge } from '../../../../../core/proof/dock/judge.ts';
import type { CardBoat } from '../../../../../papers/cards/card-boat.ts';
import { judgedWords, verdictWords } from '../../../../../papers/proof/judged-words.ts';
import { printReading } from '../../../../../papers/proof/print-reading.ts';
import { expectWords, testWords } from '../../../../../papers/proof/test-words.ts';
import type { RowHand } from '../../../margin/lit-rows.tsx';
import { useWords } from '../../../words/units.ts';
import { type Answer, ReadingEntry } from './reading-entry.tsx';
import type { JudgedTest } from './test-groups.ts';
import { words } from './words.ts';

interface TestRowProps {
  readonly index: CardBoat;
  readonly judged: JudgedTest;
  readonly of: (id: string) => Found | undefined;
  readonly signed: string;
  /** how many tests that come before it are not right yet */
  readonly waits: number;
  readonly hand: RowHand;
  readonly onAnswer: (id: string, answer: Answer) => void;
}

const Result = ({ judged: { test, found }, of, signed }: Pick<TestRowProps, 'judged' | 'of' | 'signed'>): ReactNode => {
  if (found === undefined) return null;
  const worth = judge(test, found, of);
  const { sign } = verdictWords[worth.verdict];
  const figure = typeof found === 'boolean' ? (found ? words.yes : words.no) : printReading(found, test.unit);
  return (
    <p className={`test-result ${worth.verdict}`}>
      <strong>
        {sign} {figure}
      </strong>{' '}
      {judgedWords(test, found, worth)} <span className="quiet">{signed}</span>
    </p>
  );
};

/** One test: what is done, what is expected, where it is written down, and what it is worth at once. */
export const TestRowView = ({ index, judged, of, signed, waits, hand, onAnswer }: TestRowProps): ReactNode => {
  const inUnits = useWords();
  const { test } = judged;
  const what = testWords(index, test);
  const lights = [...test.about.map((id) => id.split('.')[0] ?? id), ...(test.place === undefined ? [] : [test.place])];
  return (
    <li className="test-row">
      <button
        type="button"
        className="row-button"
        onClick={() => hand.onShow(lights)}
        onFocus={() => hand.lights.rest(lights)}
        onBlur={() => hand.lights.rest([])}
      >
        {inUnits(what)}
      </button>
      <p className="quiet">
        {words.power[test.power]} · {inUnits(words.expected(expectWords(index, test)))}
        {waits === 0 || judged.found !== undefined ? null : ` · ${words.waits(waits)}`}
      </p>
      <div role="status">
        <Result judged={judged} of={of} signed={signed} />
      </div>
      <ReadingEntry
        kind={test.kind}
        {...(test.unit === undefined ? {} : { unit: test.unit })}
        what={what}
        onAnswer={(answer) => onAnswer(test.id, answer)}
      />
    </li>
  );
};
