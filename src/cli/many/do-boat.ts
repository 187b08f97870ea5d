import type { Boat } from '../../core/boat/boat-schema.ts';
import { UserError } from '../../core/boat/user-error.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { loadBoat } from '../../node/files/load-boat.ts';
import { picturesBeside } from '../../node/pictures-beside.ts';
import { givenOutNow } from '../../papers/binder/given-out.ts';
import { boatSummary } from '../../papers/many/boat-summary.ts';
import { binderWish } from '../binder-at-terminal.ts';
import { labelsWish } from '../labels-at-terminal.ts';
import { brokenLinesSay, logBeside } from '../log-at-terminal.ts';
import { solveBoat, unwatched } from '../solve-boat.ts';
import { solveWorkOrder } from '../solve-work-order.ts';
import { wantsMending } from '../wants-mending.ts';
import { writePapers } from '../write-papers.ts';
import type { BoatAnswer, BoatTask, ManyWish } from './boat-task.ts';

/** The papers of one boat, the same that are written of her alone; gives what there is to say of them. */
const papersOf = async (
  { file, folder }: { file: string; folder: string },
  { boat, plan }: { boat: Boat; plan: Plan },
  typed: NonNullable<ManyWish['papers']>,
): Promise<string[]> => {
  const { paper, dateIso } = binderWish(typed);
  const { log, brokenLines } = await logBeside(file);
  const ordered = await solveWorkOrder({ boat, plan, log, watch: unwatched });
  const given = givenOutNow(boat, dateIso);
  await writePapers({ folder, boat, plan: ordered, paper, given, labels: labelsWish(file, typed), log });
  return brokenLines === 0 ? [] : [brokenLinesSay(brokenLines)];
};

const answerOf = async ({ file, folder }: BoatTask, { of, json, papers }: ManyWish): Promise<BoatAnswer> => {
  const { boat } = await loadBoat(file);
  const plan = await solveBoat(boat, unwatched, await picturesBeside(file));
  const notes =
    papers === undefined || folder === undefined ? [] : await papersOf({ file, folder }, { boat, plan }, papers);
  const found = of === 'check' ? { findings: plan.findings } : { plan };
  return {
    summary: boatSummary(boat, plan),
    wantsMending: wantsMending(plan.findings),
    notes,
    ...(json ? { json: JSON.stringify({ file, boat: boat.name, ...found }) } : {}),
  };
};

/** Does what is wanted of one boat. A file that cannot be read, and a fault of the program on this boat, are told and fell nothing else. */
export const doBoat = async (task: BoatTask, wish: ManyWish): Promise<BoatAnswer> => {
  try {
    return await answerOf(task, wish);
  } catch (cause) {
    if (cause instanceof UserError) return { refused: cause.text };
    const says = cause instanceof Error ? cause.message : String(cause);
    return { refused: `This is a fault in the program, not in the file ${task.file}; nothing was changed. (${says})` };
  }
};
