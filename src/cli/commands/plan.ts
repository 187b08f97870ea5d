import type { Boat } from '../../core/boat/boat-schema.ts';
import { wiringCount, wiringsOf } from '../../core/joins/proposing/wirings.ts';
import type { WiringEntry } from '../../core/proposal-shape.ts';
import { loadBoat } from '../../node/files/load-boat.ts';
import { picturesBeside } from '../../node/pictures-beside.ts';
import { planText } from '../../papers/lists/plan-text.ts';
import { printCount } from '../../papers/lists/print-figure.ts';
import { wiringsText } from '../../papers/lists/wirings-text.ts';
import { binderWish } from '../binder-at-terminal.ts';
import { giveLabels } from '../give-labels.ts';
import { solveAtTerminal } from '../solve-at-terminal.ts';
import { writePapers } from '../write-papers.ts';

/** Ways to wire the boat, told of on the way to them. */
const comparedAtTerminal = (boat: Boat): WiringEntry[] => {
  const count = wiringCount(boat);
  const found: WiringEntry[] = [];
  for (const wiring of wiringsOf(boat)) {
    found.push(wiring);
    process.stderr.write(`Compared ${found.length} of ${count} ways to wire her.\n`);
  }
  return found;
};

interface PlanOptions {
  readonly out?: string;
  readonly giveLabels?: boolean;
  readonly json?: boolean;
  readonly compare?: boolean;
  readonly paper?: string;
  readonly date?: string;
}

/** `fairlead plan FILE`: computes everything; `--out` writes the papers to a folder, the binder for `--paper` and of `--date`, `--json` prints the plan, `--give-labels` hands out labels first, `--compare` adds what keeping and replacing old kit come to. */
export const plan = async (
  file: string,
  { out, giveLabels: wantsLabels = false, json = false, compare = false, paper, date }: PlanOptions,
): Promise<void> => {
  const binder = binderWish({ paper, date });
  const read = await loadBoat(file);
  const pictures = await picturesBeside(file);
  const started = performance.now();
  const first = await solveAtTerminal(read.boat, pictures);
  const tookMs = Math.round(performance.now() - started);
  const given = wantsLabels ? await giveLabels(file, read, first) : 0;
  if (given > 0) process.stderr.write(`Gave labels to ${printCount(given, 'line')}, kept in ${file}.\n`);
  const { boat } = given > 0 ? await loadBoat(file) : read;
  const planned = given > 0 ? await solveAtTerminal(boat, pictures) : first;
  if (out !== undefined) {
    const written = await writePapers({ folder: out, boat, plan: planned, binder });
    process.stderr.write(`Written to ${out}: ${written.join(', ')}.\n`);
  }
  const wirings = compare ? comparedAtTerminal(boat) : undefined;
  const all = wirings === undefined ? planned : { ...planned, wirings };
  process.stdout.write(json ? `${JSON.stringify(all, undefined, 2)}\n` : planText({ boat, plan: planned }));
  if (!json && wirings !== undefined) process.stdout.write(`\n${wiringsText(boat, wirings)}`);
  process.stderr.write(`Computed in ${tookMs} ms.\n`);
};
