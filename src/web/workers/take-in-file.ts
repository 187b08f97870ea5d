import type { Boat } from '../../core/boat/boat-schema.ts';
import { applyEdits } from '../../core/boat/history.ts';
import { type MergeChoice, mergeBoats } from '../../core/boat/merge/merge-boats.ts';
import { readBoat } from '../../core/boat/read-boat.ts';
import { type History, startHistory } from '../../core/boat/start-history.ts';
import { writeBoat } from '../../core/boat/write-boat.ts';
import { boatChangeWords, type ConflictWords, conflictWords } from '../../papers/lists/boat-change-words.ts';
import type { KeptBoat, KeptFile } from './kept-boat.ts';
import { textHash } from './text-hash.ts';
import { words } from './words.ts';

/** A file that changed elsewhere while this boat changed here, and what only a person can decide between the two. */
export interface FileClash {
  readonly file: KeptFile;
  readonly conflicts: readonly ConflictWords[];
}

/** What became of a boat that met its file again. */
export interface TakenIn {
  readonly history: History;
  /** changes that are in no file yet */
  readonly unsaved: number;
  /** absent where the boat stands on its file as it is now */
  readonly clash?: FileClash;
  readonly notice?: OpeningNotice;
}

/** What is said once when a boat is opened. */
export type OpeningNotice =
  /** changes that had not reached the file were taken up */
  | { readonly kind: 'taken-up'; readonly changes: number }
  /** the file is another than the steps lead to, so they cannot be taken back */
  | { readonly kind: 'steps-gone' }
  /** what this browser had kept could not be read, and is set aside; the text of the boat in it, where it has one */
  | { readonly kind: 'kept-unread'; readonly text?: string };

interface Meeting {
  readonly history: History;
  readonly unsaved: number;
  /** what the file held when the boat here stood on it */
  readonly base: Boat;
  /** what the file holds now */
  readonly file: KeptFile;
  readonly theirs: Boat;
  readonly choices?: Readonly<Partial<Record<string, MergeChoice>>>;
}

/**
 * Takes a file that was changed elsewhere into a boat: as one step that can be undone, put together with what was
 * changed here and has not been saved. Where both changed the same thing otherwise, nothing is done until every conflict
 * has a choice.
 */
export const takeInFile = ({ history, unsaved, base, file, theirs, choices = {} }: Meeting): TakenIn => {
  const ours = history.boat;
  const merge = unsaved === 0 ? { boat: theirs, conflicts: [] } : mergeBoats({ base, ours, theirs, choices });
  if (merge.conflicts.some(({ key }) => choices[key] === undefined)) {
    const conflicts = conflictWords(merge.conflicts, { ours, theirs });
    return { history, unsaved, clash: { file, conflicts } };
  }
  const did = unsaved === 0 ? words.tookIn : words.putTogether;
  const title = `${did} ${boatChangeWords({ before: ours, after: merge.boat })}`.trim();
  const after = applyEdits(history, [{ edit: 'restore-boat', params: { boat: merge.boat } }], title);
  const isTheirs = writeBoat(after.boat) === writeBoat(theirs);
  return { history: after, unsaved: isTheirs ? 0 : unsaved + 1 };
};

/** Takes up what the browser kept of a boat whose file is opened again. `boat` is what the file holds now. */
export const takeUpKept = ({ kept, file, boat }: { kept: KeptBoat; file: KeptFile; boat: Boat }): TakenIn => {
  const steps = { done: kept.done, undone: kept.undone };
  if (kept.text === file.text) return { history: { boat, ...steps }, unsaved: 0 };
  if (kept.unsaved === 0) {
    const gone = kept.done.length + kept.undone.length > 0;
    return { history: startHistory(boat), unsaved: 0, ...(gone ? { notice: { kind: 'steps-gone' } } : {}) };
  }
  const { unsaved } = kept;
  const own = { boat: readBoat(kept.text), ...steps };
  // a save may have been made that the page did not live to hear of
  if (kept.file.text === file.text || kept.passed.includes(textHash(file.text))) {
    return { history: own, unsaved, notice: { kind: 'taken-up', changes: unsaved } };
  }
  return takeInFile({ history: own, unsaved, base: readBoat(kept.file.text), file, theirs: boat });
};
