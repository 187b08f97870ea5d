import { useEffect, useMemo, useSyncExternalStore } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { BoatLog } from '../../../../core/log/boat-log.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import { doneJobs } from '../../../../core/work/ticks.ts';
import type { PlanWork } from '../../../../core/work-shape.ts';
import type { PictureInput } from '../../../../papers/work/picture-input.ts';
import { pictureOf } from '../../../../papers/work/picture-of.ts';
import { keepWork } from '../../log/found-work.ts';
import { type OpenLog, useBoatLog } from '../../log/use-boat-log.ts';
import { todayIso } from '../binder/today-iso.ts';
import { beginSearch } from './begin-search.ts';
import { workDesk } from './work-desk.ts';

/** One desk for all parts of the step: they show the same order. */
const desk = workDesk(beginSearch);

interface InputOf {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly work: PlanWork;
  readonly log: BoatLog;
  readonly today: string;
}

let latest: (InputOf & { readonly input: PictureInput }) | undefined;

/** What every part of the step shows, reckoned once for all of them. */
const inputOf = (of: InputOf): PictureInput => {
  const { boat, plan, work, log, today } = of;
  const isSame =
    latest?.boat === boat &&
    latest.plan === plan &&
    latest.work === work &&
    latest.log === log &&
    latest.today === today;
  if (latest === undefined || !isSame) latest = { ...of, input: pictureOf(boat, plan, { work, log, today }) };
  return latest.input;
};

/** The work of the boat that is open, as far as it is known and done. */
export interface OpenWork extends OpenLog {
  /** undefined while it is still being counted */
  readonly work: PlanWork | undefined;
  readonly input: PictureInput | undefined;
  readonly isSearching: boolean;
  readonly fault?: string;
  readonly stop: () => void;
}

/** The work of the boat that is open with the best order so far, which is looked for while this part is on the page. */
export const useWork = (boat: Boat, plan: Plan): OpenWork => {
  const openLog = useBoatLog(boat.name);
  const { log } = openLog;
  const found = useSyncExternalStore(desk.onChange, desk.state);
  const done = useMemo(() => doneJobs(log), [log]);
  const today = todayIso();
  useEffect(() => {
    // a plan made in haste has no work: the one that follows it has
    if (plan.work !== undefined) desk.want({ boat, plan, done, today });
  }, [boat, plan, done, today]);
  useEffect(() => desk.hold(), []);
  const { work, plan: of } = found;
  useEffect(() => {
    if (work !== undefined && of !== undefined) keepWork(of, work);
  }, [work, of]);
  const input = useMemo(
    () => (work === undefined ? undefined : inputOf({ boat, plan, work, log, today })),
    [boat, plan, work, log, today],
  );
  return { ...openLog, ...found, input, stop: desk.stop };
};
