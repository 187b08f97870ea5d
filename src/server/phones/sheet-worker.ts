import { parentPort } from 'node:worker_threads';
import { solvedLayouts } from '../../core/backbone/solved-layouts.ts';
import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { readBoat } from '../../core/boat/read-boat.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { wiredBoat } from '../../core/joins/wired-boat.ts';
import { plan } from '../../core/plan.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { WorkState } from '../../core/work/plan-phase-work.ts';
import { workParts } from '../../core/work/plan-work.ts';
import { searchWork } from '../../core/work/search-work.ts';
import type { PlanWork } from '../../core/work-shape.ts';
import { type PhoneSheet, phoneSheet } from '../../papers/phone/phone-sheet.ts';
import { type Answer, says } from '../answer.ts';
import type { SheetAsked } from './sheet-asked.ts';

/** The sheet of that boat as JSON, or why there is none. */
export type SheetAnswer = { readonly sheet: string } | { readonly refusal: Answer };

/** The order the app and the terminal come to as well, where what is done stays and the rest goes on from today. */
const workOf = (boat: Boat, planned: Plan, state: WorkState): PlanWork | undefined => {
  let found = planned.work;
  if (found === undefined) return undefined;
  const index = indexBoat(wiredBoat(boat).boat);
  for (const work of searchWork({ ...workParts({ index, plan: planned }), state })) found = work;
  return found;
};

/** The boat that was asked for last: what is done changes all day while her file stays. */
let last: { readonly text: string; readonly boat: Boat; readonly planned: Plan } | undefined;

const plannedOf = (text: string): { readonly boat: Boat; readonly planned: Plan } => {
  if (last?.text === text) return last;
  const boat = readBoat(text);
  last = { text, boat, planned: plan(boat, solvedLayouts(boat)) };
  return last;
};

const sheetOf = ({ text, done, today }: SheetAsked): PhoneSheet => {
  const { boat, planned } = plannedOf(text);
  const state = { done: new Map(done), today };
  const work = workOf(boat, planned, state);
  return phoneSheet(boat, { ...planned, ...(work === undefined ? {} : { work }) }, new Set(state.done.keys()));
};

const answerTo = (asked: SheetAsked): SheetAnswer => {
  try {
    return { sheet: JSON.stringify(sheetOf(asked)) };
  } catch (error) {
    if (!(error instanceof UserError)) throw error;
    return { refusal: says(422, 'The boat file on the laptop cannot be read.', 'Open the boat there to see why.') };
  }
};

parentPort?.on('message', (asked: SheetAsked) => parentPort?.postMessage(answerTo(asked)));
