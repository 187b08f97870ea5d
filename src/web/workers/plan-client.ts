import {
  type Change,
  type FileInFolder,
  firstPlanState,
  type KeptReply,
  nextPlanState,
  type PlanEvent,
  type PlanReply,
  type PlanRequest,
  type PlanState,
  type RouteAnswer,
  type RouteQuestion,
  type SavedText,
} from './protocol.ts';

/** As much of a Worker as the client needs. */
export interface PlanPort {
  postMessage(request: PlanRequest): void;
  onReply(listener: (reply: PlanReply) => void): void;
  /** called when the worker itself breaks, with what it said */
  onBreak(listener: (detail: string) => void): void;
}

/** The page's end of the planning worker: one plan in flight, stale answers dropped, the last good answer kept. */
export interface PlanClient {
  readonly state: () => PlanState;
  readonly subscribe: (listener: () => void) => () => void;
  /** plans a boat file, one of the folder where `file` says which, with the pictures at hand; a plan still running is given up */
  readonly plan: (boatText: string, beside?: { file?: FileInFolder; pictures?: readonly string[] }) => void;
  /** tells that the boat that is open has one more picture at hand */
  readonly picture: (hash: string) => void;
  /** changes the boat that is open and plans it anew; does nothing where none is open */
  readonly change: (change: Change) => void;
  /** tells that a text of the boat has reached its file */
  readonly saved: (opened: number, saved: SavedText) => void;
  /** hears of each change as soon as it is kept, before it is planned; gives what ends it */
  readonly onKept: (listener: (kept: KeptReply) => void) => () => void;
  /** asks about a line of the plan that is shown; the answer is empty where another plan is asked for before it comes */
  readonly ask: (question: RouteQuestion) => Promise<RouteAnswer>;
  /** ends the search in hand; the plan then settles with what is found */
  readonly stop: () => void;
  /** forgets the boat */
  readonly close: () => void;
}

/** Makes a client on a worker. */
export const planClient = (port: PlanPort): PlanClient => {
  let state = firstPlanState;
  const listeners = new Set<() => void>();
  const keptListeners = new Set<(kept: KeptReply) => void>();
  const open = new Map<number, (answer: RouteAnswer) => void>();
  let questions = 0;
  const answer = (number: number, { choices, led, words, kept }: RouteAnswer): void => {
    open.get(number)?.({
      ...(choices === undefined ? {} : { choices }),
      ...(led === undefined ? {} : { led }),
      ...(words === undefined ? {} : { words }),
      ...(kept === undefined ? {} : { kept }),
    });
    open.delete(number);
  };
  const move = (event: PlanEvent): void => {
    const next = nextPlanState(state, event);
    if (next === state) return;
    state = next;
    for (const listener of listeners) listener();
  };
  const send = (kind: 'cancel' | 'stop'): void => {
    if (state.busy) port.postMessage({ kind, revision: state.revision });
  };
  const ask = (request: (revision: number) => PlanRequest): void => {
    send('cancel');
    for (const number of [...open.keys()]) answer(number, {});
    const revision = state.revision + 1;
    move({ kind: 'asked', revision });
    port.postMessage(request(revision));
  };
  port.onReply((reply) => {
    if (reply.kind === 'told') answer(reply.number, reply);
    else if (reply.kind === 'kept') for (const listener of keptListeners) listener(reply);
    else move(reply);
  });
  port.onBreak((detail) => move({ kind: 'fault', revision: state.revision, detail }));
  return {
    state: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    plan: (boatText, beside) => ask((revision) => ({ kind: 'plan', revision, boatText, ...beside })),
    picture: (hash) => port.postMessage({ kind: 'picture', revision: state.revision, hash }),
    change: (change) => {
      const opened = state.answer?.opened;
      if (opened !== undefined) ask((revision) => ({ kind: 'change', revision, opened, change }));
    },
    saved: (opened, saved) => port.postMessage({ kind: 'saved', revision: state.revision, opened, saved }),
    onKept: (listener) => {
      keptListeners.add(listener);
      return () => keptListeners.delete(listener);
    },
    ask: (question) => {
      questions += 1;
      const number = questions;
      return new Promise((resolve) => {
        open.set(number, resolve);
        port.postMessage({ kind: 'ask', revision: state.revision, number, question });
      });
    },
    stop: () => send('stop'),
    close: () => {
      send('cancel');
      move({ kind: 'closed' });
    },
  };
};
