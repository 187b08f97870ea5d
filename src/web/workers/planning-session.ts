import type { Budget, Layout, LayoutMap } from '../../core/backbone/problem.ts';
import type { applyEdits, redo, undo } from '../../core/boat/history.ts';
import { type History, startHistory } from '../../core/boat/start-history.ts';
import { UserError } from '../../core/boat/user-error.ts';
import type { leadChoices } from '../../core/leading/lead-choices.ts';
import type { ledLine } from '../../core/led-line.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { planChange } from '../../papers/lists/plan-change.ts';
import type {
  Change,
  EditState,
  LastStep,
  PlanReply,
  PlanRequest,
  Refusal,
  RouteAnswer,
  RouteQuestion,
} from './protocol.ts';
import { type PlanEngine, runPlan } from './run-plan.ts';

/** The three ways in which a history goes on. */
export interface Editor {
  readonly applyEdits: typeof applyEdits;
  readonly undo: typeof undo;
  readonly redo: typeof redo;
}

/** What answers questions about the routes of lines. */
export interface Leader {
  readonly leadChoices: typeof leadChoices;
  readonly ledLine: typeof ledLine;
}

/** What a session needs: the engine, a clock, a breath that lets requests in, and somebody to answer to. */
export interface SessionTools {
  readonly engine: PlanEngine;
  /** brings what edits need, which is no part of the way to the first picture */
  readonly editor: () => Promise<Editor>;
  /** brings what questions about routes need */
  readonly leader: () => Promise<Leader>;
  readonly nowMs: () => number;
  readonly pause: () => Promise<void>;
  readonly post: (reply: PlanReply) => void;
  /** work for each backbone, counted in layouts tried */
  readonly budget: Budget;
  /** wall clock for all backbones of one plan together */
  readonly patienceMs: number;
}

/** The boat that is open, with its edits and what is known of its plan. */
interface OpenBoat {
  readonly opened: number;
  readonly readText: string;
  history: History;
  /** the last plan that was settled, and how many steps were made since */
  settled?: Plan;
  steps: number;
  /** the layouts of the plan that stands; absent while another is made */
  layouts?: LayoutMap;
  last?: Omit<LastStep, 'steps'> & { steps: number };
}

/** After an edit the drawing waits this long for the best layout rather than flicker through a quick one. */
const editPatienceMs = 400;

const refusalOf = ({ says, place, whatToDo, more }: UserError): Refusal => ({
  says,
  ...(place === undefined ? {} : { place }),
  whatToDo,
  ...(more.length === 0 ? {} : { more }),
});

const changed = (editor: Editor, history: History, change: Change): History => {
  switch (change.kind) {
    case 'edit':
      return editor.applyEdits(history, change.edits, change.title);
    case 'undo':
      return editor.undo(history);
    case 'redo':
      return editor.redo(history);
  }
};

const stepOf = (before: History, after: History, { kind }: Change): Pick<LastStep, 'kind' | 'title'> => {
  if (after === before) return { kind: 'nothing', title: '' };
  if (kind === 'undo') return { kind: 'undone', title: after.undone.at(-1)?.title ?? '' };
  return { kind: kind === 'edit' ? 'done' : 'redone', title: after.done.at(-1)?.title ?? '' };
};

/** Makes one change of the open boat; throws UserError where it is refused, and leaves all as it was. */
const makeChange = (editor: Editor, open: OpenBoat, change: Change): void => {
  const after = changed(editor, open.history, change);
  const step = stepOf(open.history, after, change);
  if (step.kind !== 'nothing') open.steps += 1;
  open.last = { ...step, steps: open.steps };
  open.history = after;
};

/** Takes in a settled plan: what the steps since the one before changed, and the plan the next steps are held against. */
const settle = (open: OpenBoat, plan: Plan): void => {
  if (open.last !== undefined && open.steps > 0 && open.settled !== undefined) {
    open.last = { ...open.last, change: planChange(open.settled, plan), steps: open.steps };
  }
  open.settled = plan;
  open.steps = 0;
};

/** Answers a question about a line of the plan that stands; a line that may not be led so has nothing said of it. */
const routeAnswer = (
  { leadChoices: choicesOf, ledLine: ledOf }: Leader,
  open: OpenBoat,
  asked: RouteQuestion,
): RouteAnswer => {
  const { settled, layouts, history } = open;
  const line = settled?.lines.find(({ id }) => id === asked.line);
  if (line === undefined || layouts === undefined) return {};
  if (asked.asks === 'choices') return { choices: choicesOf(history.boat, line) };
  const led = ledOf({ boat: history.boat, layouts, line: line.id, ways: asked.ways });
  return led === undefined ? {} : { led };
};

const editStateOf = ({ history, last }: OpenBoat): EditState => {
  const [done, undone] = [history.done.at(-1), history.undone.at(-1)];
  return {
    ...(done === undefined ? {} : { undo: done.title }),
    ...(undone === undefined ? {} : { redo: undone.title }),
    ...(last === undefined ? {} : { last }),
  };
};

/**
 * The worker's side of the protocol: keeps one boat with its edits and plans it anew after every change. Answers
 * `refused` for a bad file, `edit-refused` for an edit that does not fit, and `fault` for anything else that goes wrong;
 * never throws. A new request calls off the plan in hand; a stop lets it settle with the layouts it has.
 */
export const planningSession = (tools: SessionTools): ((request: PlanRequest) => Promise<void>) => {
  const { engine } = tools;
  const known = new Map<string, Layout>();
  let open: OpenBoat | undefined;
  let current = 0;
  let stopped = 0;

  const post = (reply: PlanReply): void => {
    if (reply.revision === current) tools.post(reply);
  };

  const planOpen = async (of: OpenBoat, revision: number, firstAfterMs: number): Promise<void> => {
    const startMs = tools.nowMs();
    delete of.layouts;
    const boat = of.history.boat;
    const boatText = of.history.done.length === 0 ? of.readText : engine.writeBoat(boat);
    const onPlan = (plan: Plan, settled: boolean): void => {
      if (settled) settle(of, plan);
      const [edits, ms] = [editStateOf(of), tools.nowMs() - startMs];
      const fixed = { revision, opened: of.opened, boat, boatText, titles: engine.titles() };
      post({ kind: 'answer', ...fixed, plan, edits, settled, ms });
    };
    await runPlan({
      ...tools,
      engine: {
        ...engine,
        plan: async (asked, layouts) => {
          const made = await engine.plan(asked, layouts);
          if (revision === current) of.layouts = layouts;
          return made;
        },
      },
      boat,
      known,
      firstAfterMs,
      hooks: {
        ...tools,
        isCancelled: () => revision !== current,
        isStopped: () => revision === stopped,
        onProgress: (words) => post({ kind: 'progress', revision, ...words }),
        onPlan,
      },
    });
  };

  const openBoat = async (revision: number, boatText: string): Promise<void> => {
    try {
      open = { opened: revision, readText: boatText, history: startHistory(engine.readBoat(boatText)), steps: 0 };
    } catch (error) {
      if (!(error instanceof UserError)) throw error;
      post({ kind: 'refused', revision, ...refusalOf(error) });
      return;
    }
    await planOpen(open, revision, 0);
    await tools.editor();
  };

  const changeBoat = async ({ revision, opened, change }: Extract<PlanRequest, { kind: 'change' }>): Promise<void> => {
    const editor = await tools.editor();
    if (open === undefined) throw new Error('No boat is open that could be changed.');
    try {
      if (open.opened === opened) makeChange(editor, open, change);
    } catch (error) {
      if (!(error instanceof UserError)) throw error;
      post({ kind: 'edit-refused', revision, ...refusalOf(error) });
    }
    await planOpen(open, revision, editPatienceMs);
  };

  const answerQuestion = async ({
    revision,
    number,
    question,
  }: Extract<PlanRequest, { kind: 'ask' }>): Promise<void> => {
    try {
      const leader = await tools.leader();
      const answer = open === undefined || revision !== current ? {} : routeAnswer(leader, open, question);
      tools.post({ kind: 'told', revision, number, ...answer });
    } catch (error) {
      tools.post({ kind: 'told', revision, number });
      if (!(error instanceof UserError)) post({ kind: 'fault', revision, detail: String(error) });
    }
  };

  return async (request) => {
    const { revision } = request;
    if (request.kind === 'ask') {
      await answerQuestion(request);
      return;
    }
    if (request.kind === 'cancel') {
      if (revision === current) current = 0;
      return;
    }
    if (request.kind === 'stop') {
      stopped = revision;
      return;
    }
    current = revision;
    try {
      if (request.kind === 'plan') await openBoat(revision, request.boatText);
      else await changeBoat(request);
    } catch (error) {
      post({ kind: 'fault', revision, detail: error instanceof Error ? error.message : String(error) });
    }
  };
};
