import fc from 'fast-check';
import type { Boat } from '../../src/core/boat/boat-schema.ts';
import { type EditId, edits } from '../../src/core/boat/edits/index.ts';
import { plausibleEdit } from '../../src/core/boat/edits/plausible-edit.test-helper.ts';
import { applyEdits, type EditCall, redo, undo } from '../../src/core/boat/history.ts';
import { readBoat } from '../../src/core/boat/read-boat.ts';
import { type History, startHistory } from '../../src/core/boat/start-history.ts';
import { UserError } from '../../src/core/boat/user-error.ts';
import { writeBoat } from '../../src/core/boat/write-boat.ts';
import { growValue, type Lot, type Pool } from './grow-value.ts';
import { poolOf } from './mutate-boat.ts';

/** What became of some edits at random. */
export interface EditsTried {
  made: number;
  refused: number;
  planned: number;
  /** what went wrong, with what brings it back */
  readonly faults: string[];
}

// reason: the keys of the record of every edit are the ids of edits
const ids = Object.keys(edits) as EditId[];

/** An edit whose parameters are grown from its schema alone: some of them mean something on this boat, most do not. */
const grownEdit = (pool: Pool, lot: Lot): EditCall => {
  const edit = ids[lot(ids.length)] ?? 'add-place';
  const params = growValue(edits[edit].params, { name: edit, lot, pool });
  // reason: parameters made at random are for the edit itself to check
  return { edit, params } as EditCall;
};

const sketchedEdit = (boat: Boat, lot: Lot): EditCall | undefined =>
  fc.sample(plausibleEdit(boat), { numRuns: 1, seed: lot(2_147_483_647) })[0];

const faultOf = (error: unknown): string => (error instanceof Error ? (error.stack ?? error.message) : String(error));

/** The history after an edit; the same where it is refused, and what is wrong where anything else is thrown. */
const tried = (history: History, call: EditCall): History | string => {
  try {
    return applyEdits(history, [call]);
  } catch (error) {
    if (error instanceof UserError)
      return error.says.length > 4 && error.whatToDo.length > 2 ? history : `says nothing: ${error.text}`;
    return faultOf(error);
  }
};

/** What is wrong with a step: it must go back to the very bytes, forth again, and be read as it is written. */
const faultOfStep = (before: History, after: History): string | undefined => {
  const text = writeBoat(after.boat);
  const back = undo(after);
  if (writeBoat(back.boat) !== writeBoat(before.boat)) return 'undo gives other bytes';
  if (writeBoat(redo(back).boat) !== text) return 'redo gives other bytes';
  return writeBoat(readBoat(text)) === text ? undefined : 'is read otherwise than written';
};

/**
 * Makes edits at random, plausible and not, each on what the one before it left; now and then begins anew. Every so many
 * edits the step is taken back, made again, written and read, and every so many the boat is planned.
 */
export const randomEdits = (
  boat: Boat,
  {
    lot,
    count,
    checkEvery,
    planEvery,
    plan,
  }: { lot: Lot; count: number; checkEvery: number; planEvery: number; plan: (boat: Boat) => void },
): EditsTried => {
  const told: EditsTried = { made: 0, refused: 0, planned: 0, faults: [] };
  let history = startHistory(boat);
  let pool = poolOf(boat);
  for (let turn = 0; turn < count; turn += 1) {
    // a boat that has grown or withered too far is no boat any more
    if (turn % 400 === 399) history = startHistory(boat);
    if (turn % 50 === 0) pool = poolOf(history.boat);
    const call = lot(2) === 0 ? grownEdit(pool, lot) : sketchedEdit(history.boat, lot);
    if (call === undefined) continue;
    const next = tried(history, call);
    const told1 = (fault: string): void =>
      void told.faults.push(`${fault}\n  by ${JSON.stringify(call).slice(0, 600)}`);
    if (typeof next === 'string') {
      told1(next);
      continue;
    }
    if (next === history) {
      told.refused += 1;
      continue;
    }
    told.made += 1;
    try {
      const fault = told.made % checkEvery === 0 ? faultOfStep(history, next) : undefined;
      if (fault !== undefined) told1(fault);
      if (told.made % planEvery === 0) {
        plan(next.boat);
        told.planned += 1;
      }
    } catch (error) {
      told1(faultOf(error));
    }
    history = { ...next, done: next.done.slice(-5) };
  }
  return told;
};
