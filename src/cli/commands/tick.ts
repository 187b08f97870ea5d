import { jobTickId } from '../../core/work/ticks.ts';
import { loadBoat } from '../../node/files/load-boat.ts';
import { picturesBeside } from '../../node/pictures-beside.ts';
import { jobNumbers } from '../../papers/work/job-numbers.ts';
import { jobWords } from '../../papers/work/job-words.ts';
import { workNames } from '../../papers/work/work-names.ts';
import { fileAsTyped } from '../file-as-typed.ts';
import { logAtTerminal } from '../log-at-terminal.ts';
import { namedOrNumbered } from '../named-or-numbered.ts';
import { solveAtTerminal } from '../solve-at-terminal.ts';
import { workAtTerminal } from '../work-at-terminal.ts';
import { writeInLog } from '../write-in-log.ts';

interface TickOptions {
  readonly by?: string;
  readonly undo?: boolean;
}

/** `fairlead tick FILE JOB…`: jobs that are done, by number or id, written into the log beside the boat file; `--undo` takes the tick off. */
export const tick = async (file: string, jobs: readonly string[], { by, undo = false }: TickOptions): Promise<void> => {
  const { boat } = await loadBoat(file);
  const found = await solveAtTerminal(boat, await picturesBeside(file));
  // numbers are those of the order, which takes its time; an id needs none
  const isNumbered = jobs.some((job) => /^\d+$/.test(job));
  const plan = isNumbered ? await workAtTerminal({ boat, plan: found, log: await logAtTerminal(file) }) : found;
  const work = plan.work ?? { phases: [], leaving: [] };
  const all = work.phases.flatMap((phase) => phase.jobs);
  const ids = all.map(({ id }) => id);
  const list = `fairlead work ${fileAsTyped(file)}`;
  const ticked = jobs.map((job) => namedOrNumbered(job, { ids, numbers: jobNumbers(work), what: 'job', list }));
  await writeInLog(
    file,
    ticked.map((id) => ({ kind: 'tick', of: jobTickId(id), done: !undo, ...(by === undefined ? {} : { by }) })),
  );
  const names = workNames(boat, plan);
  for (const job of all.filter(({ id }) => ticked.includes(id)))
    process.stdout.write(`${undo ? 'Still to do' : 'Done'}: ${jobWords(names, job)}.\n`);
};
