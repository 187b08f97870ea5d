import type { ShieldEntry } from '../isolation-shape.ts';
import type { LineEntry, PlanDraft, StandingJoin } from '../plan-shape.ts';
import type { Reaches } from '../readings/reaches.ts';
import { chooseSources } from './choose-sources.ts';
import { numberEntries } from './number-entries.ts';
import { pairEntries } from './pair-entries.ts';
import { settingEntries } from './setting-entries.ts';
import { sourceEntries } from './source-entries.ts';

/** What `planSources` looks at: where readings get to in a phase, and what is wired. */
export interface SourcesInput {
  readonly reaches: Reaches;
  readonly joins: readonly StandingJoin[];
  readonly lines: readonly LineEntry[];
  readonly shields: readonly ShieldEntry[];
}

/** Which source counts where, the numbers of engines, tanks and batteries, what to set in each unit, and how each pair is wired. */
export const planSources = ({
  reaches,
  joins,
  lines,
  shields,
}: SourcesInput): Pick<PlanDraft, 'sources' | 'numbers' | 'settings' | 'pairs'> => {
  const chosen = chooseSources(reaches);
  const numbers = numberEntries(reaches);
  return {
    sources: sourceEntries(reaches.network, chosen),
    numbers,
    settings: settingEntries(reaches, chosen, numbers),
    pairs: pairEntries({ index: reaches.network.index, joins, lines, shields }),
  };
};
