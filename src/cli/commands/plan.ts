import type { Boat } from '../../core/boat/boat-schema.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { wiringCount, wiringsOf } from '../../core/joins/proposing/wirings.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { testedOf } from '../../core/proof/dock/tested.ts';
import type { WiringEntry } from '../../core/proposal-shape.ts';
import { doneJobs } from '../../core/work/ticks.ts';
import { loadBoat } from '../../node/files/load-boat.ts';
import { picturesBeside } from '../../node/pictures-beside.ts';
import { type GivenOut, givenOutNow } from '../../papers/binder/given-out.ts';
import { planText } from '../../papers/lists/plan-text.ts';
import { printCount } from '../../papers/lists/print-figure.ts';
import { wiringsText } from '../../papers/lists/wirings-text.ts';
import { binderWish, writeBinder } from '../binder-at-terminal.ts';
import { changeBoatFile } from '../change-boat-file.ts';
import { fileAsTyped } from '../file-as-typed.ts';
import { type LabelsTyped, labelsWish } from '../labels-at-terminal.ts';
import { logAtTerminal } from '../log-at-terminal.ts';
import { isOneBoat } from '../many/boats-asked-for.ts';
import { type ManyTyped, manyAtTerminal } from '../many/many-at-terminal.ts';
import { issueEdit, oldRevision } from '../revisions-at-terminal.ts';
import { solveAtTerminal } from '../solve-at-terminal.ts';
import { today } from '../today.ts';
import { workAtTerminal } from '../work-at-terminal.ts';
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

interface PlanOptions extends LabelsTyped, ManyTyped {
  readonly giveLabels?: boolean;
  readonly json?: boolean;
  readonly compare?: boolean;
  readonly paper?: string;
  readonly binder?: string;
  readonly date?: string;
  readonly issue?: string;
  readonly by?: string;
  readonly revision?: string;
}

interface Planned {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly given: GivenOut;
}

/** The boat as she stands, planned; labels and a revision given out first where they are asked for, and kept in her file. */
const plannedNow = async (file: string, { giveLabels = false, date, issue, by }: PlanOptions): Promise<Planned> => {
  let read = await loadBoat(file);
  const pictures = await picturesBeside(file);
  let planned = await solveAtTerminal(read.boat, pictures);
  const bare = planned.lines.filter(({ label }) => label === undefined).map(({ id }) => id);
  if (giveLabels && bare.length > 0) {
    read = await changeBoatFile(file, read, [{ edit: 'give-labels', params: { lines: bare } }]);
    process.stderr.write(`Gave labels to ${printCount(bare.length, 'line')}, kept in ${file}.\n`);
    planned = await solveAtTerminal(read.boat, pictures);
  }
  if (issue !== undefined) {
    read = await changeBoatFile(file, read, [issueEdit(read.boat, { says: issue, by, on: date ?? today() })]);
    process.stderr.write(`Gave out revision ${read.boat.revisions?.at(-1)?.mark ?? ''}, kept in ${file}.\n`);
  }
  return { boat: read.boat, plan: planned, given: givenOutNow(read.boat, date) };
};

/** The boat as she stood when a revision was given out, planned anew; what was bought or fitted by then is pinned in her file. */
const plannedThen = async (file: string, mark: string): Promise<Planned> => {
  const { boat, given } = oldRevision((await loadBoat(file)).boat, mark);
  return { boat, given, plan: await solveAtTerminal(boat, await picturesBeside(file)) };
};

/** What was given out stays as it was: nothing is handed out while going back to it. */
const refuseBoth = ({ revision, issue, giveLabels, date }: PlanOptions): void => {
  const other = issue !== undefined ? '--issue' : giveLabels === true ? '--give-labels' : '--date';
  if (revision === undefined || (issue === undefined && giveLabels !== true && date === undefined)) return;
  throw new UserError({
    says: `A revision is read as it was given out, and ${other} would change it.`,
    whatToDo: `Use --revision without ${other}.`,
  });
};

/** What is kept in one boat file, or written to one file, is asked for of one boat. */
const refuseForMany = ({ giveLabels, issue, by, revision, binder, compare, labelsFrom }: PlanOptions): void => {
  const [asked] = Object.entries({
    '--give-labels': giveLabels,
    '--issue': issue,
    '--by': by,
    '--revision': revision,
    '--binder': binder,
    '--compare': compare,
    '--labels-from': labelsFrom,
  }).flatMap(([option, value]) => (value === undefined ? [] : [option]));
  if (asked === undefined) return;
  throw new UserError({
    says: `${asked} is for one boat, and several were named.`,
    whatToDo: `Name one boat file with ${asked}.`,
  });
};

/** Every boat of a folder, or every one named, each with her papers where a folder is given for them. */
const planMany = async (files: readonly string[], options: PlanOptions): Promise<void> => {
  refuseForMany(options);
  const { out, json = false, paper, date, labels, labelCopies, address } = options;
  const papers = {
    ...(paper === undefined ? {} : { paper }),
    ...(date === undefined ? {} : { date }),
    labels,
    labelCopies,
    address,
  };
  // what was typed wrong is told once, before any boat is begun
  binderWish(papers);
  labelsWish('', papers);
  await manyAtTerminal(files, { of: 'plan', json, ...(out === undefined ? {} : { papers }) }, options);
};

/**
 * `fairlead plan FILE`: computes everything; of a folder or of several files a table, and with `--out` a folder of papers for each; `--out` writes the papers to a folder, the binder for `--paper` and of `--date`, `--binder` the binder alone,
 * `--json` prints the plan, `--give-labels` and `--issue` hand out labels and a revision first, `--revision` goes back to one,
 * `--labels` and what goes with it say how labels are printed, `--compare` adds what keeping and replacing old kit come to.
 */
export const plan = async (files: readonly string[], options: PlanOptions): Promise<void> => {
  if (!(await isOneBoat(files))) return planMany(files, options);
  const [file = ''] = files;
  const { out, json = false, compare = false, revision } = options;
  refuseBoth(options);
  const { paper } = binderWish(options);
  const labels = labelsWish(file, options);
  const started = performance.now();
  const {
    boat,
    plan: found,
    given,
  } = await (revision === undefined ? plannedNow(file, options) : plannedThen(file, revision));
  const log = await logAtTerminal(file);
  // what is printed as JSON is what any program plans in a moment; papers are worth the wait for an order
  const isJsonOnly = json && out === undefined && options.binder === undefined;
  const planned = isJsonOnly ? found : await workAtTerminal({ boat, plan: found, log });
  const tookMs = Math.round(performance.now() - started);
  if (out !== undefined) {
    const written = await writePapers({ folder: out, boat, plan: planned, paper, given, labels, log });
    process.stderr.write(`Written to ${out}: ${written.join(', ')}.\n`);
  }
  if (options.binder !== undefined) {
    await writeBinder(options.binder, { boat, plan: planned, paper, log, ...given });
    process.stderr.write(`Written to ${options.binder}.\n`);
  }
  const wirings = compare ? comparedAtTerminal(boat) : undefined;
  const all = wirings === undefined ? found : { ...found, wirings };
  const [tested, done] = [testedOf(planned.tests, log), doneJobs(log)];
  process.stdout.write(
    json
      ? `${JSON.stringify(all, undefined, 2)}\n`
      : planText({ boat, plan: planned, tested, done, file: fileAsTyped(file) }),
  );
  if (!json && wirings !== undefined) process.stdout.write(`\n${wiringsText(boat, wirings)}`);
  process.stderr.write(`Computed in ${tookMs} ms.\n`);
};
