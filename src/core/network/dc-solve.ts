import { byCodeUnit } from '../boat/ids.ts';
import { type DcEdge, type DcSpot, dcTree } from './dc-tree.ts';

/** What hangs on a node: a device that draws the same current at any volts, or one that draws more as they fall. */
export type DcLoad =
  | { readonly node: string; readonly behaves: 'current'; readonly amps: number }
  | { readonly node: string; readonly behaves: 'power'; readonly watts: number };

export interface DcNet {
  readonly source: string;
  readonly sourceV: number;
  readonly edges: readonly DcEdge[];
  readonly loads: readonly DcLoad[];
}

/** `ampsIn`: current of each edge by id, positive away from the source. `worst`: the loaded node with the lowest volts. */
export type DcAnswer =
  | {
      readonly solved: true;
      readonly voltsAt: ReadonlyMap<string, number>;
      readonly ampsIn: ReadonlyMap<string, number>;
      readonly sourceA: number;
    }
  | { readonly solved: false; readonly why: 'no operating point'; readonly worst: string };

/**
 * Volts and currents of a DC tree with one source: V_n = V0 - sum over loads m of R_nm (A_m + P_m / V_m), where R_nm is
 * the loop resistance (ohm) of the route that n and m share, A_m amperes, P_m watts. Of two answers the higher one, at
 * which the net really works.
 *
 * Newton from V0 downwards. The equations are convex and, from above, their matrix is an M-matrix, so every step is an
 * upper bound on every answer. Hence two proofs that there is none: the bound at a loaded node is not above 0, or the
 * matrix has lost a positive pivot. For one device that is P > V0² / (4 R) exactly, but for one part in 1e12 at the
 * edge, where the net counts as solved. docs/methods/constant-power.md has the argument.
 */
export const solveDc = ({ source, sourceV, edges, loads }: DcNet): DcAnswer => {
  if (!(sourceV > 0)) throw new Error(`A DC source needs more than 0 V, not ${sourceV}.`);
  const spots = spotsWithLoads(dcTree({ source, edges }), loads, sourceV);
  for (let round = 0; round < 200; round += 1) {
    const missV = drawAtBounds(spots, sourceV);
    if (missV <= 1e-12 * sourceV) return settled(spots);
    const failing = lowerBounds(spots, sourceV);
    if (failing !== undefined) return { solved: false, why: 'no operating point', worst: failing.node };
  }
  throw new Error('The DC net did not settle in 200 rounds.');
};

/** A node at work. `boundV`: no answer has more volts here. `volts`, `inA`: with every load drawing what it draws at its bound. */
interface Working {
  readonly node: string;
  readonly edge: DcEdge | undefined;
  readonly above: Working | undefined;
  readonly loopOhm: number;
  amps: number;
  watts: number;
  boundV: number;
  volts: number;
  inA: number;
  /** everything from here on draws `drawA + slope x V` near the bounds */
  drawA: number;
  slope: number;
}

const spotsWithLoads = (tree: readonly DcSpot[], loads: readonly DcLoad[], sourceV: number): readonly Working[] => {
  const byNode = new Map<string, Working>();
  for (const { node, above, edge } of tree) {
    const fedThrough = above === undefined ? undefined : byNode.get(above.node);
    const fresh = { amps: 0, watts: 0, boundV: sourceV, volts: sourceV, inA: 0, drawA: 0, slope: 0 };
    byNode.set(node, { node, edge, above: fedThrough, loopOhm: edge?.loopOhm ?? 0, ...fresh });
  }
  for (const { node, size, behaves } of loads.map(sized).toSorted((one, other) => one.size - other.size)) {
    const spot = byNode.get(node);
    if (spot === undefined) throw new Error(`A load hangs on ${node}, which no edge reaches.`);
    if (!(size >= 0)) throw new Error(`The load at ${node} must be 0 or more, not ${size}.`);
    if (behaves === 'current') spot.amps += size;
    else spot.watts += size;
  }
  return [...byNode.values()];
};

const sized = (load: DcLoad): { node: string; size: number; behaves: DcLoad['behaves'] } => ({
  node: load.node,
  size: load.behaves === 'current' ? load.amps : load.watts,
  behaves: load.behaves,
});

const isLoaded = (spot: Working): boolean => spot.amps > 0 || spot.watts > 0;

/** Lets every load draw at its bound; returns how far the worst constant-power node then lies from its bound, in volts. */
const drawAtBounds = (spots: readonly Working[], sourceV: number): number => {
  for (const spot of spots) spot.inA = spot.amps + (spot.watts === 0 ? 0 : spot.watts / spot.boundV);
  for (const spot of spots.toReversed()) if (spot.above !== undefined) spot.above.inA += spot.inA;
  let missV = 0;
  for (const spot of spots) {
    spot.volts = (spot.above?.volts ?? sourceV) - spot.loopOhm * spot.inA;
    if (spot.watts > 0) missV = Math.max(missV, Math.abs(spot.boundV - spot.volts));
  }
  return missV;
};

/** One Newton step by elimination from the far ends to the source and back; returns the worst node when it proves that no answer exists. */
const lowerBounds = (spots: readonly Working[], sourceV: number): Working | undefined => {
  for (const spot of spots) {
    spot.drawA = spot.amps + (2 * spot.watts) / spot.boundV;
    spot.slope = -spot.watts / spot.boundV ** 2;
  }
  for (const spot of spots.toReversed()) {
    const pivot = 1 + spot.slope * spot.loopOhm;
    if (!(pivot > 0)) return lowest(spots.filter((other) => isAtOrBeyond(other, spot)));
    if (spot.above === undefined) continue;
    spot.above.drawA += spot.drawA / pivot;
    spot.above.slope += spot.slope / pivot;
  }
  for (const spot of spots) {
    const aboveV = spot.above?.boundV ?? sourceV;
    const pivot = 1 + spot.slope * spot.loopOhm;
    spot.boundV = aboveV - (spot.loopOhm * (spot.drawA + spot.slope * aboveV)) / pivot;
    spot.volts = spot.boundV;
  }
  return spots.some((spot) => isLoaded(spot) && !(spot.boundV > 0)) ? lowest(spots) : undefined;
};

const isAtOrBeyond = (spot: Working, from: Working): boolean => {
  for (let at: Working | undefined = spot; at !== undefined; at = at.above) if (at === from) return true;
  return false;
};

const lowest = (spots: readonly Working[]): Working | undefined =>
  spots.filter(isLoaded).toSorted((one, other) => one.volts - other.volts || byCodeUnit(one.node, other.node))[0];

const settled = (spots: readonly Working[]): DcAnswer => {
  const worst = lowest(spots);
  if (worst !== undefined && !(worst.volts > 0)) {
    return { solved: false, why: 'no operating point', worst: worst.node };
  }
  const ampsIn = new Map<string, number>();
  for (const { edge, inA } of spots) if (edge !== undefined) ampsIn.set(edge.id, inA);
  return {
    solved: true,
    voltsAt: new Map(spots.map(({ node, volts }) => [node, volts])),
    ampsIn,
    sourceA: spots[0]?.inA ?? 0,
  };
};
