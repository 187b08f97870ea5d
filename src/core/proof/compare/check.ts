import type { SourceKey } from '../../facts/sources.ts';
import type { Level } from '../../plan-shape.ts';
import type { ProofFinding } from './proof-report.ts';
import type { Seen } from './seen.ts';

/** What a check found: a finding before it has its id. `apart` tells two findings about the same things from each other. */
export type Found = Omit<ProofFinding, 'id' | 'check' | 'level'> & {
  readonly level?: Level;
  readonly apart?: string | number;
};

/** One thing that is looked for in what was watched. */
export interface Check {
  readonly id: string;
  /** in one sentence, what it is when it is found */
  readonly title: string;
  readonly level: Level;
  readonly sources: readonly SourceKey[];
  find(seen: Seen): readonly Found[];
}
