import { type ReactNode, useMemo } from 'react';
import type { BusEntry } from '../../../../../core/plan-shape.ts';
import { busDiagnosis, readingTestId } from '../../../../../core/proof/dock/bus-diagnosis.ts';
import type { Cause } from '../../../../../core/proof/dock/diagnose.ts';
import { type Found, judge } from '../../../../../core/proof/dock/judge.ts';
import type { NextMeasurement } from '../../../../../core/proof/dock/next-measurement.ts';
import type { TestEntry } from '../../../../../core/tests-shape.ts';
import type { CardBoat } from '../../../../../papers/cards/card-boat.ts';
import { causeSays, faultWords, rangeWords, searchWords } from '../../../../../papers/proof/cause-words.ts';
import { printReading } from '../../../../../papers/proof/print-reading.ts';
import { briefTestWords, testWords } from '../../../../../papers/proof/test-words.ts';
import { type Answer, ReadingEntry } from './reading-entry.tsx';
import { words } from './words.ts';

interface BusCausesProps {
  readonly index: CardBoat;
  readonly bus: BusEntry;
  readonly tests: readonly TestEntry[];
  readonly of: (id: string) => Found | undefined;
  readonly onAnswer: (id: string, answer: Answer) => void;
}

/** So many causes are told of, and none less likely than this. */
const told = { most: 4, share: 0.02 } as const;

interface NextProps extends Pick<BusCausesProps, 'bus' | 'onAnswer' | 'tests'> {
  readonly next: NextMeasurement;
  readonly whatOf: (key: string) => string;
}

/** What a reading that is asked for is typed as: a search has two that no sheet has. */
const askedFor = (test: TestEntry | undefined, key: string): Pick<TestEntry, 'kind' | 'unit'> =>
  test ?? { kind: searchWords[key]?.kind ?? 'number', ...(searchWords[key]?.kind === 'yes-no' ? {} : { unit: 'ohm' }) };

const Next = ({ bus, tests, next, whatOf, onAnswer }: NextProps): ReactNode => {
  const what = whatOf(next.key);
  const id = readingTestId(bus.id, next.key);
  const { kind, unit } = askedFor(
    tests.find((test) => test.id === id),
    next.key,
  );
  return (
    <div className="test-next">
      <p>
        <strong>{words.next(what)}</strong>
      </p>
      <ul>
        {next.expects.map(({ fault, range }) => (
          <li key={fault}>{words.nextReads(rangeWords(range), faultWords(fault))}</li>
        ))}
      </ul>
      <ReadingEntry
        kind={kind}
        {...(unit === undefined ? {} : { unit })}
        what={what}
        onAnswer={(answer) => onAnswer(id, answer)}
      />
    </div>
  );
};

const CauseView = ({
  index,
  bus,
  cause,
  readAs,
}: Pick<BusCausesProps, 'index' | 'bus'> & { cause: Cause; readAs: (key: string) => string }): ReactNode => {
  const { says, mends, sharePct } = causeSays(index, bus, cause);
  const listed = (keys: readonly string[]): string => keys.slice(0, 3).map(readAs).join('; ');
  return (
    <li>
      <p>
        <strong>{words.cause(sharePct, says)}</strong> {mends}
      </p>
      {cause.speaks.length === 0 ? null : <p className="quiet">{words.speaks(listed(cause.speaks))}</p>}
      {cause.against.length === 0 ? null : <p className="quiet">{words.against(listed(cause.against))}</p>}
    </li>
  );
};

/** Whether a reading of the bus is wrong by its own window, though all together fit a sound bus. */
const isOdd = (tests: readonly TestEntry[], bus: BusEntry, of: BusCausesProps['of']): boolean =>
  tests.some((test) => {
    const found = test.group === 'bus' && test.about[0] === bus.id ? of(test.id) : undefined;
    return found !== undefined && judge(test, found, of).verdict === 'wrong';
  });

/** Where a bus reads wrong: what that comes from, and what to measure next to know. */
export const BusCauses = ({ index, bus, tests, of, onAnswer }: BusCausesProps): ReactNode => {
  const { causes, next } = useMemo(() => busDiagnosis(bus, of), [bus, of]);
  if (causes.length === 0) return null;
  if (causes[0]?.fault === 'ok') return isOdd(tests, bus, of) ? <p className="test-caution">{words.odd}</p> : null;
  const byId = new Map(tests.map((test) => [test.id, test]));
  const whatOf = (key: string): string => {
    const test = byId.get(readingTestId(bus.id, key));
    return test === undefined ? (searchWords[key]?.what ?? key) : testWords(index, test);
  };
  const readAs = (key: string): string => {
    const id = readingTestId(bus.id, key);
    const [test, found] = [byId.get(id), of(id)];
    if (test === undefined || typeof found !== 'number') return whatOf(key);
    return words.read(printReading(found, test.unit), briefTestWords(index, test));
  };
  const shown = causes.filter(({ share }) => share >= told.share).slice(0, told.most);
  return (
    <section className="test-causes" aria-label={words.causes}>
      <h3>{words.causes}</h3>
      <ol>
        {shown.map((cause) => (
          <CauseView key={cause.fault} index={index} bus={bus} cause={cause} readAs={readAs} />
        ))}
      </ol>
      {next === undefined ? (
        shown.length > 1 && <p className="quiet">{words.noNext}</p>
      ) : (
        <Next bus={bus} tests={tests} next={next} whatOf={whatOf} onAnswer={onAnswer} />
      )}
    </section>
  );
};
