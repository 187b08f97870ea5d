import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { emptyPlan } from '../empty-plan.test-helper.ts';
import { joinsOf } from '../joins/joins-of.ts';
import type { BusEntry, Finding, PlanDraft } from '../plan-shape.ts';
import { refitOf } from '../readings/refit.ts';
import type { Rule, RuleInput } from './rule.ts';
import { runRules } from './run-rules.ts';

/** A bus that keeps every limit, for rules that look at figures; a case changes the one figure it is about. */
const soundBus: BusEntry = {
  id: 'nav',
  protocol: 'nmea2000',
  grade: 'light',
  lengthM: 10,
  longestM: 11,
  longestDropM: 2,
  dropsM: 4,
  drops: [
    { port: 'gnss.n2k', lengthM: 1.2, boughtM: 2 },
    { port: 'display.n2k', lengthM: 1.5, boughtM: 2 },
  ],
  farthestM: 14,
  devices: 2,
  len: 5,
  feedPlace: 'locker',
  ends: ['helm', 'mast-base'],
  walk: [
    { place: 'helm', tees: ['display.n2k'] },
    { place: 'locker', via: 'locker-helm', tees: ['feed'] },
    { place: 'mast-base', via: 'locker-mast', tees: ['gnss.n2k'] },
  ],
  supplyV: 11.8,
  volts: [
    { port: 'display.n2k', lowestV: 11.5, dropV: 0.3 },
    { port: 'gnss.n2k', lowestV: 11.6, dropV: 0.2 },
  ],
  thumbDropV: 0.4,
  traffic: { averagePct: 3, worstPct: 4 },
  layout: { hash: '', cost: 1, bound: 1, status: 'proven', work: 1, broken: [] },
};

export interface RuleCase {
  /** the boat; default the small sound one */
  readonly boat?: Boat;
  /** figures of the one bus that differ from a sound one */
  readonly bus?: Partial<BusEntry>;
  /** parts of the plan that differ */
  readonly plan?: Partial<PlanDraft>;
  /** the pictures that lie beside the boat file; default nobody looked */
  readonly pictures?: ReadonlySet<string>;
}

/** What the rules are given in one small case; readings follow the joins of the boat file. */
export const ruleInput = ({ boat = aBoat().boat, bus = {}, plan = {}, pictures }: RuleCase = {}): RuleInput => {
  const index = indexBoat(boat);
  const { phase = 1 } = plan;
  return {
    index,
    ...(pictures === undefined ? {} : { pictures }),
    reaches: refitOf(index, (at) => joinsOf(index, at)).reachesIn(phase),
    plan: {
      ...emptyPlan,
      boat: boat.name,
      phase,
      buses: [{ ...soundBus, ...bus }],
      ...plan,
    },
  };
};

/** What one rule finds in one small case. */
export const findingsOf = (rule: Rule, given?: RuleCase): Finding[] => runRules([rule], ruleInput(given));
