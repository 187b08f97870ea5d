import type { Boat } from '../../core/boat/boat-schema.ts';
import type { ProofReport } from '../../core/proof/compare/proof-report.ts';
import { binderPdf } from '../../node/binder-pdf.ts';
import { loadBoat } from '../../node/files/load-boat.ts';
import { writeSet } from '../../node/files/write-set.ts';
import { briefBoat } from '../../papers/binder/brief-boat.ts';
import { proofChapter } from '../../papers/binder/chapters/proof-of-the-bus.ts';
import { setAlone } from '../../papers/pages/set-binder.ts';
import { proofText } from '../../papers/proof/proof-text.ts';
import { binderWish } from '../binder-at-terminal.ts';
import { printProof } from '../print-proof.ts';
import { solveAtTerminal } from '../solve-at-terminal.ts';
import { watchRecordings } from '../watch-recordings.ts';

interface ProveOptions {
  readonly json?: boolean;
  readonly out?: string;
  readonly paper?: string;
}

const writeProof = async (folder: string, boat: Boat, report: ProofReport, typed: ProveOptions): Promise<string[]> => {
  const { paper } = binderWish({ paper: typed.paper });
  const pages = setAlone({ boat: boat.name, chapters: [proofChapter(briefBoat(boat), report)] }, paper);
  const files: [name: string, content: string | Uint8Array][] = [
    ['proof.json', `${JSON.stringify(report, undefined, 2)}\n`],
    ['proof.txt', proofText(boat, report)],
    ['proof.pdf', await binderPdf(pages)],
  ];
  await writeSet(folder, files);
  return files.map(([name]) => name);
};

/**
 * `fairlead prove FILE LOG…`: recordings of a boat’s wires held against her plan; `--out` writes the report as JSON, text
 * and pages. The exit code is 1 where anything planned is missing or wrong.
 */
export const prove = async (file: string, logs: readonly string[], options: ProveOptions): Promise<void> => {
  const { boat } = await loadBoat(file);
  const plan = await solveAtTerminal(boat);
  const report = await watchRecordings({ boat, plan }, logs);
  printProof(boat, report, options.json ?? false);
  if (options.out === undefined) return;
  const written = await writeProof(options.out, boat, report, options);
  process.stderr.write(`Written to ${options.out}: ${written.join(', ')}.\n`);
};
