import type { BoatIndex } from '../boat/boat-index.ts';
import type { SourceKey } from '../facts/sources.ts';
import type { Finding, Level, PlanDraft } from '../plan-shape.ts';
import type { Reaches } from '../readings/reaches.ts';

/** What a rule may read: the boat by id, the plan before any rule has spoken, the ways of its readings, and what lies beside her file. */
export interface RuleInput {
  readonly index: BoatIndex;
  readonly plan: PlanDraft;
  /** where each reading gets to in the plan's phase, followed once for all rules */
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

/** One rule: what it is called, how grave a breach is, where its limit comes from, and the check itself. */
export interface Rule {
  /** `area/what-is-wrong`, never renamed */
  readonly id: string;
  readonly level: Level;
  readonly title: string;
  readonly sources: readonly SourceKey[];
  readonly check: (input: RuleInput) => readonly Observation[];
}
