import type { ReactNode } from 'react';
import { isTicked, jobTickId, stepTickId } from '../../../../core/work/ticks.ts';
import type { DayJob, DaySheet } from '../../../../papers/work/day-sheet.ts';
import { ownSignature } from '../../forms/own-name.ts';
import type { OpenLog } from '../../log/use-boat-log.ts';
import { useWords } from '../../words/units.ts';
import { words } from './words.ts';

interface TickProps extends Pick<OpenLog, 'log' | 'append'> {
  readonly of: string;
  readonly says: string;
  /** said besides to those who do not see where it stands */
  readonly what?: string;
}

/** One thing to tick: a row high enough for a thumb. */
export const Tick = ({ log, append, of, says, what }: TickProps): ReactNode => (
  <label className="work-tick">
    <input
      type="checkbox"
      checked={isTicked(log, of)}
      onChange={({ target }) => append({ kind: 'tick', of, done: target.checked, ...ownSignature() })}
    />
    <span>
      {says}
      {what === undefined ? null : <span className="unseen"> ({what})</span>}
    </span>
  </label>
);

const PaperJob = ({ one, log, append }: { one: DayJob } & Pick<OpenLog, 'log' | 'append'>): ReactNode => {
  const say = useWords();
  const { job, number, what, when, hands, place, steps, cautions, takes, cables } = one;
  return (
    <li className="paper-job">
      <h3>
        <span className="work-number">{number}</span> {say(what)}
      </h3>
      <p className="quiet">
        {[when, hands, ...(place === undefined ? [] : [place])].filter((part) => part !== '').join(' · ')}
      </p>
      {cables.length === 0 ? null : <p className="quiet">{words.cables(cables.join(', '))}</p>}
      {takes.length === 0 ? null : <p className="work-dark">{words.darkWhile(takes.join(', '))}</p>}
      {cautions.map(({ id, title, says }) => (
        <p key={id} className="work-caution">
          <strong>{title}.</strong> {say(says)}
        </p>
      ))}
      {steps.map(({ id, says }) => (
        <Tick key={id} log={log} append={append} of={stepTickId(job.id, id)} says={say(says)} what={what} />
      ))}
      <Tick log={log} append={append} of={jobTickId(job.id)} says={words.jobDone} what={what} />
    </li>
  );
};

const Named = ({ title, all }: { title: string; all: readonly string[] }): ReactNode => {
  const say = useWords();
  return all.length === 0 ? null : (
    <section>
      <h3>{title}</h3>
      <p>{say(`${all.join('; ')}.`)}</p>
    </section>
  );
};

/** One day as it is taken aboard: jobs with their steps, what is brought, what is dark and what to have ready, and the end of the day. */
export const DayPaper = ({
  sheet,
  boatName,
  log,
  append,
}: { sheet: DaySheet; boatName: string } & Pick<OpenLog, 'log' | 'append'>): ReactNode => {
  const tonight = sheet.dark.filter(({ isTonight }) => isTonight);
  return (
    <article className="day-paper">
      <header>
        <h2>{words.dayOf(sheet.title, boatName)}</h2>
        <p>{sheet.says}</p>
      </header>
      <ol className="paper-jobs">
        {sheet.jobs.map((one) => (
          <PaperJob key={one.job.id} one={one} log={log} append={append} />
        ))}
      </ol>
      <Named title={words.bring} all={sheet.tools} />
      <Named title={words.take} all={sheet.materials} />
      <section>
        <h3>{tonight.length === 0 ? words.nothingTonight : words.tonight}</h3>
        {sheet.dark.map(({ id, name, when, fallback, isTonight }) => (
          <p key={`${id} ${when}`} className={isTonight ? 'work-dark' : 'quiet'}>
            <strong>{name}</strong> {when}. {words.haveReady(fallback)}
          </p>
        ))}
      </section>
      <section>
        <h3>{words.evening}</h3>
        {sheet.evening.map(({ id, says }) => (
          <Tick key={id} log={log} append={append} of={id} says={says} what={sheet.title} />
        ))}
      </section>
    </article>
  );
};
