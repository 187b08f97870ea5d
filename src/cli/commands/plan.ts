import { loadBoat } from '../../node/files/load-boat.ts';
import { planText } from '../../papers/lists/plan-text.ts';
import { solveAtTerminal } from '../solve-at-terminal.ts';
import { writePapers } from '../write-papers.ts';

/** `fairlead plan FILE`: computes everything; `--out` writes the papers to a folder, `--json` prints the plan. */
export const plan = async (file: string, { out, json = false }: { out?: string; json?: boolean }): Promise<void> => {
  const { boat } = await loadBoat(file);
  const started = performance.now();
  const planned = await solveAtTerminal(boat);
  const tookMs = Math.round(performance.now() - started);
  if (out !== undefined) {
    const written = await writePapers({ folder: out, boat, plan: planned });
    process.stderr.write(`Written to ${out}: ${written.join(', ')}.\n`);
  }
  process.stdout.write(json ? `${JSON.stringify(planned, undefined, 2)}\n` : planText({ boat, plan: planned }));
  process.stderr.write(`Computed in ${tookMs} ms.\n`);
};
