import type { Boat } from '../../core/boat/boat-schema.ts';
import type { EditCall } from '../../core/boat/history.ts';
import type { MergeChoice } from '../../core/boat/merge/merge-boats.ts';
import type { LeftOutPart } from '../../core/boat/read-newer-boat.ts';
import type { LeadChoice } from '../../core/leading/lead-choices.ts';
import type { LedLine } from '../../core/led-line.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { ConflictWords } from '../../papers/lists/boat-change-words.ts';
import type { PlanChange } from '../../papers/lists/plan-change.ts';
import type { SearchWords } from '../../papers/lists/search-words.ts';
import type { KeptFile } from './kept-boat.ts';
import type { OpeningNotice } from './take-in-file.ts';

/**
 * A change asked for: some edits as one step, one step back or forth again, a boat as it was saved before set in place of
 * this one, a file taken in that was changed elsewhere, or choices between that file and what was changed here.
 */
export type Change =
  /** `title` says what the step does; without it the edits say it themselves */
  | { readonly kind: 'edit'; readonly edits: readonly EditCall[]; readonly title?: string }
  | { readonly kind: 'undo' }
  | { readonly kind: 'redo' }
  | { readonly kind: 'restore'; readonly text: string; readonly title: string }
  | { readonly kind: 'file'; readonly file: KeptFile }
  | { readonly kind: 'merge'; readonly choices: Readonly<Partial<Record<string, MergeChoice>>> };

/** What a page may ask: where a line of the plan that is shown may be led, what leading it by other ways comes to, and how two texts of a boat differ. */
export type RouteQuestion =
  | { readonly asks: 'choices'; readonly line: string }
  | { readonly asks: 'led'; readonly line: string; readonly ways: readonly string[] }
  /** what one text of a boat says otherwise than the one before it */
  | { readonly asks: 'compare'; readonly before: string; readonly after: string }
  /** what this browser has kept of a boat whose file cannot be read */
  | { readonly asks: 'kept'; readonly key: string };

/** What there is to say to a question; nothing where the boat has changed since, or has no such line. */
export interface RouteAnswer {
  readonly choices?: readonly LeadChoice[];
  readonly led?: LedLine;
  readonly words?: string;
  readonly kept?: KeptText;
}

/** A good text of a boat that this browser has kept, and when. */
export interface KeptText {
  readonly text: string;
  readonly atMs?: number;
}

/** A file of the folder: by what name this browser keeps its boat, and the server’s tag for what it holds. */
export interface FileInFolder {
  readonly key: string;
  readonly tag: string;
}

/** A text that has reached its file, and the turn of the boat it was. */
export interface SavedText extends KeptFile {
  readonly turn: number;
}

/** The boat after a change, told before it is planned: it is kept in this browser, and is to be saved. */
export interface KeptReply {
  readonly opened: number;
  /** counts the changes of the boat since it was opened */
  readonly turn: number;
  readonly boatText: string;
  /** false where the browser would not keep it: it is in this page only until it is saved */
  readonly isKept: boolean;
  /** the file as it was changed elsewhere, once it is taken in */
  readonly file?: KeptFile;
  /** whether a person has to choose between this boat and its file before it may be saved */
  readonly isClash: boolean;
}

/**
 * What the page asks of the planning worker. `saved` tells that a text has reached its file, and `picture` that one more picture is at hand; neither plans anything. `revision` grows with every request, so an old answer can be told from a
 * new one. `opened` is the revision at which the boat that is to be changed was opened; a change meant for a boat that
 * another has replaced meanwhile does nothing. `stop` ends the search and settles the plan with what is found; `cancel`
 * gives the plan up.
 */
export type PlanRequest =
  | {
      readonly kind: 'plan';
      readonly revision: number;
      readonly boatText: string;
      readonly file?: FileInFolder;
      /** the pictures she has at hand, by hash; absent where nobody looked */
      readonly pictures?: readonly string[];
    }
  | { readonly kind: 'picture'; readonly revision: number; readonly hash: string }
  | { readonly kind: 'saved'; readonly revision: number; readonly opened: number; readonly saved: SavedText }
  | { readonly kind: 'change'; readonly revision: number; readonly opened: number; readonly change: Change }
  | { readonly kind: 'ask'; readonly revision: number; readonly number: number; readonly question: RouteQuestion }
  | { readonly kind: 'stop'; readonly revision: number }
  | { readonly kind: 'cancel'; readonly revision: number };

/** A boat file or an edit that was turned away: what is wrong, where, what to do, and further problems of the same input. */
export interface Refusal {
  readonly says: string;
  readonly place?: string;
  readonly whatToDo: string;
  readonly more?: readonly string[];
}

/** What was done last: an edit, a step taken back or made again, or an edit that found everything as it wants it. */
export interface LastStep {
  readonly kind: 'done' | 'undone' | 'redone' | 'nothing';
  /** the sentence of the step; empty for an edit that changed nothing */
  readonly title: string;
  /** what it changed, once the plan is settled; absent where there was no settled plan before it */
  readonly change?: PlanChange;
  /** how many steps `change` holds: more than one where they came faster than plans settle */
  readonly steps: number;
}

/** The edits of a boat since it was opened. */
export interface EditState {
  /** the sentence of the step that can be taken back, and of the one that can be made again */
  readonly undo?: string;
  readonly redo?: string;
  readonly last?: LastStep;
  /** what is said of the boat as it was opened, until the first change */
  readonly notice?: OpeningNotice;
  /** what a person must choose before the boat can be saved, for its file was changed elsewhere */
  readonly clash?: readonly ConflictWords[];
}

/** That a newer program wrote the file, and how much of each part of it this one had to leave out. */
export interface NewerSeen {
  readonly version: number;
  readonly leftOut: readonly LeftOutPart[];
}

/** A boat and its plan; `titles` are the titles of the rules by id, none while nothing was checked yet; `settled` is false while a cheaper layout is still looked for. `ms` is the time since the request. */
export interface PlanAnswer {
  readonly revision: number;
  /** revision at which this boat was opened */
  readonly opened: number;
  readonly boat: Boat;
  /** the boat file as it is to be saved; as it was read while nothing is changed */
  readonly boatText: string;
  readonly plan: Plan;
  readonly titles: ReadonlyMap<string, string>;
  readonly edits: EditState;
  /** present where the file is one of a newer program: it may be looked at only */
  readonly newer?: NewerSeen;
  readonly settled: boolean;
  readonly ms: number;
}

/**
 * What the worker says back. After `edit-refused` the boat as it was is planned on under the same revision. A `fault` is
 * an error in the program, never in the boat file.
 */
export type PlanReply =
  | ({ readonly kind: 'progress'; readonly revision: number } & SearchWords)
  | ({ readonly kind: 'answer' } & PlanAnswer)
  | ({ readonly kind: 'kept'; readonly revision: number } & KeptReply)
  | ({ readonly kind: 'told'; readonly revision: number; readonly number: number } & RouteAnswer)
  | ({ readonly kind: 'refused'; readonly revision: number } & Refusal)
  | ({ readonly kind: 'edit-refused'; readonly revision: number } & Refusal)
  | { readonly kind: 'fault'; readonly revision: number; readonly detail: string };

/** What the page knows of its plan: the last answer stays while a new one is on its way. */
export interface PlanState {
  readonly revision: number;
  readonly busy: boolean;
  readonly progress?: SearchWords;
  readonly answer?: PlanAnswer;
  readonly refusal?: Refusal;
  /** why the last edit was not made */
  readonly editRefusal?: Refusal;
  readonly fault?: string;
}

export type PlanEvent = { readonly kind: 'asked'; readonly revision: number } | { readonly kind: 'closed' } | PlanReply;

export const firstPlanState: PlanState = { revision: 0, busy: false };

const settledOn = (state: PlanState): PlanState => ({
  revision: state.revision,
  busy: false,
  ...(state.answer === undefined ? {} : { answer: state.answer }),
});

const withEditRefusal = ({ editRefusal }: PlanState): Pick<PlanState, 'editRefusal'> =>
  editRefusal === undefined ? {} : { editRefusal };

const progressOf = ({ says, found }: SearchWords): SearchWords => ({ says, ...(found === undefined ? {} : { found }) });

const afterReply = (state: PlanState, reply: PlanReply): PlanState => {
  if (reply.revision !== state.revision) return state;
  // a question may bring a fault to light while no plan is awaited
  if (!state.busy && reply.kind !== 'fault') return state;
  switch (reply.kind) {
    case 'progress':
      return { ...state, progress: progressOf(reply) };
    case 'answer': {
      const { kind: _, ...answer } = reply;
      return { revision: state.revision, busy: !answer.settled, answer, ...withEditRefusal(state) };
    }
    case 'refused': {
      const { kind: _, revision: __, ...refusal } = reply;
      return { ...settledOn(state), refusal };
    }
    case 'edit-refused': {
      const { kind: _, revision: __, ...editRefusal } = reply;
      return { ...state, editRefusal };
    }
    case 'fault':
      return { ...settledOn(state), fault: reply.detail };
    case 'kept':
    case 'told':
      return state;
  }
};

/**
 * The next state of the page's plan. Replies that belong to an earlier request change nothing;
 * a refusal or a fault leaves the last good answer in place.
 */
export const nextPlanState = (state: PlanState, event: PlanEvent): PlanState => {
  switch (event.kind) {
    case 'asked':
      return { ...settledOn(state), revision: event.revision, busy: true };
    case 'closed':
      return { revision: state.revision, busy: false };
    default:
      return afterReply(state, event);
  }
};
