import type { LineKind } from '../../core/boat/boat-schema.ts';
import type { LineEntry, Plan } from '../../core/plan-shape.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';

/** All lines of one kind between two units, as one stroke of the diagram. */
export interface LaneEdge {
  readonly kind: LineKind;
  readonly ends: readonly [string, string];
  readonly lines: readonly string[];
  /** units at its ends that talk on it */
  readonly talkers: ReadonlySet<string>;
}

const unitOf = (end: string): string => end.slice(0, end.indexOf('.'));

/** Kinds that belong to a trunk, or carry no word at all. */
const otherKinds: ReadonlySet<LineKind> = new Set(['trunk', 'drop', 'feed', 'feeder']);

const talkersOf = (plan: Plan, line: LineEntry): string[] =>
  plan.joins
    .filter((join) => join.lines.includes(line.id))
    .flatMap(({ members }) => members.filter(({ as }) => as === 'talk').map(({ kit }) => kit))
    .filter((kit) => kit === unitOf(line.from) || kit === unitOf(line.to));

/** The lines of a plan that lead from one unit to another, those that lie side by side taken as one. */
export const laneEdges = (plan: Plan): LaneEdge[] => {
  const edges = new Map<string, LaneEdge>();
  for (const line of plan.lines) {
    const ends = [unitOf(line.from), unitOf(line.to)] as const;
    if (otherKinds.has(line.kind) || ends[0] === ends[1]) continue;
    const key = [line.kind, ...[...ends].sort(byCodeUnit)].join(' ');
    const before = edges.get(key);
    edges.set(key, {
      kind: line.kind,
      ends: before?.ends ?? ends,
      lines: [...(before?.lines ?? []), line.id],
      talkers: new Set([...(before?.talkers ?? []), ...talkersOf(plan, line)]),
    });
  }
  return [...edges.values()];
};
