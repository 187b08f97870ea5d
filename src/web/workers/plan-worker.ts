import { config } from 'zod';
import { fullWork } from '../../core/backbone/full-work.ts';
import { layoutProblems } from '../../core/backbone/layout-problems.ts';
import { solveLayout } from '../../core/backbone/solve-layout.ts';
import { readBoat } from '../../core/boat/read-boat.ts';
import { plan } from '../../core/plan.ts';
import { rules } from '../../core/rules/index.ts';
import type { PlanReply, PlanRequest } from './protocol.ts';
import { type PlanEngine, runPlan } from './run-plan.ts';

// The page forbids code made from text; without this zod would try it and the browser would log a refusal.
config({ jitless: true });

const engine: PlanEngine = {
  readBoat,
  layoutProblems,
  solveLayout,
  plan: (boat, layouts) => plan(boat, layouts),
  titles: new Map(rules.map((rule) => [rule.id, rule.title])),
};

const patienceMs = 20_000;

let current = 0;
const isCurrent = (revision: number): boolean => revision === current;

/** A breath that lets waiting messages in, a cancel among them. */
const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

const post = (reply: PlanReply): void => {
  if (isCurrent(reply.revision)) postMessage(reply);
};

addEventListener('message', ({ data }: MessageEvent<PlanRequest>) => {
  if (data.kind === 'cancel') {
    if (isCurrent(data.revision)) current = 0;
    return;
  }
  const { revision, boatText } = data;
  current = revision;
  void runPlan({
    revision,
    boatText,
    engine,
    budget: fullWork,
    patienceMs,
    hooks: { nowMs: () => performance.now(), pause, isCancelled: () => !isCurrent(revision), post },
  });
});
