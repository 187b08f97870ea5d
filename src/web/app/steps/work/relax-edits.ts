import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { EditCall } from '../../../../core/boat/history.ts';
import type { DaysSpan, Hand } from '../../../../core/boat/work.ts';
import type { PhaseWork, Stuck } from '../../../../core/work-shape.ts';
import { dateAfter } from '../../../../papers/work/day-words.ts';
import { words } from './words.ts';

type Relax = Stuck['relax'][number];

/** Spans with the last of them so many days longer; a span after all jobs where there are none. */
const longer = (
  spans: readonly DaysSpan[] | undefined,
  days: number,
  first: string | undefined,
): DaysSpan[] | undefined => {
  const sorted = [...(spans ?? [])].sort((one, other) => (one.from < other.from ? -1 : 1));
  const last = sorted.at(-1);
  if (last !== undefined) return [...sorted.slice(0, -1), { from: last.from, to: dateAfter(last.to, days) }];
  return first === undefined ? undefined : [{ from: first, to: dateAfter(first, Math.max(0, days - 1)) }];
};

const skilled = (
  { work }: Boat,
  { hands }: PhaseWork,
  needs: readonly NonNullable<Hand['can']>[number][],
): EditCall[] => {
  const able = (work?.hands ?? [])[0];
  const [first] = hands;
  if (able !== undefined)
    return [{ edit: 'set-hand', params: { ...able, can: [...new Set([...(able.can ?? []), ...needs])] } }];
  return first === undefined
    ? []
    : [{ edit: 'set-hand', params: { id: first.id, name: first.name, is: 'owner', can: [...needs] } }];
};

/** The edits by which one thing gives; none where only a person can say what. */
export const relaxEdits = (boat: Boat, phase: PhaseWork, { what, about, days = 1 }: Relax): EditCall[] => {
  const { work = {} } = boat;
  const first = phase.days[0]?.date;
  const jobs = phase.jobs.filter(({ id }) => about.includes(id));
  switch (what) {
    case 'days':
      return work.doneBy === undefined ? [] : [{ edit: 'set-work', params: { doneBy: dateAfter(work.doneBy, days) } }];
    case 'haul-out-days': {
      const ashore = longer(work.ashore, days, first);
      return ashore === undefined ? [] : [{ edit: 'set-work', params: { ashore } }];
    }
    case 'mast-days': {
      const mastDown = longer(work.mastDown, days, first);
      return mastDown === undefined ? [] : [{ edit: 'set-work', params: { mastDown } }];
    }
    case 'hand':
      return skilled(boat, phase, [...new Set(jobs.flatMap(({ needs }) => needs))]);
    case 'unpin':
      return jobs.map(({ id }): EditCall => ({ edit: 'settle-job', params: { job: id, forget: ['day'] } }));
    case 'leave-out':
      return jobs.map(
        ({ id }): EditCall => ({
          edit: 'settle-job',
          params: { job: id, leftOut: words.leftOutForOrder },
        }),
      );
    case 'earlier':
    case 'temporary-feed':
      return [];
  }
};
