import type { Boat } from '../../core/boat/boat-schema.ts';
import { emptyLog } from '../../core/log/boat-log.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { keepUnits, printCount } from '../lists/print-figure.ts';
import { orderSays } from './cost-words.ts';
import { orderDateList } from './order-date-list.ts';
import { pictureOf } from './picture-of.ts';
import { stuckSays } from './stuck-words.ts';
import { workingDays } from './working-days.ts';

const width = 80;

const lines = (words: string, lead: string): string[] => textLines(keepUnits(words), { width, lead });

/** What the plan’s text says of the work: jobs, days, what is dark, why there is no order, what is to be ordered first; nothing where there is no work. */
export const workText = (boat: Boat, plan: Plan): string[] => {
  const { work } = plan;
  if (work === undefined || work.phases.every(({ jobs }) => jobs.length === 0)) return [];
  const input = pictureOf(boat, plan, { work, log: emptyLog });
  const [first] = orderDateList(boat, plan).rows;
  return [
    'WORK',
    ...work.phases.flatMap((phase) => {
      const lead = work.phases.length > 1 ? `Phase ${phase.phase}: ` : '';
      const jobs = phase.jobs.filter(({ leftOut }) => leftOut === undefined).length;
      return [
        ...lines(`${printCount(jobs, 'job')} on ${printCount(workingDays(phase).length, 'day')}.`, lead),
        ...orderSays(phase).flatMap((says) => lines(says, '- ')),
        ...(phase.stuck === undefined ? [] : lines(stuckSays(input, phase.stuck), '! ')),
      ];
    }),
    ...(first === undefined ? [] : lines(`Order first: ${first[1]}, by ${first[0]}.`, '- ')),
  ];
};
