import type { LayoutMap } from './backbone/problem.ts';
import { blackoutTable } from './blackouts/blackout-table.ts';
import type { Boat } from './boat/boat-schema.ts';
import { applyEdits } from './boat/history.ts';
import { startHistory } from './boat/start-history.ts';
import { withHints } from './cures/with-hints.ts';
import { leadEdits } from './leading/lead-edits.ts';
import { lateParts } from './plan.ts';
import type { Finding, LineEntry, Plan } from './plan-shape.ts';
import { planWith, withoutLateParts } from './plan-with.ts';

/** What leading a line another way comes to. */
export interface LedLine {
  readonly lengthM: number;
  readonly longestM: number;
  /** what the whole order costs more, in hundredths of the currency, below 0 where less; what has no price is not in it */
  readonly costMore: number;
  /** how many more items of the order have no price */
  readonly unpricedMore: number;
  /** what the rules find against it then and did not, or did not in these words, before; without mere advice */
  readonly breaks: readonly Finding[];
  /** what they found before and find no longer */
  readonly mends: readonly Finding[];
}

/** As a whole plan, without what hangs on no route: cures that are tried, other layouts beside the one taken. */
const planLed = planWith({
  ...lateParts,
  cures: withHints,
  choices: withoutLateParts.choices,
  mends: withoutLateParts.mends,
  blackouts: blackoutTable,
});

/** What everything to buy costs that has a price, in hundredths of the currency, and how many items have none. */
export const orderCost = ({
  shopping,
}: Pick<Plan, 'shopping'>): { readonly cost: number; readonly unpriced: number } => ({
  cost: shopping.reduce((sum, { each = 0, count }) => sum + Math.round(each * count), 0),
  unpriced: shopping.filter(({ each }) => each === undefined).length,
});

const sayingOf = ({ id, level, says }: Finding): string => JSON.stringify([id, level, says]);

/** Findings of the second plan that break a limit, and that the first has not or has in other words. */
export const newlyBroken = (before: Pick<Plan, 'findings'>, after: Pick<Plan, 'findings'>): Finding[] => {
  const known = new Set(before.findings.map(sayingOf));
  return after.findings.filter((finding) => finding.level !== 'advice' && !known.has(sayingOf(finding)));
};

/** Findings of the first plan that broke a limit and that the second has no longer. */
export const newlyMended = (before: Pick<Plan, 'findings'>, after: Pick<Plan, 'findings'>): Finding[] => {
  const left = new Set(after.findings.map(({ id }) => id));
  return before.findings.filter(({ id, level }) => level !== 'advice' && !left.has(id));
};

/**
 * What the whole boat is like with one line led by other ways, held against what she is like now: the plan is made with and
 * without the edits that would do it. Absent where the plan has no such line. Throws UserError where the edits are refused.
 *
 * `layouts`: those of the plan that is shown, by problem hash.
 */
export const ledLine = ({
  boat,
  layouts,
  line,
  ways,
}: {
  readonly boat: Boat;
  readonly layouts: LayoutMap;
  readonly line: LineEntry['id'];
  readonly ways: readonly string[];
}): LedLine | undefined => {
  const before = planLed(boat, layouts);
  const now = before.lines.find(({ id }) => id === line);
  if (now === undefined) return undefined;
  const led = applyEdits(startHistory(boat), leadEdits(before, now, ways)).boat;
  const after = planLed(led, layouts);
  const then = after.lines.find(({ id }) => id === line);
  if (then === undefined) return undefined;
  const [costs, cost] = [orderCost(before), orderCost(after)];
  return {
    lengthM: then.lengthM,
    longestM: then.longestM,
    costMore: cost.cost - costs.cost,
    unpricedMore: cost.unpriced - costs.unpriced,
    breaks: newlyBroken(before, after),
    mends: newlyMended(before, after),
  };
};
