import { apply, create, type Patches } from 'mutative';
import type { Boat } from './boat-schema.ts';
import type { ReadyEdit } from './edits/define-edit.ts';
import { type EditId, type EditParams, edits } from './edits/index.ts';
import { refuseBroken } from './edits/refuse-broken.ts';
import type { History } from './start-history.ts';
import { UserError } from './user-error.ts';

/** One edit asked for, by its id. */
export type EditCall = { [Id in EditId]: { readonly edit: Id; readonly params: EditParams<Id> } }[EditId];

const applyReady = (history: History, ready: readonly ReadyEdit[], title?: string): History => {
  const [boat, forth, back] = create(
    history.boat,
    (draft) => {
      for (const { change } of ready) change(draft);
    },
    { enablePatches: true },
  );
  if (forth.length === 0) return history;
  refuseBroken(boat);
  const says = title ?? ready.map((one) => one.title(history.boat)).join(' ');
  return { boat, done: [...history.done, { title: says, forth, back }], undone: [] };
};

/**
 * Makes one edit; edits taken back before are then gone for good. An edit that changes nothing is no step.
 * Throws UserError where the parameters do not fit the edit or the boat; the history given stays good.
 */
export const applyEdit = <Id extends EditId>(history: History, id: Id, params: EditParams<Id>): History =>
  applyReady(history, [edits[id].ready(params)]);

/**
 * Makes several edits, each on what the one before it left, as one step; all of them or none. The step says `title`, or
 * the sentences of its edits one after another. Throws UserError as `applyEdit` does.
 */
export const applyEdits = (history: History, calls: readonly EditCall[], title?: string): History =>
  applyReady(
    history,
    calls.map(({ edit, params }) => edits[edit].ready(params)),
    title,
  );

/** A boat after a step forth or back. Steps were perhaps kept for weeks, so what they lead to is checked as any edit is. */
const stepped = (boat: Boat, patches: Patches): Boat => {
  let after: Boat;
  try {
    after = apply(boat, patches);
  } catch {
    throw new UserError({
      says: 'This step does not fit the boat, for what was kept of it is damaged.',
      whatToDo: 'Go on from the boat as she is, or restore an earlier state.',
    });
  }
  refuseBroken(after);
  return after;
};

/** Takes the last edit back; with none left the history stays as it is. Throws UserError where the step does not fit. */
export const undo = (history: History): History => {
  const step = history.done.at(-1);
  if (step === undefined) return history;
  return {
    boat: stepped(history.boat, step.back),
    done: history.done.slice(0, -1),
    undone: [...history.undone, step],
  };
};

/** Makes the edit last taken back again; with none left the history stays as it is. */
export const redo = (history: History): History => {
  const step = history.undone.at(-1);
  if (step === undefined) return history;
  return {
    boat: stepped(history.boat, step.forth),
    done: [...history.done, step],
    undone: history.undone.slice(0, -1),
  };
};
