import { byCodeUnit } from '../boat/ids.ts';

export interface RouteEdge {
  readonly id: string;
  readonly a: string;
  readonly b: string;
  /** length, at least 0 */
  readonly mm: number;
  /** longest possible length; settles which of two equally long routes is taken */
  readonly longestMm?: number;
}

export interface Route {
  readonly mm: number;
  /** edge ids in the order they are passed, from the start */
  readonly edges: readonly string[];
}

interface Label {
  readonly node: string;
  readonly mm: number;
  readonly longestMm: number;
  readonly count: number;
  readonly edge: string;
  readonly before: Label | undefined;
}

/**
 * Shortest route from one node to every node it reaches, itself included (0 mm, no edges); edges run both ways.
 * Of equally long routes the one with the least `longestMm` wins, then the one with fewest edges, then the one whose list
 * of edge ids comes first: the answer does not hang on the order of `edges`, nor its lengths on the direction asked.
 */
export const shortestRoutes = ({
  edges,
  from,
}: {
  readonly edges: readonly RouteEdge[];
  readonly from: string;
}): ReadonlyMap<string, Route> => {
  const leaving = neighbours(edges);
  const settled = new Map<string, Label>();
  const waiting: Label[] = [];
  push(waiting, { node: from, mm: 0, longestMm: 0, count: 0, edge: '', before: undefined });
  for (let label = pop(waiting); label !== undefined; label = pop(waiting)) {
    if (settled.has(label.node)) continue;
    settled.set(label.node, label);
    for (const step of leaving.get(label.node) ?? []) {
      if (settled.has(step.to)) continue;
      push(waiting, {
        node: step.to,
        mm: label.mm + step.mm,
        longestMm: label.longestMm + step.longestMm,
        count: label.count + 1,
        edge: step.edge,
        before: label,
      });
    }
  }
  return new Map([...settled].map(([node, label]) => [node, { mm: label.mm, edges: edgesOf(label) }]));
};

interface Step {
  readonly to: string;
  readonly edge: string;
  readonly mm: number;
  readonly longestMm: number;
}

const neighbours = (edges: readonly RouteEdge[]): ReadonlyMap<string, readonly Step[]> => {
  const leaving = new Map<string, Step[]>();
  const add = (at: string, step: Step): void => {
    const steps = leaving.get(at);
    if (steps === undefined) leaving.set(at, [step]);
    else steps.push(step);
  };
  for (const { id, a, b, mm, longestMm = 0 } of edges) {
    add(a, { to: b, edge: id, mm, longestMm });
    add(b, { to: a, edge: id, mm, longestMm });
  }
  return leaving;
};

const edgesOf = (label: Label): string[] => {
  const edges: string[] = [];
  for (let at = label; at.before !== undefined; at = at.before) edges.push(at.edge);
  return edges.reverse();
};

const compareEdges = (one: Label, other: Label): number => {
  const ones = edgesOf(one);
  const others = edgesOf(other);
  for (const [at, edge] of ones.entries()) {
    const order = byCodeUnit(edge, others[at] ?? '');
    if (order !== 0) return order;
  }
  return 0;
};

const isBefore = (one: Label, other: Label): boolean => {
  if (one.mm !== other.mm) return one.mm < other.mm;
  if (one.longestMm !== other.longestMm) return one.longestMm < other.longestMm;
  if (one.count !== other.count) return one.count < other.count;
  return compareEdges(one, other) < 0;
};

// A binary heap in an array: the children of entry n are 2n + 1 and 2n + 2, the least label stands first.
const push = (heap: Label[], label: Label): void => {
  let at = heap.length;
  heap.push(label);
  while (at > 0) {
    const above = (at - 1) >> 1;
    const parent = heap[above];
    if (parent === undefined || !isBefore(label, parent)) break;
    heap[at] = parent;
    at = above;
  }
  heap[at] = label;
};

const pop = (heap: Label[]): Label | undefined => {
  const least = heap[0];
  const last = heap.pop();
  if (last === undefined || heap.length === 0) return least;
  let at = 0;
  for (let below = lesserChild(heap, 0); below !== undefined; below = lesserChild(heap, at)) {
    if (!isBefore(below.label, last)) break;
    heap[at] = below.label;
    at = below.at;
  }
  heap[at] = last;
  return least;
};

const lesserChild = (heap: readonly Label[], at: number): { at: number; label: Label } | undefined => {
  const left = heap[2 * at + 1];
  const right = heap[2 * at + 2];
  if (left === undefined) return undefined;
  return right !== undefined && isBefore(right, left)
    ? { at: 2 * at + 2, label: right }
    : { at: 2 * at + 1, label: left };
};
