import { isOpen } from '../../core/accepted-findings.ts';
import { loadBoat } from '../../node/files/load-boat.ts';
import { picturesBeside } from '../../node/pictures-beside.ts';
import { findingsText } from '../../papers/lists/findings-text.ts';
import { solveAtTerminal } from '../solve-at-terminal.ts';

/** `fairlead check FILE`: the findings; exit code 1 when any is a danger, or a fault that nobody accepted with a reason. */
export const check = async (file: string, { json = false }: { json?: boolean }): Promise<void> => {
  const { boat } = await loadBoat(file);
  const { findings } = await solveAtTerminal(boat, await picturesBeside(file));
  process.stdout.write(json ? `${JSON.stringify(findings, undefined, 2)}\n` : findingsText(boat, findings));
  if (findings.some((finding) => isOpen(finding) && ['danger', 'fault'].includes(finding.level))) process.exitCode = 1;
};
