import { wireHer } from '../../core/kit/wire-her.ts';
import { loadBoat } from '../../node/files/load-boat.ts';
import { printCount } from '../../papers/lists/print-figure.ts';
import { changeBoatFile } from '../change-boat-file.ts';
import { solveAtTerminal } from '../solve-at-terminal.ts';

const feeds: ReadonlySet<string> = new Set(['feed-port', 'add-circuit']);

/**
 * `fairlead wire FILE`: what the plan proposes is put into the file as one step: joins that bring what is needed, units
 * with a bus plug on the bus, and a circuit for what comes and has none.
 */
export const wire = async (file: string): Promise<void> => {
  const read = await loadBoat(file);
  const edits = wireHer(read.boat, await solveAtTerminal(read.boat));
  if (edits.length === 0) process.stdout.write('Nothing is left to wire.\n');
  else {
    await changeBoatFile(file, read, edits);
    const fed = edits.filter(({ edit }) => feeds.has(edit)).length;
    process.stdout.write(
      `Wired her: ${printCount(edits.length - fed, 'join')} and ${printCount(fed, 'circuit')}, kept in ${file}.\n`,
    );
  }
  process.stderr.write(`Next: fairlead check ${file}\n`);
};
