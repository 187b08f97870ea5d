import { parentPort } from 'node:worker_threads';
import { fullWork } from '../../core/backbone/full-work.ts';
import { layoutProblems } from '../../core/backbone/layout-problems.ts';
import type { Layout } from '../../core/backbone/problem.ts';
import { solveLayout } from '../../core/backbone/solve-layout.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { readBoat } from '../../core/boat/read-boat.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { plan } from '../../core/plan.ts';
import { phoneSheet } from '../../papers/phone/phone-sheet.ts';
import { type Answer, says } from '../answer.ts';

/** What the thread is asked: the text of a boat file. */
export interface SheetQuestion {
  readonly text: string;
}

/** The sheet of that boat as JSON, or why there is none. */
export type SheetAnswer = { readonly sheet: string } | { readonly refusal: Answer };

/** The layouts the app and the terminal come to as well. */
const layoutsOf = (boat: Boat): ReadonlyMap<string, Layout> => {
  const layouts = new Map<string, Layout>();
  for (const problem of layoutProblems(boat))
    for (const layout of solveLayout(problem, fullWork)) layouts.set(problem.hash, layout);
  return layouts;
};

const answerTo = ({ text }: SheetQuestion): SheetAnswer => {
  try {
    const boat = readBoat(text);
    return { sheet: JSON.stringify(phoneSheet(boat, plan(boat, layoutsOf(boat)))) };
  } catch (error) {
    if (!(error instanceof UserError)) throw error;
    return { refusal: says(422, 'The boat file on the laptop cannot be read.', 'Open the boat there to see why.') };
  }
};

parentPort?.on('message', (question: SheetQuestion) => parentPort?.postMessage(answerTo(question)));
