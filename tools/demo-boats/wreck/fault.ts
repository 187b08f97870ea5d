import type { Boat } from '../../../src/core/boat/boat-schema.ts';

/** One thing wrong with the Wreck: the rule that must speak, the ids its finding must be about, and how it is planted. */
export interface Fault {
  readonly rule: string;
  readonly about: readonly string[];
  /** gives a boat with this fault and nothing else changed; faults can be planted in any order */
  readonly plant: (boat: Boat) => Boat;
}
