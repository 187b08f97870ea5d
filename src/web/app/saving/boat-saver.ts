import type { SaveOutcome } from '../../../core/boat-store-shape.ts';

/** Where a boat is saved to: a file of the folder, or nowhere, when it was opened from a file of this machine by hand. */
export interface SaveTarget {
  /** revision at which the boat was opened, so that one boat's text never lands in the file of another */
  readonly opened: number;
  readonly text: string;
  /** id and tag of the folder's file as it was read; absent where there is none */
  readonly file?: { readonly id: string; readonly tag: string };
}

/** A text that has reached its file, and the turn of the boat it was. */
export interface Saved {
  readonly opened: number;
  readonly tag: string;
  readonly text: string;
  readonly turn: number;
}

/** How a boat stands with its file; `isKept` where this browser keeps what is not saved, whatever happens to the page. */
export type SaveState =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'page'; readonly edited: boolean }
  /** `atMs` is when it was saved; absent where it was only read */
  | { readonly kind: 'saved'; readonly id: string; readonly atMs?: number; readonly isAway: boolean }
  | { readonly kind: 'saving' }
  /** a person must choose between the boat here and the file */
  | { readonly kind: 'clash'; readonly isKept: boolean }
  | { readonly kind: 'changed'; readonly says: string; readonly isKept: boolean }
  | { readonly kind: 'failed'; readonly says: string; readonly isKept: boolean };

/** The file a boat is saved to, as this page knows it. */
export interface SavedFile {
  readonly opened: number;
  readonly id: string;
  readonly tag: string;
  readonly isBusy: boolean;
}

/** Saves the open boat a moment after each change, one save at a time, and again and again where that fails. */
export interface BoatSaver {
  readonly state: () => SaveState;
  readonly subscribe: (listener: () => void) => () => void;
  /** takes up another boat; a save that waits for the one before is made at once */
  readonly open: (target: SaveTarget) => void;
  /** the text of the boat as it is now; `turn` counts its changes, `isKept` where this browser keeps it */
  readonly offer: (opened: number, text: string, how?: { readonly turn: number; readonly isKept: boolean }) => void;
  /** saves nothing until the file as it is now is taken in; `isClash` where a person must choose first */
  readonly hold: (opened: number, isClash: boolean) => void;
  /** the file holds something else now, which is in the boat already */
  readonly rebase: (opened: number, file: { readonly tag: string; readonly text: string }) => void;
  /** whether the server answers; when it is back, what waits is saved */
  readonly noteServer: (isAway: boolean) => void;
  readonly file: () => SavedFile | undefined;
  /** lets the boat go; a save that waits is made at once */
  readonly close: () => void;
  /** saves now: what waits, or again what failed */
  readonly saveNow: () => void;
  /** saves now, and comes back once that is done or has failed */
  readonly finish: () => Promise<void>;
  /** takes the boat for saved, because it was put elsewhere under another name */
  readonly settle: () => void;
  /** true while the boat is in no file */
  readonly isUnsaved: () => boolean;
  /** true while leaving the page would lose something */
  readonly isAtRisk: () => boolean;
}

/** What a saver needs from the page it is on. */
export interface SaverTools {
  readonly put: (file: { id: string; tag: string }, text: string) => Promise<SaveOutcome>;
  /** runs something after a moment, a longer one after each try that failed; gives what calls it off */
  readonly later: (run: () => void, triesFailed: number) => () => void;
  readonly nowMs?: () => number;
  readonly onSaved?: (saved: Saved) => void;
}

interface Held {
  readonly opened: number;
  readonly file: { readonly id: string; tag: string } | undefined;
  saved: string;
  wanted: string;
  turn: number;
  isKept: boolean;
  isUnderWay: boolean;
  triesFailed: number;
  savedAtMs?: number;
  /** what keeps it from being saved */
  trouble?: Exclude<SaveOutcome, { kind: 'saved' }> | { readonly kind: 'clash' } | undefined;
}

const stateOf = (held: Held | undefined, isAway: boolean): SaveState => {
  if (held === undefined) return { kind: 'nothing' };
  const { file, wanted, saved, isKept, trouble, savedAtMs } = held;
  const edited = wanted !== saved;
  if (file === undefined) return { kind: 'page', edited };
  if (trouble !== undefined) return { ...trouble, isKept };
  if (edited || held.isUnderWay) return { kind: 'saving' };
  return { kind: 'saved', id: file.id, isAway, ...(savedAtMs === undefined ? {} : { atMs: savedAtMs }) };
};

const isSame = (a: SaveState, b: SaveState): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Where the file changed outside, only a person or a merge can say what is to become of it. */
const mayNotSave = ({ file, isUnderWay, wanted, saved, trouble }: Held): boolean =>
  file === undefined || isUnderWay || wanted === saved || trouble?.kind === 'changed' || trouble?.kind === 'clash';

/** Makes a saver with no boat. */
export const boatSaver = ({ put, later, nowMs = () => Date.now(), onSaved }: SaverTools): BoatSaver => {
  let held: Held | undefined;
  let isAway = false;
  let state = stateOf(held, isAway);
  let callOff = (): void => undefined;
  const listeners = new Set<() => void>();

  const tell = (): void => {
    const next = stateOf(held, isAway);
    if (isSame(state, next)) return;
    state = next;
    for (const listener of listeners) listener();
  };

  const takeOutcome = (of: Held, outcome: SaveOutcome, { text, turn }: { text: string; turn: number }): void => {
    if (of.file === undefined) return;
    if (outcome.kind === 'saved') {
      of.file.tag = outcome.tag;
      of.saved = text;
      of.savedAtMs = nowMs();
      of.triesFailed = 0;
      onSaved?.({ opened: of.opened, tag: outcome.tag, text, turn });
      return;
    }
    of.trouble = outcome;
    if (outcome.kind !== 'failed' || of !== held) return;
    of.triesFailed += 1;
    callOff();
    callOff = later(saveNow, of.triesFailed);
  };

  const save = async (of: Held): Promise<void> => {
    if (of.file === undefined || mayNotSave(of)) return;
    const { wanted: text, turn } = of;
    of.isUnderWay = true;
    of.trouble = undefined;
    tell();
    const outcome = await put(of.file, text);
    of.isUnderWay = false;
    takeOutcome(of, outcome, { text, turn });
    tell();
    if (outcome.kind === 'saved' && of.wanted !== of.saved) await save(of);
  };

  const saveNow = (): void => {
    callOff();
    if (held !== undefined) void save(held);
  };

  const ofOpened = (opened: number): Held | undefined => (held?.opened === opened ? held : undefined);

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
        turn: 0,
        isKept: false,
        isUnderWay: false,
        triesFailed: 0,
      };
      tell();
    },
    offer: (opened, text, { turn, isKept } = { turn: 0, isKept: false }) => {
      const of = ofOpened(opened);
      if (of === undefined) return;
      Object.assign(of, { turn, isKept });
      if (of.wanted !== text) {
        of.wanted = text;
        callOff();
        callOff = later(saveNow, 0);
      }
      tell();
    },
    hold: (opened, isClash) => {
      const of = ofOpened(opened);
      if (of !== undefined) of.trouble = isClash ? { kind: 'clash' } : { kind: 'changed', says: '' };
      tell();
    },
    rebase: (opened, { tag, text }) => {
      const of = ofOpened(opened);
      if (of?.file === undefined) return;
      of.file.tag = tag;
      of.saved = text;
      of.trouble = undefined;
      // what is in the boat and not in the file is saved with the next text that is offered, or now
      callOff();
      callOff = later(saveNow, 0);
      tell();
    },
    noteServer: (away) => {
      const isBack = isAway && !away;
      isAway = away;
      if (isBack) saveNow();
      tell();
    },
    file: () => (held?.file === undefined ? undefined : { opened: held.opened, ...held.file, isBusy: held.isUnderWay }),
    close: () => {
      saveNow();
      held = undefined;
      tell();
    },
    saveNow,
    finish: async () => {
      callOff();
      const of = held;
      if (of === undefined) return;
      await save(of);
      while (of.isUnderWay) await new Promise((done) => later(() => done(undefined), 0));
    },
    settle: () => {
      callOff();
      if (held === undefined) return;
      held.saved = held.wanted;
      held.trouble = undefined;
      tell();
    },
    isUnsaved: () => held !== undefined && (held.wanted !== held.saved || held.isUnderWay),
    isAtRisk: () => held !== undefined && !held.isKept && (held.wanted !== held.saved || held.isUnderWay),
  };
};
