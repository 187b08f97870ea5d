import type { EssentialFunction } from '../../core/facts/essential-functions.ts';
import { eveningItems } from '../../core/facts/evening-items.ts';
import { functionFallbacks } from '../../core/facts/fallback-kit.ts';
import { dayTickId } from '../../core/work/ticks.ts';
import type { Dark, Job, JobStart, PhaseWork } from '../../core/work-shape.ts';
import { type CautionWords, cautionWords } from '../power/caution-words.ts';
import { clockWords, dayOfPhase } from './day-words.ts';
import { functionWords } from './function-words.ts';
import { jobWords } from './job-words.ts';
import type { PictureInput } from './picture-input.ts';
import { stepWords, toolWords } from './step-words.ts';
import { itemName, jobCables, thingName } from './work-names.ts';

/** One job as it is done on a day. */
export interface DayJob {
  readonly job: Job;
  readonly number: number;
  readonly what: string;
  /** "09:00 to 11:30", and on which days where it takes more than one */
  readonly when: string;
  readonly hands: string;
  readonly place?: string;
  readonly steps: readonly { readonly id: string; readonly says: string }[];
  readonly cautions: readonly CautionWords[];
  /** essential functions that are dark while it lasts */
  readonly takes: readonly string[];
  /** the cables it is about, by kind and label */
  readonly cables: readonly string[];
}

/** An essential function that is dark on a day. */
export interface DayDark {
  readonly id: EssentialFunction;
  readonly name: string;
  readonly when: string;
  readonly fallback: string;
  /** still dark when everybody goes */
  readonly isTonight: boolean;
}

/** All that a person needs on one day of the work. */
export interface DaySheet {
  readonly phase: number;
  readonly day: number;
  readonly title: string;
  readonly says: string;
  readonly jobs: readonly DayJob[];
  readonly tools: readonly string[];
  readonly materials: readonly string[];
  readonly cautions: readonly CautionWords[];
  readonly dark: readonly DayDark[];
  readonly evening: readonly { readonly id: string; readonly says: string }[];
}

const whenOf = (phase: PhaseWork, { day, slot, lastDay, lastSlot }: JobStart): string => {
  const [from, to] = [clockWords(phase.from, slot), clockWords(phase.from, lastSlot)];
  if (day === lastDay) return `${from} to ${to}`;
  return `${dayOfPhase(phase, day)} ${from} to ${dayOfPhase(phase, lastDay)} ${to}`;
};

const dayJob = ({ names, numbers, done }: PictureInput, phase: PhaseWork, job: Job, start: JobStart): DayJob => {
  const hands = start.hands.map((id) => phase.hands.find((hand) => hand.id === id)?.name ?? id);
  return {
    job,
    number: numbers.get(job.id) ?? 0,
    what: jobWords(names, job),
    when: done.has(job.id) ? 'done' : start.hands.length === 0 ? 'only waited for' : whenOf(phase, start),
    hands: hands.join(' and '),
    ...(job.place === undefined ? {} : { place: thingName(names, job.place) }),
    steps: job.steps.map((id) => ({ id, says: stepWords(id) })),
    cautions: cautionWords(job.cautions),
    takes: job.takes.map((id) => functionWords[id]),
    cables: jobCables(names, job),
  };
};

type Spot = Dark['from'];
const isBefore = (one: Spot, other: Spot): boolean =>
  one.day < other.day || (one.day === other.day && one.slot < other.slot);

const darkOn = (phase: PhaseWork, day: number): DayDark[] =>
  (phase.order?.dark ?? [])
    .filter(({ from, to, hoursH }) => hoursH > 0 && from.day <= day && isBefore({ day, slot: 0 }, to))
    .map(({ function: id, from, to }) => {
      const isTonight = isBefore({ day, slot: phase.perDay }, to);
      const begins = from.day < day ? 'from the days before' : `from ${clockWords(phase.from, from.slot)}`;
      const ends =
        to.day === day
          ? `to ${clockWords(phase.from, to.slot)}`
          : `to ${dayOfPhase(phase, to.day)} ${clockWords(phase.from, to.slot)}`;
      return {
        id,
        name: functionWords[id],
        when: `${begins} ${ends}`,
        fallback: functionFallbacks[id].says,
        isTonight,
      };
    });

const stateWords = ({ days }: PhaseWork, day: number): string => {
  const calendar = days[day];
  return [
    calendar?.afloat === false ? 'ashore' : 'afloat',
    ...(calendar?.mast === 'down' ? ['mast down'] : []),
    ...(calendar?.foul === true ? ['foul: no work outside'] : []),
    ...(calendar?.left === true ? ['nobody aboard at night'] : []),
  ].join(', ');
};

/** Items of several jobs put together, with their counts. */
const together = ({ names }: PictureInput, jobs: readonly Job[]): string[] => {
  const counts = new Map<string, number>();
  for (const { item, count } of jobs.flatMap(({ materials }) => materials))
    counts.set(item, (counts.get(item) ?? 0) + count);
  return [...counts].map(([item, count]) => `${Number(count.toFixed(2))} × ${itemName(names, item)}`);
};

/** What is done on one day of a phase, with all that is brought, minded and made ready for the night. */
export const daySheet = (input: PictureInput, phase: PhaseWork, day: number): DaySheet => {
  const jobs = new Map(phase.jobs.map((job) => [job.id, job]));
  const own = (phase.order?.starts ?? [])
    .filter((start) => start.day <= day && day <= start.lastDay)
    .flatMap((start) => {
      const job = jobs.get(start.job);
      return job === undefined ? [] : [{ job, start }];
    });
  const done = own.map(({ job }) => job);
  const people = [...new Set(own.flatMap(({ start }) => start.hands))].map(
    (id) => phase.hands.find((hand) => hand.id === id)?.name ?? id,
  );
  const isAfloat = phase.days[day]?.afloat !== false;
  const evening = Object.entries(eveningItems.says).filter(([id]) => isAfloat || id !== 'pump-lifted');
  return {
    phase: phase.phase,
    day,
    title: dayOfPhase(phase, day),
    says: [stateWords(phase, day), ...(people.length === 0 ? [] : [people.join(' and ')])].join('; '),
    jobs: own.map(({ job, start }) => dayJob(input, phase, job, start)).sort((one, other) => one.number - other.number),
    tools: [...new Set(done.flatMap(({ tools }) => tools))].map(toolWords),
    materials: together(input, done),
    cautions: cautionWords([...new Set(done.flatMap(({ cautions }) => cautions))]),
    dark: darkOn(phase, day),
    evening: evening.map(([item, says]) => ({ id: dayTickId({ phase: phase.phase, day, item }), says })),
  };
};
