/** Where a boat is saved to: a file of the folder, or nowhere, when it was opened from a file of this machine by hand. */
export interface SaveTarget {
  /** revision at which the boat was opened, so that one boat's text never lands in the file of another */
  readonly opened: number;
  readonly text: string;
  /** id and tag of the folder's file as it was read; absent where there is none */
  readonly file?: { readonly id: string; readonly tag: string };
}

/** What became of one attempt to save. */
export type SaveOutcome =
  | { readonly kind: 'saved'; readonly tag: string }
  /** the file is no longer what was read, or no longer there */
  | { readonly kind: 'changed'; readonly says: string }
  | { readonly kind: 'failed'; readonly says: string };

/** How a boat stands with its file. */
export type SaveState =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'page'; readonly edited: boolean }
  | { readonly kind: 'saved' }
  | { readonly kind: 'saving' }
  | { readonly kind: 'changed'; readonly says: string }
  | { readonly kind: 'failed'; readonly says: string };

/** Saves the open boat a moment after each change, one save at a time. */
export interface BoatSaver {
  readonly state: () => SaveState;
  readonly subscribe: (listener: () => void) => () => void;
  /** takes up another boat; a save that waits for the one before is made at once */
  readonly open: (target: SaveTarget) => void;
  /** the text of the boat as it is now */
  readonly offer: (opened: number, text: string) => void;
  /** lets the boat go; a save that waits is made at once */
  readonly close: () => void;
  /** saves now: what waits, or again what failed */
  readonly saveNow: () => void;
  /** takes the boat for saved, because it was put elsewhere under another name */
  readonly settle: () => void;
  /** true while leaving the page would lose something */
  readonly isUnsaved: () => boolean;
}

/** What a saver needs from the page it is on. */
export interface SaverTools {
  readonly put: (file: { id: string; tag: string }, text: string) => Promise<SaveOutcome>;
  /** runs something after a moment; gives what calls it off */
  readonly later: (run: () => void) => () => void;
}

interface Held {
  readonly opened: number;
  readonly file: { readonly id: string; tag: string } | undefined;
  saved: string;
  wanted: string;
  isUnderWay: boolean;
  trouble?: Exclude<SaveOutcome, { kind: 'saved' }> | undefined;
}

const stateOf = (held: Held | undefined): SaveState => {
  if (held === undefined) return { kind: 'nothing' };
  const edited = held.wanted !== held.saved;
  if (held.file === undefined) return { kind: 'page', edited };
  if (held.trouble !== undefined) return held.trouble;
  return { kind: edited || held.isUnderWay ? 'saving' : 'saved' };
};

const isSame = (a: SaveState, b: SaveState): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Makes a saver with no boat. */
export const boatSaver = ({ put, later }: SaverTools): BoatSaver => {
  let held: Held | undefined;
  let state = stateOf(held);
  let callOff = (): void => undefined;
  const listeners = new Set<() => void>();

  const tell = (): void => {
    const next = stateOf(held);
    if (isSame(state, next)) return;
    state = next;
    for (const listener of listeners) listener();
  };

  const save = async (of: Held): Promise<void> => {
    // where the file changed outside, only a person can say what is to become of it
    if (of.file === undefined || of.isUnderWay || of.wanted === of.saved || of.trouble?.kind === 'changed') return;
    const text = of.wanted;
    of.isUnderWay = true;
    of.trouble = undefined;
    tell();
    const outcome = await put(of.file, text);
    of.isUnderWay = false;
    if (outcome.kind === 'saved') {
      of.file.tag = outcome.tag;
      of.saved = text;
    } else of.trouble = outcome;
    tell();
    if (outcome.kind === 'saved' && of.wanted !== of.saved) await save(of);
  };

  const saveNow = (): void => {
    callOff();
    if (held !== undefined) void save(held);
  };

  return {
    state: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    open: ({ opened, text, file }) => {
      saveNow();
      held = {
        opened,
        file: file === undefined ? undefined : { ...file },
        saved: text,
        wanted: text,
        isUnderWay: false,
      };
      tell();
    },
    offer: (opened, text) => {
      if (held?.opened !== opened || held.wanted === text) return;
      held.wanted = text;
      callOff();
      callOff = later(saveNow);
      tell();
    },
    close: () => {
      saveNow();
      held = undefined;
      tell();
    },
    saveNow,
    settle: () => {
      callOff();
      if (held === undefined) return;
      held.saved = held.wanted;
      held.trouble = undefined;
      tell();
    },
    isUnsaved: () => held !== undefined && (held.wanted !== held.saved || held.isUnderWay),
  };
};
