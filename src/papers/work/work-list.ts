import type { Boat } from '../../core/boat/boat-schema.ts';
import { type BoatLog, emptyLog } from '../../core/log/boat-log.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { doneJobs } from '../../core/work/ticks.ts';
import type { Job, PhaseWork } from '../../core/work-shape.ts';
import type { ListCell, ListTable } from '../table/list-table.ts';
import { clockWords, dayOfPhase } from './day-words.ts';
import { functionWords } from './function-words.ts';
import { jobNumbers } from './job-numbers.ts';
import { jobWords } from './job-words.ts';
import { stepWords, toolWords } from './step-words.ts';
import { itemName, thingName, type WorkNames, workNames } from './work-names.ts';

const columns: ListTable['columns'] = [
  { id: 'number', head: 'no.', kind: 'figure', digits: 0, share: 0.4 },
  { id: 'phase', head: 'phase', kind: 'figure', digits: 0, share: 0.4, printed: false },
  { id: 'job', head: 'job', share: 2.4 },
  { id: 'where', head: 'where', share: 1, printed: false },
  { id: 'day', head: 'day', share: 0.9 },
  { id: 'from', head: 'from', share: 0.5, printed: false },
  { id: 'by', head: 'by', share: 0.9 },
  { id: 'hours', head: 'lasts', unit: 'h', kind: 'figure', share: 0.5 },
  { id: 'after', head: 'after no.', share: 0.7 },
  { id: 'dark', head: 'dark meanwhile', share: 1.1, printed: false },
  { id: 'done', head: 'done', kind: 'tick', share: 0.6 },
  { id: 'state', head: 'she is', share: 0.7, printed: false },
  { id: 'least', head: 'usual hours, least', unit: 'h', kind: 'figure', printed: false },
  { id: 'most', head: 'usual hours, most', unit: 'h', kind: 'figure', printed: false },
  { id: 'people', head: 'people', kind: 'figure', digits: 0, printed: false },
  { id: 'steps', head: 'steps', printed: false },
  { id: 'tools', head: 'tools', printed: false },
  { id: 'materials', head: 'materials', printed: false },
  { id: 'id', head: 'id', kind: 'label', printed: false },
];

interface Known {
  readonly names: WorkNames;
  readonly numbers: ReadonlyMap<string, number>;
  readonly done: ReadonlyMap<string, string>;
}

const listed = (all: readonly string[]): string | undefined => (all.length === 0 ? undefined : all.join(', '));

const rowOf = ({ names, numbers, done }: Known, phase: PhaseWork, job: Job): ListCell[] => {
  const start = phase.order?.starts.find((one) => one.job === job.id);
  const hands = start?.hands.map((id) => phase.hands.find((hand) => hand.id === id)?.name ?? id) ?? [];
  const after = job.after.flatMap(({ job: id }) => numbers.get(id) ?? []).sort((one, other) => one - other);
  return [
    numbers.get(job.id),
    phase.phase,
    `${jobWords(names, job)}${job.leftOut === undefined ? '' : ` (left out: ${job.leftOut})`}`,
    job.place === undefined ? undefined : thingName(names, job.place),
    start === undefined ? undefined : dayOfPhase(phase, start.day),
    start === undefined || start.hands.length === 0 ? undefined : clockWords(phase.from, start.slot),
    listed(hands),
    job.slots / 2,
    listed(after.map(String)),
    listed(job.takes.map((id) => functionWords[id])),
    done.has(job.id) ? `✓ ${done.get(job.id)}` : undefined,
    job.state,
    job.hoursH.least,
    job.hoursH.most,
    job.people,
    listed(job.steps.map(stepWords)),
    listed(job.tools.map(toolWords)),
    listed(job.materials.map(({ item, count }) => `${count} × ${itemName(names, item)}`)),
    job.id,
  ];
};

/** Every job in the order of the work, with day, hands and what is dark meanwhile; ticked as far as the log has it. */
export const workList = (boat: Boat, plan: Plan, log: BoatLog = emptyLog): ListTable => {
  const work = plan.work ?? { phases: [], leaving: [] };
  const known = { names: workNames(boat, plan), numbers: jobNumbers(work), done: doneJobs(log) };
  const rows = work.phases.flatMap((phase) => phase.jobs.map((job) => rowOf(known, phase, job)));
  const turn = ([number]: ListCell[]): number => (typeof number === 'number' ? number : Number.POSITIVE_INFINITY);
  return {
    id: 'work',
    title: 'Work order',
    says: 'In the order in which the jobs begin. Hours are usual ones, times the pace of who does them; every one can be set.',
    columns,
    rows: rows.sort((one, other) => {
      const [first, second] = [turn(one), turn(other)];
      return first === second ? 0 : first - second;
    }),
    empty: 'There is no work to be done.',
  };
};
