import { loadBoat } from '../../node/files/load-boat.ts';
import { findingsText } from '../../papers/lists/findings-text.ts';
import { solveAtTerminal } from '../solve-at-terminal.ts';

/** `fairlead check FILE`: the findings; exit code 1 when any is a danger or a fault. */
export const check = async (file: string, { json = false }: { json?: boolean }): Promise<void> => {
  const { boat } = await loadBoat(file);
  const { findings } = await solveAtTerminal(boat);
  process.stdout.write(json ? `${JSON.stringify(findings, undefined, 2)}\n` : findingsText(boat, findings));
  if (findings.some((finding) => finding.level === 'danger' || finding.level === 'fault')) process.exitCode = 1;
};
