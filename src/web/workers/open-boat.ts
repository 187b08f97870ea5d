import type { LayoutMap } from '../../core/backbone/problem.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { type History, type Step, startHistory } from '../../core/boat/start-history.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { KeptBoat, KeptFile } from './kept-boat.ts';
import type { Change, EditState, LastStep, NewerSeen, SavedText } from './protocol.ts';
import type { FileClash, OpeningNotice, TakenIn } from './take-in-file.ts';
import { textHash } from './text-hash.ts';

/** The ways in which a history goes on. */
export type Editor = Pick<
  typeof import('./boat-editor.ts'),
  'applyEdits' | 'compareTexts' | 'readNewerBoat' | 'undo' | 'redo' | 'boundedHistory' | 'takeInFile' | 'takeUpKept'
>;

/** The two ends between a boat and its text. */
interface Pen {
  readonly readBoat: (text: string) => Boat;
  readonly writeBoat: (boat: Boat) => string;
}

/** The boat that is open, with its edits and what is known of its plan and its file. */
export interface OpenBoat {
  readonly opened: number;
  history: History;
  /** a text as it stood in a file, and the step after which the boat is what it says */
  asRead: { readonly text: string; readonly after: Step | undefined };
  /** the last plan that was settled, and how many steps were made since */
  settled?: Plan;
  steps: number;
  /** the layouts of the plan that stands; absent while another is made */
  layouts?: LayoutMap;
  /** what her whole plan took the last time */
  wholeMs?: number;
  last?: Omit<LastStep, 'steps'> & { steps: number };
  /** counts the changes; the turn whose text reached the file last */
  turn: number;
  savedTurn: number;
  /** by what name it is kept, and the file it stands on; absent where it is not kept */
  readonly key?: string;
  file?: KeptFile;
  /** hashes of the texts it had of late */
  passed: readonly string[];
  clash?: FileClash | undefined;
  /** the pictures at hand, by hash; absent where nobody looked */
  pictures?: ReadonlySet<string>;
  notice?: OpeningNotice | undefined;
  /** present where a newer program wrote the file: it is looked at, and nothing of it is changed or kept */
  newer?: NewerSeen;
}

/** A boat as far as it can be read out of a file that a newer program wrote; without a key, so that nothing keeps it. */
export const openNewer = (text: string, { opened, editor }: { opened: number; editor: Editor }): OpenBoat => {
  const { boat, version, leftOut } = editor.readNewerBoat(text);
  return { ...openBoat(boat, { opened, text }), newer: { version, leftOut } };
};

/** Stands where no step leads to the text as it was read. */
const noStep: Step = { title: '', forth: [], back: [] };

interface OpenedBeside {
  readonly file?: { readonly key: string; readonly tag: string };
  readonly pictures?: readonly string[];
}

/** A boat that was read from a text, with no edits. */
export const openBoat = (
  boat: Boat,
  { opened, text, file, pictures }: { opened: number; text: string } & OpenedBeside,
): OpenBoat => ({
  opened,
  history: startHistory(boat),
  asRead: { text, after: undefined },
  steps: 0,
  turn: 0,
  savedTurn: 0,
  passed: [],
  ...(file === undefined ? {} : { key: file.key, file: { tag: file.tag, text } }),
  ...(pictures === undefined ? {} : { pictures: new Set(pictures) }),
});

/** A boat is written once, though its text is kept, saved and shown. */
const written = new WeakMap<Boat, string>();

/** The text of the boat as it is now; as it was read where it is what was read. */
export const textOf = ({ history, asRead }: OpenBoat, pen: Pen): string => {
  if (history.done.at(-1) === asRead.after) return asRead.text;
  const text = written.get(history.boat) ?? pen.writeBoat(history.boat);
  written.set(history.boat, text);
  return text;
};

/** Texts remembered of late; far more than can be on their way to the file at once. */
const passedAtMost = 40;

/** Takes down what text the boat has now. */
export const notePassed = (open: OpenBoat, text: string): void => {
  open.passed = [...open.passed, textHash(text)].slice(-passedAtMost);
};

/** The boat as this browser keeps it; undefined where it is to be kept nowhere. */
export const keptOf = (open: OpenBoat, text: string): KeptBoat | undefined => {
  const { key, file, history, turn, savedTurn, passed } = open;
  if (key === undefined || file === undefined) return undefined;
  return { key, text, done: history.done, undone: history.undone, unsaved: turn - savedTurn, file, passed };
};

/** Takes down that a text has reached the file. */
export const noteSaved = (open: OpenBoat, { tag, text, turn }: SavedText): void => {
  open.file = { tag, text };
  open.savedTurn = Math.max(open.savedTurn, turn);
};

const standOn = (open: OpenBoat, taken: TakenIn, file: KeptFile): void => {
  open.history = taken.history;
  open.clash = taken.clash;
  open.notice = taken.notice;
  if (taken.clash !== undefined) return;
  open.file = file;
  open.savedTurn = open.turn - taken.unsaved;
  const isFile = taken.unsaved === 0;
  open.asRead = { text: file.text, after: isFile ? taken.history.done.at(-1) : noStep };
};

/** Takes up what was kept of a boat when it was open before; `file` is what its file holds now. */
export const takeUp = (
  open: OpenBoat,
  { kept, file, editor }: { kept: KeptBoat; file: KeptFile; editor: Editor },
): void => {
  const taken = editor.takeUpKept({ kept, file, boat: open.history.boat });
  open.turn = taken.unsaved;
  open.passed = kept.passed;
  standOn(open, taken, file);
  if (taken.clash !== undefined) open.file = kept.file;
};

/** Takes up the steps of a boat that is exactly what its file holds, as nearly every boat is that is opened again. */
export const takeUpSteps = (open: OpenBoat, { done, undone }: KeptBoat): void => {
  open.history = { boat: open.history.boat, done, undone };
  open.asRead = { ...open.asRead, after: done.at(-1) };
};

const meetFile = (
  open: OpenBoat,
  file: KeptFile,
  { editor, pen, change }: { editor: Editor; pen: Pen; change: Change },
): void => {
  const choices = change.kind === 'merge' ? { choices: change.choices } : {};
  const unsaved = open.turn - open.savedTurn;
  if (unsaved > 0 && open.passed.includes(textHash(file.text))) {
    // the answer to a save got lost: the file holds what the boat was a moment ago
    standOn(open, { history: open.history, unsaved }, file);
    return;
  }
  const base = pen.readBoat(open.file?.text ?? open.asRead.text);
  const before = open.history;
  const meeting = { history: before, unsaved, base, file, theirs: pen.readBoat(file.text), ...choices };
  const taken = editor.takeInFile(meeting);
  if (taken.history !== before) open.turn += 1;
  standOn(open, taken, file);
};

const changed = (open: OpenBoat, change: Change, { editor, pen }: { editor: Editor; pen: Pen }): void => {
  const { history } = open;
  switch (change.kind) {
    case 'edit':
      open.history = editor.applyEdits(history, change.edits, change.title);
      return;
    case 'undo':
      open.history = editor.undo(history);
      return;
    case 'redo':
      open.history = editor.redo(history);
      return;
    case 'restore': {
      const params = { boat: pen.readBoat(change.text) };
      open.history = editor.applyEdits(history, [{ edit: 'restore-boat', params }], change.title);
      return;
    }
    case 'file':
      meetFile(open, change.file, { editor, pen, change });
      return;
    case 'merge':
      if (open.clash !== undefined) meetFile(open, open.clash.file, { editor, pen, change });
  }
};

const stepOf = (before: History, after: History, { kind }: Change): Pick<LastStep, 'kind' | 'title'> => {
  if (after === before) return { kind: 'nothing', title: '' };
  if (kind === 'undo') return { kind: 'undone', title: after.undone.at(-1)?.title ?? '' };
  return { kind: kind === 'redo' ? 'redone' : 'done', title: after.done.at(-1)?.title ?? '' };
};

const isOfPerson = ({ kind }: Change): boolean => kind !== 'file' && kind !== 'merge';

/** Makes one change of the open boat; throws UserError where it is refused, and leaves all as it was. */
export const makeChange = (open: OpenBoat, change: Change, tools: { editor: Editor; pen: Pen }): void => {
  const before = open.history;
  const turn = open.turn;
  changed(open, change, tools);
  const step = stepOf(before, open.history, change);
  if (step.kind === 'nothing' && !isOfPerson(change)) return;
  if (step.kind !== 'nothing') {
    open.steps += 1;
    open.turn = turn + 1;
    if (isOfPerson(change)) open.notice = undefined;
  }
  open.last = { ...step, steps: open.steps };
  const bounded = tools.editor.boundedHistory(open.history);
  const lostFirst = bounded.done.length < open.history.done.length && open.asRead.after === undefined;
  if (lostFirst) open.asRead = { ...open.asRead, after: noStep };
  open.history = bounded;
};

/** What a page is told of the edits of a boat. */
export const editStateOf = ({ history, last, notice, clash }: OpenBoat): EditState => {
  const [done, undone] = [history.done.at(-1), history.undone.at(-1)];
  return {
    ...(done === undefined ? {} : { undo: done.title }),
    ...(undone === undefined ? {} : { redo: undone.title }),
    ...(last === undefined ? {} : { last }),
    ...(notice === undefined ? {} : { notice }),
    ...(clash === undefined ? {} : { clash: clash.conflicts }),
  };
};
