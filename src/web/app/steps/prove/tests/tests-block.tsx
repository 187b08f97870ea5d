import { type ReactNode, useCallback, useMemo, useRef, useState } from 'react';
import type { Plan } from '../../../../../core/plan-shape.ts';
import { foundOf } from '../../../../../core/proof/dock/found-of.ts';
import type { Found } from '../../../../../core/proof/dock/judge.ts';
import { type CardBoat, cardBoat } from '../../../../../papers/cards/card-boat.ts';
import { useCommands } from '../../../commands/use-commands.ts';
import { ownSignature } from '../../../forms/own-name.ts';
import { OwnNameField } from '../../../forms/own-name-field.tsx';
import { type OpenLog, useBoatLog } from '../../../log/use-boat-log.ts';
import type { StepMarginProps } from '../../step.ts';
import { BusCauses } from './bus-causes.tsx';
import type { Answer } from './reading-entry.tsx';
import { isShown, type JudgedTest, judgedTest, type Shown, type TestGroup, testGroups } from './test-groups.ts';
import { TestRowView } from './test-row.tsx';
import './tests-block.css';
import { words } from './words.ts';

type Choice = { readonly place: string; readonly shown: Shown };

interface GroupProps {
  readonly group: TestGroup;
  readonly choice: Choice;
  readonly index: CardBoat;
  readonly plan: Plan;
  readonly log: OpenLog['log'];
  readonly of: (id: string) => Found | undefined;
  readonly verdictOf: ReadonlyMap<string, JudgedTest['verdict']>;
  readonly hand: StepMarginProps['hand'];
  readonly onAnswer: (id: string, answer: Answer) => void;
}

const cautionOf = (group: TestGroup['group']): string | undefined => {
  const cautions: Partial<Record<TestGroup['group'], string>> = words.cautions;
  return cautions[group];
};

const signedBy = (log: OpenLog['log'], id: string): string => {
  const entry = log.readings.get(id);
  return entry === undefined ? '' : [entry.at.slice(0, 10), ...(entry.by === undefined ? [] : [entry.by])].join(', ');
};

const Group = ({ group, choice, index, plan, log, of, verdictOf, hand, onAnswer }: GroupProps): ReactNode => {
  const [isOpen, setIsOpen] = useState(false);
  const done = group.tests.filter(({ verdict }) => verdict !== undefined).length;
  const shown = isOpen ? group.tests.filter((one) => isShown(one, choice)) : [];
  const bus = plan.buses.find(({ id }) => id === group.bus);
  const caution = cautionOf(group.group);
  const waits = ({ test: { after = [] } }: JudgedTest): number =>
    after.filter((id) => verdictOf.get(id) !== 'right').length;
  return (
    <details className="test-group" onToggle={({ currentTarget }) => setIsOpen(currentTarget.open)}>
      <summary>{words.group(group.title, done, group.tests.length)}</summary>
      {isOpen && caution !== undefined ? <p className="test-caution">{caution}</p> : null}
      {isOpen && bus !== undefined ? (
        <BusCauses index={index} bus={bus} tests={plan.tests} of={of} onAnswer={onAnswer} />
      ) : null}
      {isOpen && shown.length === 0 ? <p className="quiet">{words.hidden}</p> : null}
      <ul>
        {shown.map((judged) => (
          <TestRowView
            key={judged.test.id}
            index={index}
            judged={judged}
            of={of}
            signed={signedBy(log, judged.test.id)}
            waits={waits(judged)}
            hand={hand}
            onAnswer={onAnswer}
          />
        ))}
      </ul>
    </details>
  );
};

const Choices = ({
  choice,
  places,
  onChoice,
}: {
  choice: Choice;
  places: readonly (readonly [id: string, name: string])[];
  onChoice: (choice: Choice) => void;
}): ReactNode => (
  <div className="test-choices">
    <label>
      <span>{words.place}</span>
      <select value={choice.place} onChange={({ target }) => onChoice({ ...choice, place: target.value })}>
        <option value="">{words.everywhere}</option>
        {places.map(([id, name]) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
    </label>
    <label>
      <span>{words.shown}</span>
      <select value={choice.shown} onChange={({ target }) => onChoice({ ...choice, shown: target.value as Shown })}>
        {(['all', 'open', 'bad'] as const).map((one) => (
          <option key={one} value={one}>
            {words[one]}
          </option>
        ))}
      </select>
    </label>
    <OwnNameField />
  </div>
);

const placesOf = ({ places }: CardBoat, tests: Plan['tests']): [id: string, name: string][] =>
  [...new Set(tests.flatMap(({ place }) => place ?? []))]
    .map((id): [string, string] => [id, places.get(id)?.name ?? id])
    .sort(([, one], [, other]) => (one < other ? -1 : 1));

const countOf = (judged: readonly JudgedTest[], verdict: JudgedTest['verdict']): number =>
  judged.filter((one) => one.verdict === verdict).length;

/** The sheet of tests at the dock: each is written down here, judged at once, and leads on where it is wrong. */
export const TestsBlock = ({ boat, plan, hand }: StepMarginProps): ReactNode => {
  const { log, append } = useBoatLog(boat.name);
  const block = useRef<HTMLElement>(null);
  const [choice, setChoice] = useState<Choice>({ place: '', shown: 'all' });
  const index = useMemo(() => cardBoat(boat), [boat]);
  const of = useMemo(() => foundOf(log.readings), [log]);
  const judged = useMemo(() => plan.tests.map((test) => judgedTest(test, of)), [plan, of]);
  const groups = useMemo(() => testGroups(boat, judged), [boat, judged]);
  const verdictOf = useMemo(() => new Map(judged.map(({ test, verdict }) => [test.id, verdict])), [judged]);
  const done = judged.length - countOf(judged, undefined);
  const begin = useCallback(() => block.current?.querySelector<HTMLElement>('summary')?.focus(), []);
  useCommands(
    useMemo(
      () => [
        { id: 'write-test', group: 'change', says: words.commandSays, foundBy: words.foundBy, run: begin } as const,
      ],
      [begin],
    ),
  );
  const answer = useCallback(
    (test: string, found: Answer) => append({ kind: 'reading', test, ...found, ...ownSignature() }),
    [append],
  );
  if (judged.length === 0) return <p className="block quiet">{words.none}</p>;
  return (
    <section ref={block} className="block tests-block">
      <h2>{words.heading(done, judged.length)}</h2>
      <progress max={judged.length} value={done} aria-label={words.heading(done, judged.length)} />
      <p role="status">
        {words.stands(countOf(judged, 'right'), countOf(judged, 'doubtful'), countOf(judged, 'wrong'))}
      </p>
      <p className="quiet">{words.about}</p>
      <Choices choice={choice} places={placesOf(index, plan.tests)} onChoice={setChoice} />
      {groups.map((group) => (
        <Group key={group.key} {...{ group, choice, index, plan, log, of, verdictOf, hand }} onAnswer={answer} />
      ))}
    </section>
  );
};
