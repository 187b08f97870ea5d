import { UserError } from '../../core/boat/user-error.ts';
import { loadBoat } from '../../node/files/load-boat.ts';
import { picturesBeside } from '../../node/pictures-beside.ts';
import { changeBoatFile } from '../change-boat-file.ts';
import { findingOf } from '../finding-of.ts';
import { solveAtTerminal } from '../solve-at-terminal.ts';

/** `fairlead accept FILE FINDING REASON…`: a finding that is to stay, with the reason, kept in the boat file; a danger is never done with so. */
export const accept = async (file: string, id: string, reason: readonly string[]): Promise<void> => {
  const read = await loadBoat(file);
  const { findings } = await solveAtTerminal(read.boat, await picturesBeside(file));
  const finding = findingOf(findings, id);
  if (finding.level === 'danger')
    throw new UserError({
      says: 'A danger is mended, not accepted.',
      whatToDo: `fairlead cure ${file} "${id}" lists what would mend it.`,
    });
  const params = { finding: finding.id, reason: reason.join(' ') };
  await changeBoatFile(file, read, [{ edit: 'accept-finding', params }]);
  process.stdout.write(`Accepted, and kept in ${file} with the reason.\n`);
};
