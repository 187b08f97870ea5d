import { type BoatLog, boatLog, emptyLog } from '../core/log/boat-log.ts';
import { readLog } from '../core/log/read-log.ts';
import { readLogText } from '../node/files/log-file.ts';
import { printCount } from '../papers/lists/print-figure.ts';

/** The log beside a boat file, as far as its lines can be read, with how many could not; an empty one where there is none, or the boat was piped in. */
export const logBeside = async (file: string): Promise<{ readonly log: BoatLog; readonly brokenLines: number }> => {
  if (file === '-') return { log: emptyLog, brokenLines: 0 };
  const { entries, broken } = readLog(await readLogText(file));
  return { log: boatLog(entries), brokenLines: broken.length };
};

/** What a person is told of lines of a log that could not be read. */
export const brokenLinesSay = (count: number): string =>
  `${printCount(count, 'line')} of her log cannot be read: damaged, or written by a newer Fairlead. The log is left as it is; all other lines count.`;

/** The same for one boat at a terminal, where broken lines are told of. */
export const logAtTerminal = async (file: string): Promise<BoatLog> => {
  const { log, brokenLines } = await logBeside(file);
  if (brokenLines > 0) process.stderr.write(`${brokenLinesSay(brokenLines)}\n`);
  return log;
};
