import type { Boat } from '../../core/boat/boat-schema.ts';
import { edits } from '../../core/boat/edits/index.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { writeBoat } from '../../core/boat/write-boat.ts';
import { heardEdit } from '../../core/kit/heard-edit.ts';
import { plan } from '../../core/plan.ts';
import type { ReaderCounts } from '../../core/proof/readers/recording-reader-shape.ts';
import { draftBoat } from '../../core/proof/survey/draft-boat.ts';
import { maskedReport } from '../../core/proof/survey/masked-report.ts';
import { startSurvey } from '../../core/proof/survey/survey.ts';
import type { SurveyReport } from '../../core/proof/survey/survey-report.ts';
import { surveyText } from '../../core/proof/survey/survey-text.ts';
import { boatFromPattern } from '../../core/starting/boat-from-pattern.ts';
import { patternOf } from '../../core/starting/pattern-of.ts';
import { loadBoat } from '../../node/files/load-boat.ts';
import { readInto } from '../read-into.ts';
import { saveNewBoat } from '../save-new-boat.ts';
import { typedLength } from '../typed-length.ts';

/** Reads the recordings one after the other, chunk by chunk, so that their size does not matter. */
const surveyOf = async (paths: readonly string[]): Promise<SurveyReport> => {
  const survey = startSurvey();
  const read: ReaderCounts[] = [];
  for (const path of paths) read.push(await readInto(path, survey));
  return survey.report(read);
};

interface SurveyOptions {
  readonly out?: string;
  readonly into?: string;
  readonly pattern?: string;
  readonly length?: string;
  readonly json?: boolean;
}

/** The boat that the units heard come aboard of; undefined where they are drafted on a stand-in. */
const boatFor = async ({ into, pattern, length }: SurveyOptions): Promise<Boat | undefined> => {
  if (into !== undefined) return (await loadBoat(into)).boat;
  if (pattern === undefined) return undefined;
  const lengthM = typedLength(length, '--length');
  return boatFromPattern({
    pattern: patternOf(pattern).id,
    name: 'Draft from a recording',
    ...(lengthM === undefined ? {} : { lengthM }),
  });
};

/** A line of sentences does not say which unit talks: nothing can be drafted from it. */
const noUnits = new UserError({
  says: 'No unit of a bus was heard, so there is nothing to draft a boat from.',
  whatToDo: 'Record the bus with everything on it switched on; old talkers of a 0183 line are entered by hand.',
});

const nextSays = 'Next: the same with --out new.boat.json; with --into FILE for a boat you have.\n';
const notPutAboard = 'Nothing was put aboard: --out says into which file the boat goes with it.\n';

/** The boat with what was heard aboard, and how that is told. */
const drafted = (report: SurveyReport, boat: Boat | undefined): { boat: Boat; says: string } => {
  if (boat === undefined) return { boat: draftBoat(report), says: 'A boat file drafted from it is in' };
  // Whose sender is whose needs her messages and numbers, not the best of all layouts.
  const { params, takenOver, added, known, unsure } = heardEdit(boat, report, plan(boat, new Map()));
  const named = takenOver === undefined ? boat : edits['take-identities'].apply(boat, takenOver);
  const told = takenOver?.units.length ?? 0;
  const twins = unsure === 0 ? '' : `, ${unsure} not to be told from their like`;
  return {
    boat: params === undefined ? named : edits['add-heard'].apply(named, params),
    says: `${added} units put aboard, ${known} known already, ${told} of them told more of (NAME, numbers, intervals)${twins}; nothing in the file was overwritten. The boat file is in`,
  };
};

/**
 * `fairlead survey LOG…`: what is on a recorded bus; `--out` writes a boat file drafted from it, on a hull pattern with
 * `--pattern`, or with what was heard put aboard the boat of `--into`, whose own file is left as it is.
 */
export const survey = async (logs: readonly string[], options: SurveyOptions): Promise<void> => {
  const { out, into, json = false } = options;
  const boat = await boatFor(options);
  const report = await surveyOf(logs);
  process.stdout.write(json ? `${maskedReport(report)}\n` : surveyText(report));
  if (out === undefined) {
    if (!json) process.stderr.write(into === undefined ? nextSays : notPutAboard);
    return;
  }
  if (report.senders.length === 0) throw noUnits;
  const draft = drafted(report, boat);
  await saveNewBoat(out, writeBoat(draft.boat));
  process.stderr.write(`${draft.says} ${out}. Next: fairlead plan ${out}\n`);
};
