import { apply, create, type Patches } from 'mutative';
import type { Boat } from './boat-schema.ts';
import { type EditId, type EditParams, edits } from './edits/index.ts';
import { refuseBroken } from './edits/refuse-broken.ts';

/** One edit that was made, with what leads forth and back. */
interface Step {
  /** what it did, as a sentence */
  readonly title: string;
  readonly forth: Patches;
  readonly back: Patches;
}

/** A boat with the edits that led to it and those that were taken back; the last of each is the next to go. */
export interface History {
  readonly boat: Boat;
  readonly done: readonly Step[];
  readonly undone: readonly Step[];
}

/** A history without edits. */
export const startHistory = (boat: Boat): History => ({ boat, done: [], undone: [] });

/**
 * Makes one edit; edits taken back before are then gone for good. An edit that changes nothing is no step.
 * Throws UserError where the parameters do not fit the edit or the boat; the history given stays good.
 */
export const applyEdit = <Id extends EditId>(history: History, id: Id, params: EditParams<Id>): History => {
  const { title, change } = edits[id].ready(params);
  const [boat, forth, back] = create(history.boat, (draft) => change(draft), { enablePatches: true });
  if (forth.length === 0) return history;
  refuseBroken(boat);
  return { boat, done: [...history.done, { title, forth, back }], undone: [] };
};

/** Takes the last edit back; with none left the history stays as it is. */
export const undo = (history: History): History => {
  const step = history.done.at(-1);
  if (step === undefined) return history;
  return {
    boat: apply(history.boat, step.back),
    done: history.done.slice(0, -1),
    undone: [...history.undone, step],
  };
};

/** Makes the edit last taken back again; with none left the history stays as it is. */
export const redo = (history: History): History => {
  const step = history.undone.at(-1);
  if (step === undefined) return history;
  return {
    boat: apply(history.boat, step.forth),
    done: [...history.done, step],
    undone: history.undone.slice(0, -1),
  };
};
