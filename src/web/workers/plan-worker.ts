import { config } from 'zod';
import { fullWork } from '../../core/backbone/full-work.ts';
import { problemsOf } from '../../core/backbone/problems-of.ts';
import { solveLayout } from '../../core/backbone/solve-layout.ts';
import { canonicalBoat } from '../../core/boat/canonical-boat.ts';
import { lastPhase } from '../../core/boat/phase.ts';
import { readBoat } from '../../core/boat/read-boat.ts';
import { writeBoat } from '../../core/boat/write-boat.ts';
import { arrivesAsFiled } from '../../core/joins/unmet-needs.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { planWith, withoutLateParts } from '../../core/plan-with.ts';
import { boatKeeper } from './boat-keeper.ts';
import { planningSession } from './planning-session.ts';
import type { PlanRequest } from './protocol.ts';
import type { PlanEngine } from './run-plan.ts';

// The page forbids code made from text; without this zod would try it and the browser would log a refusal.
config({ jitless: true });

/** The whole pipeline and the titles of its rules, once they are here: no part of the way to the first picture. */
let whole:
  | {
      readonly plan: PlanEngine['quickPlan'];
      readonly nearPlan: PlanEngine['quickPlan'];
      readonly checkedPlan: PlanEngine['quickPlan'];
      readonly titles: ReadonlyMap<string, string>;
    }
  | undefined;

const bringWhole = async (): Promise<NonNullable<typeof whole>> => {
  if (whole !== undefined) return whole;
  const [{ plan, nearPlan, checkedPlan }, { rules }] = await Promise.all([
    import('../../core/plan.ts'),
    import('../../core/rules/index.ts'),
  ]);
  whole = { plan, nearPlan, checkedPlan, titles: new Map(rules.map((rule) => [rule.id, rule.title])) };
  return whole;
};
/** The phases as they were planned last: they stand until they are planned anew. */
let last: Pick<Plan, 'boat' | 'phases'> | undefined;
const firstPlan = planWith(withoutLateParts);

const hear = planningSession({
  engine: {
    readBoat,
    writeBoat,
    // what proposes joins is only brought where some reading does not arrive by those of the file
    layoutProblems: async (boat) =>
      arrivesAsFiled(boat)
        ? problemsOf(canonicalBoat(boat))
        : (await import('../../core/backbone/layout-problems.ts')).layoutProblems(boat),
    solveLayout,
    quickPlan: (...asked) => (whole?.checkedPlan ?? firstPlan)(...asked),
    nearPlan: async (boat, ...asked) => {
      const near = (await bringWhole()).nearPlan(boat, ...asked);
      return last?.phases === undefined || last.boat !== boat.name || lastPhase(boat) === 1
        ? near
        : { ...near, phases: last.phases };
    },
    plan: async (...asked) => {
      const made = (await bringWhole()).plan(...asked);
      last = made;
      return made;
    },
    titles: () => whole?.titles ?? new Map(),
  },
  editor: () => import('./boat-editor.ts'),
  keeper: boatKeeper(),
  leader: async () => {
    const [{ leadChoices }, { ledLine }] = await Promise.all([
      import('../../core/leading/lead-choices.ts'),
      import('../../core/led-line.ts'),
    ]);
    return { leadChoices, ledLine };
  },
  nowMs: () => performance.now(),
  /** a breath that lets waiting messages in, a cancel among them */
  pause: () => new Promise((resolve) => setTimeout(resolve, 0)),
  post: (reply) => postMessage(reply),
  budget: fullWork,
  patienceMs: 20_000,
});

addEventListener('message', ({ data }: MessageEvent<PlanRequest>) => void hear(data));
