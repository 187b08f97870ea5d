import type { Work } from '../../boat/work.ts';
import { workDay } from '../../facts/work-day.ts';
import type { CalendarDay, Job, PhaseWork } from '../../work-shape.ts';

/** Days in a row that are taken for jobs because nobody entered any. */
export type Taken = PhaseWork['taken'][number];

interface TakenInput {
  readonly work: Work;
  readonly jobs: readonly Job[];
  readonly perDay: number;
  readonly hands: PhaseWork['hands'];
  readonly stretch: number;
  /** days by which they come sooner than the jobs before them would take */
  readonly sooner: number;
  readonly days: readonly CalendarDay[];
  readonly isDated: boolean;
}

/** Half hours in a day of the clock. */
const clockDay = 48;
const waitSlots = (hours: number | undefined): number => Math.ceil((hours ?? 0) * 2);

/** Days that jobs take one after another, and days that are waited on the longest chain of waits. */
export const daysWanted = (jobs: readonly Job[], perDay: number): { readonly work: number; readonly waits: number } => {
  const work = jobs.reduce(
    (sum, { slots }) => sum + Math.ceil(slots / perDay) * (slots > perDay ? 1 : slots / perDay),
    0,
  );
  return { work: Math.ceil(work), waits: Math.ceil(longest(jobs, () => 0) / clockDay) };
};

/** The longest chain of jobs and waits, half hours of the clock, with what each job itself counts as. */
const longest = (jobs: readonly Job[], own: (job: Job) => number): number => {
  const byId = new Map(jobs.map((job) => [job.id, job]));
  const known = new Map<string, number>();
  const endOf = (id: string): number => {
    const found = known.get(id);
    const job = byId.get(id);
    if (found !== undefined || job === undefined) return found ?? 0;
    // What waits for itself in a circle is told elsewhere; here it only must come to an end.
    known.set(id, 0);
    const before = job.after.map((link) => endOf(link.job) + waitSlots(link.waitH));
    const end = Math.max(0, ...before) + own(job) + waitSlots(job.waitH);
    known.set(id, end);
    return end;
  };
  return Math.max(0, ...jobs.map(({ id }) => endOf(id)));
};

/** All jobs but some and what waits for them, by however many steps. */
const othersThan = (jobs: readonly Job[], some: readonly Job[]): Job[] => {
  const waiting = new Map<string, string[]>();
  for (const { id, after } of jobs)
    for (const link of after) waiting.set(link.job, [...(waiting.get(link.job) ?? []), id]);
  const seen = new Set<string>();
  const open = some.map(({ id }) => id);
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    if (seen.has(id)) continue;
    seen.add(id);
    open.push(...(waiting.get(id) ?? []));
  }
  return jobs.filter(({ id }) => !seen.has(id));
};

/**
 * Days ashore and with the mast down, where jobs want them and nobody entered any: in a row, as many as those jobs take in work
 * and waits and one to spare, once all that does not wait for them could be done, so that little is left to do after them, and
 * their parts and papers are there.
 */
export const takenDays = (input: TakenInput): Taken[] => {
  const { work, jobs, isDated } = input;
  const isEntered = (spans: readonly unknown[] | undefined): boolean => isDated && (spans?.length ?? 0) > 0;
  const ashore = isEntered(work.ashore) ? [] : jobs.filter(({ state }) => state === 'ashore');
  const down = isEntered(work.mastDown) ? [] : jobs.filter(({ mast }) => mast === 'down');
  return [...spanFor('ashore', ashore, input), ...spanFor('mast-down', down, input)];
};

const spanFor = (what: Taken['what'], some: readonly Job[], input: TakenInput): Taken[] => {
  if (some.length === 0) return [];
  const { jobs, perDay, hands, days, stretch, sooner } = input;
  const others = othersThan(jobs, some);
  const workers = Math.max(1, hands.length);
  const workDays = (list: readonly Job[]): number =>
    Math.ceil(list.reduce((sum, { slots, people }) => sum + slots * people, 0) / (perDay * workers));
  const comes = Math.max(0, ...some.flatMap(({ waitsFor }) => waitsFor.map(({ on }) => dayOf(days, on))));
  const open = days.filter((day) => day.hands.length > 0);
  const lead = open[Math.min(open.length - 1, workDays(others))]?.day ?? 0;
  const from = Math.max(comes, lead - sooner, open[0]?.day ?? 0);
  // What cures before she goes in again, or the mast up, cures on these days too.
  const ends = jobs.filter(({ kind }) => kind === (what === 'ashore' ? 'launch' : 'mast-up'));
  const chain =
    longest([...some, ...ends], (job) => (some.includes(job) ? (job.slots / perDay) * clockDay : 0)) / clockDay;
  const wanted = Math.max(workDays(some), Math.ceil(chain)) + workDay.spare.value + stretch;
  const inside = open.filter(({ day }) => day >= from).slice(0, wanted);
  const to = inside.at(-1)?.day;
  return to === undefined ? [] : [{ what, from, to }];
};

const dayOf = (days: readonly CalendarDay[], on: string | undefined): number =>
  on === undefined
    ? 0
    : Math.max(
        0,
        days.findIndex(({ date }) => date !== undefined && date >= on),
      );
