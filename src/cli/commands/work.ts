import { UserError } from '../../core/boat/user-error.ts';
import { loadBoat } from '../../node/files/load-boat.ts';
import { picturesBeside } from '../../node/pictures-beside.ts';
import { jobsText } from '../../papers/work/jobs-text.ts';
import { changeBoatFile } from '../change-boat-file.ts';
import { logAtTerminal } from '../log-at-terminal.ts';
import { solveAtTerminal } from '../solve-at-terminal.ts';
import { typedDay } from '../typed-day.ts';
import { workAtTerminal } from '../work-at-terminal.ts';

interface WorkOptions {
  readonly starts?: string;
  readonly phase?: number;
}

/** `fairlead work FILE`: the jobs day by day, with who does them and what is done; `--starts` says on which day a phase begins. */
export const work = async (file: string, { starts, phase }: WorkOptions): Promise<void> => {
  let read = await loadBoat(file);
  if (starts === undefined && phase !== undefined)
    throw new UserError({ says: '--phase says which phase begins.', whatToDo: 'Add --starts with its first day.' });
  if (starts !== undefined) {
    const starting = [{ phase: phase ?? 1, on: typedDay(starts, '--starts') }];
    read = await changeBoatFile(file, read, [{ edit: 'set-work', params: { starts: starting } }]);
  }
  const plan = await solveAtTerminal(read.boat, await picturesBeside(file));
  const log = await logAtTerminal(file);
  process.stdout.write(jobsText(read.boat, await workAtTerminal({ boat: read.boat, plan, log }), log));
};
