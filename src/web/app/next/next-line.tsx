import { type ReactNode, useMemo, useState } from 'react';
import { firstPlan } from '../../../papers/next/first-plan.ts';
import type { NextAsked, NextThing } from '../../../papers/next/next-thing.ts';
import { nextThings } from '../../../papers/next/next-things.ts';
import { nothingNext } from '../../../papers/next/nothing-next.ts';
import { words as courseWords } from '../course/words.ts';
import { putHintAway } from '../hints/hint-store.ts';
import type { StepId } from '../route.ts';
import { useWords } from '../words/units.ts';
import { goToNext } from './go-to-next.ts';
import './next-line.css';
import { words } from './words.ts';

/** As many things as a person looks ahead. */
const mostThen = 4;

/** How far a first plan has come, until it stands: a mark a part, filled when it is done. */
const FirstPlan = ({ things }: { things: readonly NextThing[] }): ReactNode => {
  const parts = firstPlan(things);
  const done = parts.filter(({ isDone }) => isDone).length;
  if (done === parts.length) return null;
  return (
    <section className="first-plan" aria-label={words.firstPlan}>
      <p>
        {words.firstPlan}: {words.far(done, parts.length)}
      </p>
      <ul>
        {parts.map(({ id, isDone }) => (
          <li key={id} className={isDone ? 'done' : undefined} title={words.part[id]}>
            <span className="unseen">{isDone ? words.partDone(words.part[id]) : words.partOpen(words.part[id])}</span>
          </li>
        ))}
      </ul>
    </section>
  );
};

/** Said once, when a first plan came to stand under one’s hands: where its drawing, its order and its measures are. */
const PlanStands = ({ hrefOf, onAway }: { hrefOf: (step: StepId) => string; onAway: () => void }): ReactNode => (
  <section className="plan-stands" aria-label={words.stands}>
    <p role="status">{words.stands}</p>
    <ul>
      {(['lines', 'buy', 'boat'] as const).map((step) => (
        <li key={step}>
          <a href={hrefOf(step)}>{words.standsAt[step]}</a>
        </li>
      ))}
    </ul>
    <button type="button" onClick={onAway}>
      {words.putAway}
    </button>
  </section>
);

/** Whether the first plan of a boat was seen open here before it came to stand; `forget` ends that. */
const useCameToStand = (boat: string, isOpen: boolean): readonly [cameToStand: boolean, forget: () => void] => {
  const [seenOpen, setSeenOpen] = useState<string | undefined>(undefined);
  if (isOpen && seenOpen !== boat) setSeenOpen(boat);
  return [!isOpen && seenOpen === boat, () => setSeenOpen(undefined)];
};

/** The next sensible thing to do at this boat, over the course line; while a plan is made in haste, what the last whole one said. */
export const NextLine = ({
  boat,
  plan,
  tested,
  done,
  isSettled,
  here,
  hrefOf,
}: NextAsked & {
  readonly isSettled: boolean;
  readonly here: StepId;
  readonly hrefOf: (step: StepId) => string;
}): ReactNode => {
  const now = useMemo(() => nextThings({ boat, plan, tested, done }), [boat, plan, tested, done]);
  const [things, setThings] = useState(now);
  if (isSettled && things !== now) setThings(now);
  const say = useWords();
  const [next, ...then] = things;
  const isOpen = firstPlan(things).some(({ isDone }) => !isDone);
  const [cameToStand, forget] = useCameToStand(boat.name, isOpen);
  return (
    <section className="next-line" aria-label={words.next}>
      <FirstPlan things={things} />
      {cameToStand ? <PlanStands hrefOf={hrefOf} onAway={forget} /> : null}
      <h2>{words.next}</h2>
      {next === undefined ? (
        <p>{nothingNext}</p>
      ) : (
        <>
          <a
            className="next-go"
            href={hrefOf(next.step)}
            onClick={() => {
              putHintAway('next');
              goToNext(next.id, next.step === here);
            }}
          >
            <span className="next-at">{words.at(courseWords.step[next.step])}</span>
            {say(next.does)}
          </a>
          <p className="next-why">{say(next.onPage === undefined ? next.why : `${next.onPage} ${next.why}`)}</p>
        </>
      )}
      {then.length === 0 ? null : (
        <details className="next-then">
          <summary>{words.andThen(then.length)}</summary>
          <ol>
            {then.slice(0, mostThen).map(({ id, step, does }) => (
              <li key={id}>
                <a href={hrefOf(step)} onClick={() => goToNext(id, step === here)}>
                  <span className="next-at">{words.at(courseWords.step[step])}</span>
                  {say(does)}
                </a>
              </li>
            ))}
          </ol>
        </details>
      )}
    </section>
  );
};
