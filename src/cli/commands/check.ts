import { loadBoat } from '../../node/files/load-boat.ts';
import { picturesBeside } from '../../node/pictures-beside.ts';
import { findingsText } from '../../papers/lists/findings-text.ts';
import { isOneBoat } from '../many/boats-asked-for.ts';
import { type ManyTyped, manyAtTerminal } from '../many/many-at-terminal.ts';
import { solveAtTerminal } from '../solve-at-terminal.ts';
import { wantsMending } from '../wants-mending.ts';

interface CheckOptions extends Omit<ManyTyped, 'out'> {
  readonly json?: boolean;
}

/**
 * `fairlead check FILE`: the findings; of a folder or of several files a table. The exit code is 1 when any finding is a
 * danger, or a fault that nobody accepted with a reason.
 */
export const check = async (files: readonly string[], { json = false, ...many }: CheckOptions): Promise<void> => {
  if (!(await isOneBoat(files))) return manyAtTerminal(files, { of: 'check', json }, many);
  const [file = ''] = files;
  const { boat } = await loadBoat(file);
  const { findings } = await solveAtTerminal(boat, await picturesBeside(file));
  process.stdout.write(json ? `${JSON.stringify(findings, undefined, 2)}\n` : findingsText(boat, findings));
  if (wantsMending(findings)) process.exitCode = 1;
};
