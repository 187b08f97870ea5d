import { config } from 'zod';
import { fullWork } from '../../core/backbone/full-work.ts';
import { layoutProblems } from '../../core/backbone/layout-problems.ts';
import { solveLayout } from '../../core/backbone/solve-layout.ts';
import { readBoat } from '../../core/boat/read-boat.ts';
import { writeBoat } from '../../core/boat/write-boat.ts';
import { planWith, withoutLateParts } from '../../core/plan-with.ts';
import { rules } from '../../core/rules/index.ts';
import { planningSession } from './planning-session.ts';
import type { PlanRequest } from './protocol.ts';

// The page forbids code made from text; without this zod would try it and the browser would log a refusal.
config({ jitless: true });

const hear = planningSession({
  engine: {
    readBoat,
    writeBoat,
    layoutProblems,
    solveLayout,
    quickPlan: planWith(withoutLateParts),
    plan: async (boat, layouts) => (await import('../../core/plan.ts')).plan(boat, layouts),
    titles: new Map(rules.map((rule) => [rule.id, rule.title])),
  },
  editor: () => import('../../core/boat/history.ts'),
  nowMs: () => performance.now(),
  /** a breath that lets waiting messages in, a cancel among them */
  pause: () => new Promise((resolve) => setTimeout(resolve, 0)),
  post: (reply) => postMessage(reply),
  budget: fullWork,
  patienceMs: 20_000,
});

addEventListener('message', ({ data }: MessageEvent<PlanRequest>) => void hear(data));
