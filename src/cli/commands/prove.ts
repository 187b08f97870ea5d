import type { Boat } from '../../core/boat/boat-schema.ts';
import type { EditCall } from '../../core/boat/history.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { ProofReport } from '../../core/proof/compare/proof-report.ts';
import { provedReadings } from '../../core/proof/compare/proved-readings.ts';
import { takeOverWatched } from '../../core/proof/compare/take-over-watched.ts';
import { binderPdf } from '../../node/binder-pdf.ts';
import { type LoadedBoat, loadBoat } from '../../node/files/load-boat.ts';
import { writeSet } from '../../node/files/write-set.ts';
import { briefBoat } from '../../papers/binder/brief-boat.ts';
import { proofChapter } from '../../papers/binder/chapters/proof-of-the-bus.ts';
import { printCount } from '../../papers/lists/print-figure.ts';
import { setAlone } from '../../papers/pages/set-binder.ts';
import { proofText } from '../../papers/proof/proof-text.ts';
import { binderWish } from '../binder-at-terminal.ts';
import { changeBoatFile } from '../change-boat-file.ts';
import { printProof } from '../print-proof.ts';
import { solveAtTerminal } from '../solve-at-terminal.ts';
import { today } from '../today.ts';
import { watchRecordings } from '../watch-recordings.ts';

interface ProveOptions {
  readonly json?: boolean;
  readonly out?: string;
  readonly paper?: string;
  readonly keep?: boolean;
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

/** What of a proof comes into the boat file: who the units are, as far as she did not know, and which readings were heard. */
const keepProof = async (
  file: string,
  read: LoadedBoat,
  { plan, report, watched }: Awaited<ReturnType<typeof watchRecordings>> & { readonly plan: Plan },
): Promise<void> => {
  const takenOver = takeOverWatched({ boat: read.boat, plan }, watched);
  const proved = provedReadings(report, today());
  const calls: EditCall[] = [];
  if (takenOver !== undefined) calls.push({ edit: 'take-identities', params: takenOver });
  if (proved !== undefined) calls.push({ edit: 'note-proved', params: proved });
  if (calls.length > 0) await changeBoatFile(file, read, calls);
  const [units, readings] = [takenOver?.units.length ?? 0, proved?.proved.length ?? 0];
  process.stderr.write(
    calls.length === 0
      ? 'Nothing of it is new to the boat file.\n'
      : `Kept in ${file}: who ${printCount(units, 'unit is', 'units are')}, and ${printCount(readings, 'reading')} as proved.\n`,
  );
};

/**
 * `fairlead prove FILE LOG…`: recordings of a boat’s wires held against her plan; `--out` writes the report as JSON, text
 * and pages, `--keep` notes in the boat file what was proved. The exit code is 1 where anything planned is missing or wrong.
 */
export const prove = async (file: string, logs: readonly string[], options: ProveOptions): Promise<void> => {
  const read = await loadBoat(file);
  const { boat } = read;
  const plan = await solveAtTerminal(boat);
  const found = await watchRecordings({ boat, plan }, logs);
  printProof(boat, found.report, options.json ?? false);
  if (options.keep === true) await keepProof(file, read, { ...found, plan });
  if (options.out === undefined) return;
  const written = await writeProof(options.out, boat, found.report, options);
  process.stderr.write(`Written to ${options.out}: ${written.join(', ')}.\n`);
};
