import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import { readingWords } from '../../../../../core/facts/reading-words.ts';
import type { Plan } from '../../../../../core/plan-shape.ts';
import type { LiveSnapshot } from '../../../../../core/proof/live/live-snapshot.ts';
import {
  type PullState,
  type PullTest,
  type PullWatch,
  pullTestsOf,
  startPullWatch,
  type TakenOver,
} from '../../../../../core/proof/live/pull-watch.ts';
import { ownSignature } from '../../../forms/own-name.ts';
import { useBoatLog } from '../../../log/use-boat-log.ts';
import { useWords } from '../../../words/units.ts';
import { words } from './words.ts';

interface Names {
  readonly unit: (id: string) => string;
  readonly place: (unit: string) => string;
}

const namesOf = (boat: Boat): Names => {
  const kit = new Map(boat.kit.map((unit) => [unit.id, unit]));
  const places = new Map(boat.places.map(({ id, name }) => [id, name]));
  return {
    unit: (id) => kit.get(id)?.name ?? id,
    place: (unit) => places.get(kit.get(unit)?.place ?? '') ?? '',
  };
};

const takenWords = ({ reading, by, says = '', unheard }: TakenOver, names: Names): string => {
  const what = readingWords[reading];
  if (unheard !== undefined) return words.pull.elsewhere(what, unheard.map(names.unit).join(', '));
  return by === undefined ? words.pull.lost(what) : words.pull.taken(what, names.unit(by), says);
};

/** Follows a test with every snapshot that comes. */
const usePull = (test: PullTest, snapshot: LiveSnapshot): PullState | undefined => {
  const watch = useRef<{ test: PullTest; follows: PullWatch } | undefined>(undefined);
  const [state, setState] = useState<PullState | undefined>(undefined);
  useEffect(() => {
    if (watch.current?.test !== test) watch.current = { test, follows: startPullWatch(test) };
    setState(watch.current.follows.step(snapshot));
  }, [test, snapshot]);
  return state;
};

const Taken = ({ taken, names }: { taken: readonly TakenOver[]; names: Names }): ReactNode => {
  const say = useWords();
  return taken.map((one) => <p key={one.reading}>{say(takenWords(one, names))}</p>);
};

const Instruction = ({ state, test, names }: { state: PullState; test: PullTest; names: Names }): ReactNode => {
  const name = names.unit(test.unit);
  switch (state.kind) {
    case 'not speaking':
      return <p>{words.pull.notSpeaking(name)}</p>;
    case 'pull it now':
      return (
        <>
          <p className="live-do">{words.pull.now(name, names.place(test.unit))}</p>
          <p className="quiet">{words.pull.stopFirst}</p>
        </>
      );
    case 'out':
      return (
        <>
          <p>{words.pull.out(name, Math.ceil(state.leftMs / 1000))}</p>
          <Taken taken={state.taken} names={names} />
        </>
      );
    case 'put it back':
      return (
        <>
          <Taken taken={state.taken} names={names} />
          {state.taken.map(({ reading, at, by, unheard }) =>
            by === undefined && unheard === undefined ? null : (
              <p key={reading}>{words.pull.look(at.map(names.unit).join(', '))}</p>
            ),
          )}
          <p className="live-do">{words.pull.putBack(name)}</p>
        </>
      );
    case 'over':
      return (
        <>
          <p>
            {words.pull.over(
              state.taken.every(({ by }) => by !== undefined),
              state.right,
            )}
          </p>
          <Taken taken={state.taken} names={names} />
        </>
      );
  }
};

/** What a person says at the end of a test, kept in the log under the test of the plan. */
const Verdict = ({ right, onKeep }: { right: boolean; onKeep: (right: boolean) => void }): ReactNode =>
  right ? (
    <p>
      <button type="button" className="press-link" onClick={() => onKeep(true)}>
        {words.pull.isShown}
      </button>{' '}
      <button type="button" className="press-link" onClick={() => onKeep(false)}>
        {words.pull.isNotShown}
      </button>
    </p>
  ) : (
    <button type="button" className="press-link" onClick={() => onKeep(false)}>
      {words.pull.keepFailed}
    </button>
  );

const Running = ({
  test,
  snapshot,
  names,
  boatName,
  onEnd,
}: {
  test: PullTest;
  snapshot: LiveSnapshot;
  names: Names;
  boatName: string;
  onEnd: () => void;
}): ReactNode => {
  const { append } = useBoatLog(boatName);
  const state = usePull(test, snapshot);
  if (state === undefined) return null;
  const keep = (right: boolean): void => {
    const taken = state.kind === 'over' ? state.taken.map((one) => takenWords(one, names)).join(' ') : '';
    append({ kind: 'reading', test: test.test, right, note: words.pull.note(taken).slice(0, 400), ...ownSignature() });
    onEnd();
  };
  return (
    <div className="live-pull">
      <div role="status">
        <Instruction state={state} test={test} names={names} />
      </div>
      {state.kind === 'over' ? <Verdict right={state.right} onKeep={keep} /> : null}
      <button type="button" className="press-link" onClick={onEnd}>
        {words.pull.cancel}
      </button>
    </div>
  );
};

/** Each first source of a vital reading is pulled once while the bus is listened to, step by step. */
export const PullBlock = ({ boat, plan, snapshot }: { boat: Boat; plan: Plan; snapshot: LiveSnapshot }): ReactNode => {
  const tests = useMemo(() => pullTestsOf(plan), [plan]);
  const names = useMemo(() => namesOf(boat), [boat]);
  const { log } = useBoatLog(boat.name);
  const [running, setRunning] = useState<string | undefined>(undefined);
  const test = tests.find((one) => one.test === running);
  if (tests.length === 0) return null;
  return (
    <>
      <h3>{words.pull.heading}</h3>
      {test === undefined ? (
        <>
          <p className="quiet">{words.pull.about}</p>
          <ul>
            {tests.map((one) => {
              const right = log.readings.get(one.test)?.right;
              return (
                <li key={one.test}>
                  <button type="button" className="press-link" onClick={() => setRunning(one.test)}>
                    {words.pull.begin(names.unit(one.unit))}
                  </button>
                  {right === undefined ? null : <span className="row-fact"> {words.pull.done(right)}</span>}
                </li>
              );
            })}
          </ul>
        </>
      ) : (
        <Running
          test={test}
          snapshot={snapshot}
          names={names}
          boatName={boat.name}
          onEnd={() => setRunning(undefined)}
        />
      )}
    </>
  );
};
