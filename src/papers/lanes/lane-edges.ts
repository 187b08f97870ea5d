import type { LineKind } from '../../core/boat/boat-schema.ts';
import type { LineEntry, Plan } from '../../core/plan-shape.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';

/** A kind of line, or a radio in place of one. */
export type LaneKind = LineKind | 'radio';

/** All lines of one kind between two units, as one stroke of the diagram. */
export interface LaneEdge {
  readonly kind: LaneKind;
  readonly ends: readonly [string, string];
  /** ids of its lines, or of the join that a radio makes */
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

/** Units on one wireless network, each with the one among them that is joined to most: as a rule what makes the network. */
const radioEdges = (plan: Plan): LaneEdge[] => {
  const joined = (unit: string): number =>
    plan.joins.filter(({ members }) => members.some(({ kit }) => kit === unit)).length;
  return plan.joins
    .filter(({ kind }) => kind === 'wifi')
    .flatMap(({ id, members }) => {
      const units = [...new Set(members.map(({ kit }) => kit))];
      const [middle = '', ...others] = units.sort((a, b) => joined(b) - joined(a) || byCodeUnit(a, b));
      return others.map(
        (other): LaneEdge => ({ kind: 'radio', ends: [middle, other], lines: [id], talkers: new Set() }),
      );
    });
};

/** The connections of a plan that lead from one unit to another, those that lie side by side taken as one. */
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
  return [...edges.values(), ...radioEdges(plan)];
};
