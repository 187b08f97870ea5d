import { type ReactNode, useMemo, useState } from 'react';
import { indexBoat } from '../../../../../core/boat/boat-index.ts';
import { crewOf, crewRound, crewTickId } from '../../../../../core/proof/trial/crew-round.ts';
import { seaTrial, type TrialStep, trialId } from '../../../../../core/proof/trial/sea-trial.ts';
import { trialSigns, trialStateWords } from '../../../../../papers/proof/trial-words.ts';
import { ownSignature } from '../../../forms/own-name.ts';
import { OwnNameField } from '../../../forms/own-name-field.tsx';
import { type OpenLog, useBoatLog } from '../../../log/use-boat-log.ts';
import { hashOf, routeOf } from '../../../route.ts';
import { useWords } from '../../../words/units.ts';
import type { StepMarginProps } from '../../step.ts';
import '../tests/tests-block.css';
import { words } from './words.ts';

/** The address of the step Fit of the boat that is open. */
const fitAddress = (): string => {
  const route = routeOf(window.location.hash);
  return route.page === 'boats' ? '#/' : hashOf({ ...route, step: 'fit' });
};

const TrialRow = ({ step, append }: { step: TrialStep; append: OpenLog['append'] }): ReactNode => {
  const inUnits = useWords();
  const { trial, state, calculator } = step;
  return (
    <li className="test-row">
      <p>{inUnits(trial.does)}</p>
      <p className="quiet">{inUnits(words.expected(trial.expect))}</p>
      <p
        className={`test-result ${state === 'not-right' || state === 'again' ? 'wrong' : state === 'done' ? 'right' : 'noted'}`}
      >
        <strong>{trialSigns[state]}</strong> {trialStateWords(step)}
      </p>
      <div className="test-entry">
        {[true, false].map((right) => {
          const answer = right ? words.right : words.wrong;
          return (
            <button
              key={answer}
              type="button"
              className="test-button"
              aria-label={words.answers(answer, trial.does)}
              onClick={() => append({ kind: 'reading', test: trialId(trial.id), right, ...ownSignature() })}
            >
              {answer}
            </button>
          );
        })}
        {calculator === undefined ? null : (
          <a className="press-link" href={fitAddress()}>
            {words.calculator}
          </a>
        )}
      </div>
    </li>
  );
};

interface CrewProps {
  readonly index: ReturnType<typeof indexBoat>;
  readonly log: OpenLog['log'];
  readonly append: OpenLog['append'];
}

const Crew = ({ index, log, append }: CrewProps): ReactNode => {
  const [person, setPerson] = useState('');
  const inUnits = useWords();
  const name = person.trim().slice(0, 80);
  const items = useMemo(() => crewRound(index, log), [index, log]);
  const known = useMemo(() => crewOf(log), [log]);
  return (
    <>
      <h2>{words.crew.heading}</h2>
      <p className="quiet">{words.crew.about}</p>
      <div className="test-choices crew-name">
        <label>
          <span>{words.crew.name}</span>
          <input
            value={person}
            list="crew-known"
            maxLength={80}
            autoComplete="off"
            onChange={({ target }) => setPerson(target.value)}
          />
        </label>
        <datalist id="crew-known">
          {known.map((one) => (
            <option key={one} value={one} />
          ))}
        </datalist>
      </div>
      {name === '' ? <p className="quiet">{words.crew.nobody}</p> : null}
      <ul>
        {items.map(({ id, does, units, shown }) => {
          const isShown = shown.has(name);
          const at = units.map((unit) => index.kit.get(unit)?.name ?? unit).join(', ');
          const people = [...shown].map(([one, day]) => `${one} (${day})`).join(', ');
          return (
            <li key={id} className="test-row">
              <p>{inUnits(does)}</p>
              <p className="quiet">
                {[...(at === '' ? [] : [at]), shown.size === 0 ? words.crew.notYet : words.crew.shown(people)].join(
                  ' · ',
                )}
              </p>
              <div className="test-entry">
                <button
                  type="button"
                  className="test-button"
                  disabled={name === ''}
                  aria-pressed={isShown}
                  aria-label={words.crew.tick(does, name)}
                  onClick={() => append({ kind: 'tick', of: crewTickId(id, name), done: !isShown, ...ownSignature() })}
                >
                  {words.crew.add}
                </button>
              </div>
            </li>
          );
        })}
      </ul>
    </>
  );
};

/** The trials at sea in their order, and what the crew is shown: each with how it stands, and ticked here. */
export const TrialBlock = ({ boat }: StepMarginProps): ReactNode => {
  const { log, append } = useBoatLog(boat.name);
  const index = useMemo(() => indexBoat(boat), [boat]);
  const steps = useMemo(() => seaTrial(index, log), [index, log]);
  const done = steps.filter(({ state }) => state === 'done').length;
  return (
    <section className="block trial-block">
      <h2>{words.heading(done, steps.length)}</h2>
      <p className="quiet">{steps.length === 0 ? words.none : words.about}</p>
      <p className="test-caution">{words.caution}</p>
      <div className="test-choices">
        <OwnNameField />
      </div>
      <ol>
        {steps.map((step) => (
          <TrialRow key={step.trial.id} step={step} append={append} />
        ))}
      </ol>
      <Crew index={index} log={log} append={append} />
    </section>
  );
};
