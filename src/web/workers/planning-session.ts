import type { Budget, Layout } from '../../core/backbone/problem.ts';
import { NewerFile } from '../../core/boat/newer-file.ts';
import { UserError } from '../../core/boat/user-error.ts';
import type { leadChoices } from '../../core/leading/lead-choices.ts';
import type { ledLine } from '../../core/led-line.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { planChange } from '../../papers/lists/plan-change.ts';
import { type BoatKeeper, isKeptBoat, type KeptFile } from './kept-boat.ts';
import {
  type Editor,
  editStateOf,
  keptOf,
  makeChange,
  notePassed,
  noteSaved,
  type OpenBoat,
  openBoat as openedBoat,
  openNewer,
  takeUp,
  takeUpSteps,
  textOf,
} from './open-boat.ts';
import type { PlanReply, PlanRequest, Refusal, RouteAnswer, RouteQuestion } from './protocol.ts';
import { type PlanEngine, runPlan } from './run-plan.ts';

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
  /** keeps boats of the folder between one page and the next */
  readonly keeper: BoatKeeper;
  /** work for each backbone, counted in layouts tried */
  readonly budget: Budget;
  /** wall clock for all backbones of one plan together */
  readonly patienceMs: number;
}

/** After an edit the drawing waits this long for the best layout rather than flicker through a quick one. */
const editPatienceMs = 400;

const isDone = (): boolean => true;
const isNotDone = (): boolean => false;

const refusalOf = ({ says, place, whatToDo, more }: UserError): Refusal => ({
  says,
  ...(place === undefined ? {} : { place }),
  whatToDo,
  ...(more.length === 0 ? {} : { more }),
});

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
  asked: Extract<RouteQuestion, { line: string }>,
): RouteAnswer => {
  const { settled, layouts, history } = open;
  const line = settled?.lines.find(({ id }) => id === asked.line);
  if (line === undefined || layouts === undefined) return {};
  if (asked.asks === 'choices') return { choices: choicesOf(history.boat, line) };
  const led = ledOf({ boat: history.boat, layouts, line: line.id, ways: asked.ways });
  return led === undefined ? {} : { led };
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
    const boatText = textOf(of, engine);
    const onPlan = (plan: Plan, settled: boolean): void => {
      if (settled) settle(of, plan);
      const [edits, ms] = [editStateOf(of), tools.nowMs() - startMs];
      const fixed = { revision, opened: of.opened, boat, boatText, titles: engine.titles() };
      const newer = of.newer === undefined ? {} : { newer: of.newer };
      post({ kind: 'answer', ...fixed, ...newer, plan, edits, settled, ms });
    };
    let workMs = 0;
    const timed =
      (make: PlanEngine['plan']): PlanEngine['plan'] =>
      async (...given) => {
        const fromMs = tools.nowMs();
        const made = await make(...given);
        workMs += tools.nowMs() - fromMs;
        return made;
      };
    await runPlan({
      ...tools,
      engine: {
        ...engine,
        ...(engine.nearPlan === undefined ? {} : { nearPlan: timed(engine.nearPlan) }),
        plan: async (asked, layouts, ...others) => {
          const made = await timed(engine.plan)(asked, layouts, ...others);
          of.wholeMs = workMs;
          if (revision === current) of.layouts = layouts;
          return made;
        },
      },
      boat,
      pictures: of.pictures,
      known,
      firstAfterMs,
      usualMs: of.wholeMs,
      hooks: {
        ...tools,
        isCancelled: () => revision !== current,
        isStopped: () => revision === stopped,
        onProgress: (words) => post({ kind: 'progress', revision, ...words }),
        onPlan,
      },
    });
  };

  /** Keeps the boat as it is now, and then tells the page, which saves it. */
  const keep = async (of: OpenBoat, revision: number, file?: KeptFile): Promise<void> => {
    const boatText = textOf(of, engine);
    if (of.key !== undefined) notePassed(of, boatText);
    const kept = keptOf(of, boatText);
    // a browser that keeps nothing, or has no room left, must not keep anybody from working
    const isKept = kept !== undefined && (await tools.keeper.keep(kept).then(isDone, isNotDone));
    const { opened, turn, clash } = of;
    const told = { opened, turn, boatText, isKept, isClash: clash !== undefined };
    tools.post({ kind: 'kept', revision, ...told, ...(file === undefined ? {} : { file }) });
  };

  /** Leaves what was kept and cannot be read where nothing is written over it. */
  const setAside = async (of: OpenBoat, key: string, kept: unknown): Promise<true> => {
    await tools.keeper.setAside(key).catch(() => undefined);
    const text = typeof kept === 'object' && kept !== null && 'text' in kept ? kept.text : undefined;
    of.notice = { kind: 'kept-unread', ...(typeof text === 'string' ? { text } : {}) };
    return true;
  };

  /** Takes up what was kept of a boat when it was open before; true where it is then not what its file holds. */
  const recall = async (of: OpenBoat): Promise<boolean> => {
    const { key, file } = of;
    const kept = key === undefined ? undefined : await tools.keeper.read(key).catch(() => undefined);
    if (key === undefined || kept === undefined || file === undefined) return false;
    if (!isKeptBoat(kept)) return setAside(of, key, kept);
    if (kept.text === file.text) {
      takeUpSteps(of, kept);
      return false;
    }
    try {
      takeUp(of, { kept, file, editor: await tools.editor() });
    } catch (error) {
      // what another version of the program kept and this one cannot read
      if (!(error instanceof UserError)) throw error;
      return setAside(of, key, kept);
    }
    return true;
  };

  type Beside = Omit<Parameters<typeof openedBoat>[1], 'text'>;

  /** The boat of a text; undefined where a newer program wrote it. */
  const readNow = (text: string, beside: Beside): OpenBoat | undefined => {
    try {
      return openedBoat(engine.readBoat(text), { ...beside, text });
    } catch (error) {
      if (error instanceof NewerFile) return undefined;
      throw error;
    }
  };

  const readNewer = async (text: string, { opened, pictures }: Beside): Promise<OpenBoat> => ({
    ...openNewer(text, { opened, editor: await tools.editor() }),
    ...(pictures === undefined ? {} : { pictures: new Set(pictures) }),
  });

  const openBoat = async ({
    revision,
    boatText,
    file,
    pictures,
  }: Extract<PlanRequest, { kind: 'plan' }>): Promise<void> => {
    const beside = {
      opened: revision,
      ...(file === undefined ? {} : { file }),
      ...(pictures === undefined ? {} : { pictures }),
    };
    let next: OpenBoat;
    try {
      next = readNow(boatText, beside) ?? (await readNewer(boatText, beside));
    } catch (error) {
      if (!(error instanceof UserError)) throw error;
      post({ kind: 'refused', revision, ...refusalOf(error) });
      return;
    }
    const isOther = next.key !== undefined && (await recall(next));
    if (revision !== current) return;
    open = next;
    if (isOther) await keep(next, revision);
    await planOpen(next, revision, 0);
    await tools.editor();
  };

  const changeBoat = async ({ revision, opened, change }: Extract<PlanRequest, { kind: 'change' }>): Promise<void> => {
    const editor = await tools.editor();
    if (open === undefined) throw new Error('No boat is open that could be changed.');
    const of = open;
    try {
      if (of.newer !== undefined) throw new NewerFile({ version: of.newer.version, known: of.history.boat.version });
      if (of.opened === opened) {
        makeChange(of, change, { editor, pen: engine });
        const meetsFile = change.kind === 'file' || change.kind === 'merge';
        await keep(of, revision, meetsFile && of.clash === undefined ? of.file : undefined);
      }
    } catch (error) {
      if (!(error instanceof UserError)) throw error;
      post({ kind: 'edit-refused', revision, ...refusalOf(error) });
    }
    if (revision === current) await planOpen(of, revision, editPatienceMs);
  };

  const saved = async ({ opened, saved: text }: Extract<PlanRequest, { kind: 'saved' }>): Promise<void> => {
    if (open?.opened !== opened) return;
    noteSaved(open, text);
    const kept = keptOf(open, textOf(open, engine));
    if (kept !== undefined) await tools.keeper.keep(kept).catch(() => undefined);
  };

  /** What is kept of a boat whose file cannot be read, where that can be. */
  const keptAnswer = async (key: string): Promise<RouteAnswer> => {
    const kept = await tools.keeper.read(key).catch(() => undefined);
    if (!isKeptBoat(kept)) return {};
    engine.readBoat(kept.text);
    return { kept: { text: kept.text, ...(kept.atMs === undefined ? {} : { atMs: kept.atMs }) } };
  };

  const answerQuestion = async ({
    revision,
    number,
    question,
  }: Extract<PlanRequest, { kind: 'ask' }>): Promise<void> => {
    try {
      if (question.asks === 'compare') {
        tools.post({ kind: 'told', revision, number, words: (await tools.editor()).compareTexts(question) });
        return;
      }
      if (question.asks === 'kept') {
        tools.post({ kind: 'told', revision, number, ...(await keptAnswer(question.key)) });
        return;
      }
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
    if (request.kind === 'saved') {
      await saved(request);
      return;
    }
    if (request.kind === 'picture') {
      if (open?.pictures !== undefined) open.pictures = new Set([...open.pictures, request.hash]);
      return;
    }
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
      if (request.kind === 'plan') await openBoat(request);
      else await changeBoat(request);
    } catch (error) {
      post({ kind: 'fault', revision, detail: error instanceof Error ? error.message : String(error) });
    }
  };
};
