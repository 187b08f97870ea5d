import type { BoatIndex } from '../boat/boat-index.ts';
import type { SourceKey } from '../facts/sources.ts';
import type { BoatWithoutNeeds } from '../joins/standing-boat.ts';
import type { Finding, LaidPlan, Level, PlanDraft } from '../plan-shape.ts';
import type { Reaches } from '../readings/reaches.ts';

/** What a rule may read that looks at a boat as she is laid: neither what is needed on her nor what follows from that. */
export interface LaidInput {
  readonly index: BoatIndex & { readonly boat: BoatWithoutNeeds };
  readonly plan: LaidPlan;
  /** where each reading gets to in the plan's phase, followed once for all rules */
  readonly reaches: Reaches;
}

/** What a rule may read that looks at all: the boat by id, the plan before any rule has spoken, and what lies beside her file. */
export interface RuleInput {
  readonly index: BoatIndex;
  readonly plan: PlanDraft;
  readonly reaches: Reaches;
  /** hashes of the pictures that lie beside the boat file; absent where nobody looked */
  readonly pictures?: ReadonlySet<string>;
}

/**
 * One thing a rule found. `about` holds the ids it concerns, `apart` what tells two findings on the same things apart
 * (an instance, a reading). `level` overrides the rule's own where one rule speaks of graver and lighter cases.
 */
export interface Observation extends Pick<Finding, 'says' | 'measured' | 'limit' | 'cure' | 'cures'> {
  readonly about: readonly string[];
  readonly apart?: readonly (string | number)[];
  readonly level?: Level;
}

interface RuleHead {
  /** `area/what-is-wrong`, never renamed */
  readonly id: string;
  readonly level: Level;
  readonly title: string;
  readonly sources: readonly SourceKey[];
}

/** A rule whose findings stand for as long as the boat lies as she does, whatever is needed on her, ordered or accepted. */
export interface LaidRule extends RuleHead {
  readonly looksAt?: never;
  readonly check: (input: LaidInput) => readonly Observation[];
}

/** A rule that is asked anew after every edit. */
export interface WholePlanRule extends RuleHead {
  readonly looksAt: 'whole-plan';
  readonly check: (input: RuleInput) => readonly Observation[];
}

/** One rule: what it is called, how grave a breach is, where its limit comes from, what it looks at, and the check itself. */
export type Rule = LaidRule | WholePlanRule;
