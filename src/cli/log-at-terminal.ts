import { type BoatLog, boatLog, emptyLog } from '../core/log/boat-log.ts';
import { readLog } from '../core/log/read-log.ts';
import { readLogText } from '../node/files/log-file.ts';

/** The log beside a boat file, as far as its lines can be read; an empty one where there is none, or the boat was piped in. */
export const logAtTerminal = async (file: string): Promise<BoatLog> => {
  if (file === '-') return emptyLog;
  const { entries, broken } = readLog(await readLogText(file));
  if (broken.length > 0)
    process.stderr.write(`${broken.length} of the lines of her log could not be read and were left out.\n`);
  return boatLog(entries);
};
