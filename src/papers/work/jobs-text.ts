import type { Boat } from '../../core/boat/boat-schema.ts';
import type { BoatLog } from '../../core/log/boat-log.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { keepUnits, printCount } from '../lists/print-figure.ts';
import { orderSays } from './cost-words.ts';
import { daySheet } from './day-sheet.ts';
import { jobWords } from './job-words.ts';
import type { PictureInput } from './picture-input.ts';
import { pictureOf } from './picture-of.ts';
import { stuckSays } from './stuck-words.ts';
import { workingDays } from './working-days.ts';

const width = 80;

type Phase = PictureInput['phases'][number];

const jobLines = (number: number | undefined, box: string, words: string, id: string): string[] => {
  const lead = `${String(number ?? '').padStart(3)} ${box} `;
  return [...textLines(keepUnits(words), { width, lead }), `${' '.repeat(lead.length)}[${id}]`];
};

/** The jobs of one day; one that lasts into it stands on the day it begins. */
const dayLines = (input: PictureInput, phase: Phase, day: number): string[] => {
  const { title, says, jobs, dark } = daySheet(input, phase, day);
  const begun = new Set((phase.order?.starts ?? []).filter((start) => start.day === day).map(({ job }) => job));
  return [
    '',
    ...textLines(`${title}: ${says}`, { width, lead: '' }),
    ...jobs
      .filter(({ job }) => begun.has(job.id))
      .flatMap(({ job, number, what, when, hands }) =>
        jobLines(
          number,
          input.done.has(job.id) ? '[x]' : '[ ]',
          `${what}; ${when}${hands === '' ? '' : `, ${hands}`}`,
          job.id,
        ),
      ),
    ...dark.flatMap(({ name, when, fallback }) =>
      textLines(`Dark ${when}: ${name}. At hand then: ${fallback}.`, { width, lead: '  ! ' }),
    ),
  ];
};

/** Also days on which only a wait begins. */
const startDays = ({ order }: Phase): number[] =>
  [...new Set((order?.starts ?? []).map(({ day }) => day))].sort((one, other) => one - other);

const phaseLines = (input: PictureInput, phase: Phase): string[] => {
  const jobs = phase.jobs.filter(({ leftOut }) => leftOut === undefined);
  const lead = input.phases.length > 1 ? `Phase ${phase.phase}: ` : '';
  const done = jobs.filter(({ id }) => input.done.has(id)).length;
  return [
    ...textLines(
      `${printCount(jobs.length, 'job')} on ${printCount(workingDays(phase).length, 'day')}, ${done} done.`,
      { width, lead },
    ),
    ...orderSays(phase).flatMap((words) => textLines(keepUnits(words), { width, lead: '- ' })),
    ...(phase.stuck === undefined ? [] : textLines(stuckSays(input, phase.stuck), { width, lead: '! ' })),
    ...(phase.order === undefined
      ? jobs.flatMap((job) =>
          jobLines(
            input.numbers.get(job.id),
            input.done.has(job.id) ? '[x]' : '[ ]',
            jobWords(input.names, job),
            job.id,
          ),
        )
      : startDays(phase).flatMap((day) => dayLines(input, phase, day))),
    '',
  ];
};

/** Every job of a boat day by day for a terminal, with its number, its hours, who does it, whether it is done, and the id by which it is ticked. */
export const jobsText = (boat: Boat, plan: Plan, log: BoatLog): string => {
  const { work } = plan;
  if (work === undefined || work.phases.every(({ jobs }) => jobs.length === 0)) return 'There is no work to be done.\n';
  const input = pictureOf(boat, plan, { work, log });
  return `${input.phases
    .flatMap((phase) => phaseLines(input, phase))
    .join('\n')
    .trimEnd()}\n`;
};
