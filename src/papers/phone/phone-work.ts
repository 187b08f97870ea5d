import type { Boat } from '../../core/boat/boat-schema.ts';
import { eveningItems } from '../../core/facts/evening-items.ts';
import { emptyLog } from '../../core/log/boat-log.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { dayTickId } from '../../core/work/ticks.ts';
import type { PhaseWork } from '../../core/work-shape.ts';
import { type DayJob, type DaySheet, daySheet } from '../work/day-sheet.ts';
import { pictureOf } from '../work/picture-of.ts';
import { workingDays } from '../work/working-days.ts';
import type { PhoneDay, PhoneJob, PhoneWork } from './phone-day.ts';

const jobOf = ({ job, what, when, hands, place, steps, cautions, takes, cables }: DayJob): PhoneJob => ({
  id: job.id,
  says: what,
  about: [when, ...(hands === '' ? [] : [hands]), ...(place === undefined ? [] : [place]), ...cables],
  steps: steps.map(({ id }) => id),
  cautions: cautions.map(({ id }) => id),
  takes,
});

/** Items of the end of a day, of those that the sheet of that day has. */
const eveningOf = ({ phase, day, evening }: DaySheet): string[] => {
  const asked = new Set(evening.map(({ id }) => id));
  return Object.keys(eveningItems.says).filter((item) => asked.has(dayTickId({ phase, day, item })));
};

const dayOf = (sheet: DaySheet, { days }: PhaseWork, isOneOfSeveral: boolean): PhoneDay => {
  const { phase, day } = sheet;
  const date = days[day]?.date;
  return {
    phase,
    day,
    ...(date === undefined ? {} : { date }),
    title: isOneOfSeveral ? `${sheet.title}, phase ${phase}` : sheet.title,
    says: sheet.says,
    jobs: sheet.jobs.map(jobOf),
    bring: [...sheet.tools, ...sheet.materials],
    dark: sheet.dark.map(({ name, when, isTonight }) => ({ name, when, isTonight })),
    evening: eveningOf(sheet),
  };
};

/** The days on which somebody works, each with all that is wanted there; absent while there is no order of the work. */
export const phoneWork = (boat: Boat, plan: Plan, done: ReadonlySet<string> = new Set()): PhoneWork | undefined => {
  const { work } = plan;
  if (work === undefined || !work.phases.some(({ order }) => order !== undefined)) return undefined;
  const input = { ...pictureOf(boat, plan, { work, log: emptyLog }), done };
  const sheets = work.phases.flatMap((phase) =>
    workingDays(phase).map((day) => ({ phase, sheet: daySheet(input, phase, day) })),
  );
  const all = sheets.map(({ sheet }) => sheet);
  const steps = all.flatMap(({ jobs }) => jobs.flatMap((job) => job.steps));
  return {
    days: sheets.map(({ sheet, phase }) => dayOf(sheet, phase, work.phases.length > 1)),
    steps: Object.fromEntries(steps.map(({ id, says }) => [id, says])),
    evening: eveningItems.says,
    fallbacks: Object.fromEntries(all.flatMap(({ dark }) => dark.map(({ name, fallback }) => [name, fallback]))),
  };
};
