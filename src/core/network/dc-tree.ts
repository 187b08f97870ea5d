import { byCodeUnit } from '../boat/ids.ts';

/** One cable of a DC net; `loopOhm` counts the way out and back. */
export interface DcEdge {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly loopOhm: number;
}

/** A node with the edge that leads to it from the source's side; `above` is absent at the source. */
export interface DcSpot {
  readonly node: string;
  readonly above?: DcSpot;
  readonly edge?: DcEdge;
}

/**
 * The nodes of a DC tree, each after the one it is fed through, in an order that does not hang on the order of `edges`.
 * Throws when the edges are no tree around the source or a resistance is no number from 0 up: a fault in the caller.
 */
export const dcTree = ({
  source,
  edges,
}: {
  readonly source: string;
  readonly edges: readonly DcEdge[];
}): readonly DcSpot[] => {
  const atNode = edgesAtNodes(edges);
  const spots: DcSpot[] = [{ node: source }];
  const met = new Set([source]);
  for (const above of spots) {
    for (const edge of atNode.get(above.node) ?? []) {
      if (edge === above.edge) continue;
      const node = edge.from === above.node ? edge.to : edge.from;
      if (met.has(node)) throw new Error(`Edge ${edge.id} closes a ring at ${node}; a DC net must be a tree.`);
      met.add(node);
      spots.push({ node, above, edge });
    }
  }
  if (spots.length !== edges.length + 1) throw new Error(`Some edges of the DC net do not hang on ${source}.`);
  return spots;
};

const edgesAtNodes = (edges: readonly DcEdge[]): ReadonlyMap<string, readonly DcEdge[]> => {
  const atNode = new Map<string, DcEdge[]>();
  for (const edge of edges.toSorted((one, other) => byCodeUnit(one.id, other.id))) {
    if (!(edge.loopOhm >= 0 && edge.loopOhm < Number.POSITIVE_INFINITY)) {
      throw new Error(`Edge ${edge.id} has no usable resistance: ${edge.loopOhm}.`);
    }
    for (const node of [edge.from, edge.to]) atNode.set(node, [...(atNode.get(node) ?? []), edge]);
  }
  return atNode;
};
