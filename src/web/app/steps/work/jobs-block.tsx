import { type ReactNode, useEffect, useMemo, useRef, useState, useSyncExternalStore } from 'react';
import type { StepMarginProps } from '../step.ts';
import { dayChosen } from './day-choice.ts';
import { JobRow } from './job-row.tsx';
import { type JobGroup, jobsByDay } from './jobs-by-day.ts';
import { OwnJobs } from './own-jobs.tsx';
import { type OpenWork, useWork } from './use-work.ts';
import { words } from './words.ts';
import { useWorkView } from './work-view.ts';

interface GroupProps {
  readonly group: JobGroup;
  readonly isNow: boolean;
  readonly picked: string | undefined;
  readonly open: OpenWork & { readonly input: NonNullable<OpenWork['input']> };
  readonly hand: StepMarginProps['hand'];
}

/** One day of the list; it opens when it is the day that is looked at, or when one of its jobs is picked on the picture. */
const Group = ({ group, isNow, picked, open, hand }: GroupProps): ReactNode => {
  const holdsPicked = group.jobs.some(({ id }) => id === picked);
  const [isOpen, setIsOpen] = useState(isNow);
  useEffect(() => {
    if (holdsPicked || isNow) setIsOpen(true);
  }, [holdsPicked, isNow]);
  return (
    <details className="work-fold" open={isOpen} onToggle={({ currentTarget }) => setIsOpen(currentTarget.open)}>
      <summary>{words.dayHead(group.title, group.jobs.length, group.doneCount)}</summary>
      {isOpen ? (
        <ul>
          {group.jobs.map((job) => (
            <JobRow
              key={job.id}
              phase={group.phase}
              job={job}
              input={open.input}
              hand={hand}
              log={open.log}
              append={open.append}
            />
          ))}
        </ul>
      ) : null}
    </details>
  );
};

const usePicked = ({ lights }: StepMarginProps['hand']): string | undefined => {
  const picked = useSyncExternalStore(lights.subscribe, lights.picked);
  return [...picked][0];
};

/** All jobs by day, ticked here as they are done. */
export const JobsBlock = ({ boat, plan, hand }: StepMarginProps): ReactNode => {
  const open = useWork(boat, plan);
  const { input } = open;
  const view = useWorkView();
  const block = useRef<HTMLElement>(null);
  const picked = usePicked(hand);
  const groups = useMemo(() => (input === undefined ? [] : jobsByDay(input)), [input]);
  useEffect(() => {
    if (picked === undefined) return;
    // the day of the job opens first
    requestAnimationFrame(() =>
      block.current
        ?.querySelector(`[data-job="${CSS.escape(picked)}"]`)
        ?.scrollIntoView({ block: 'nearest', behavior: 'instant' }),
    );
  }, [picked]);
  if (input === undefined || groups.length === 0) return null;
  const at = dayChosen(input, view.at);
  return (
    <section ref={block} className="block work-block">
      <h2>{words.jobs}</h2>
      {groups.map((group) => (
        <Group
          key={group.key}
          group={group}
          isNow={group.phase.phase === at?.phase && group.day === at.day}
          picked={picked}
          open={{ ...open, input }}
          hand={hand}
        />
      ))}
      <OwnJobs boat={boat} />
    </section>
  );
};
