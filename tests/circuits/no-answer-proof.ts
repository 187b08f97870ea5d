import { type DcNet, solveDc } from '../../src/core/network/dc-solve.ts';
import { timesAsHeavy } from './circuit.ts';
import { mostTimes } from './most-times.ts';

/** Loads by node, and the resistance (ohm) of what the routes of two loaded nodes to the source have in common. */
interface Loaded {
  readonly nodes: readonly string[];
  readonly amps: readonly number[];
  readonly watts: readonly number[];
  readonly sharedOhm: readonly (readonly number[])[];
}

const routesIn = ({ source, edges }: DcNet): ((node: string) => ReadonlyMap<string, number>) => {
  const ends = new Map<string, { id: string; to: string; ohm: number }[]>();
  for (const { id, from, to, loopOhm } of edges) {
    ends.set(from, [...(ends.get(from) ?? []), { id, to, ohm: loopOhm }]);
    ends.set(to, [...(ends.get(to) ?? []), { id, to: from, ohm: loopOhm }]);
  }
  const routes = new Map<string, ReadonlyMap<string, number>>([[source, new Map()]]);
  for (const [node, route] of routes) {
    for (const { id, to, ohm } of ends.get(node) ?? [])
      if (!routes.has(to)) routes.set(to, new Map([...route, [id, ohm]]));
  }
  return (node) => routes.get(node) ?? new Map();
};

const loadedNodes = (net: DcNet): Loaded => {
  const nodes = [...new Set(net.loads.map(({ node }) => node))];
  const route = routesIn(net);
  const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
  const drawn = (node: string, behaves: 'current' | 'power'): number =>
    sum(
      net.loads
        .filter((load) => load.node === node && load.behaves === behaves)
        .map((load) => (load.behaves === 'current' ? load.amps : load.watts)),
    );
  return {
    nodes,
    amps: nodes.map((node) => drawn(node, 'current')),
    watts: nodes.map((node) => drawn(node, 'power')),
    sharedOhm: nodes.map((one) => {
      const own = route(one);
      return nodes.map((other) => sum([...route(other)].map(([id, ohm]) => (own.has(id) ? ohm : 0))));
    }),
  };
};

const dot = (one: readonly number[], other: readonly number[]): number =>
  one.reduce((sum, value, n) => sum + value * (other[n] ?? Number.NaN), 0);

/**
 * What each load weighs where the net is just about to fall: where loads of constant power can no longer be served, the
 * vector w for which w R diag(P / V²) = w; where a load of constant current comes to 0 V first, e + w R diag(P / V²) = w with
 * e at its node.
 */
const weightsAtTheFall = (
  { nodes, watts, sharedOhm }: Loaded,
  voltsAt: ReadonlyMap<string, number>,
  first?: string,
): number[] => {
  const steep = nodes.map((node, n) => (watts[n] ?? 0) / (voltsAt.get(node) ?? Number.NaN) ** 2);
  const own = nodes.map((node) => (first === undefined ? 1 : Number(node === first)));
  let weights = own;
  for (let round = 0; round < 300; round += 1) {
    const handed = sharedOhm.map((row, n) => dot(weights, row) * (steep[n] ?? 0));
    const size = Math.max(...handed);
    if (first !== undefined) weights = handed.map((weight, n) => weight + (own[n] ?? 0));
    else if (size > 0) weights = handed.map((weight) => weight / size);
  }
  return weights;
};

/**
 * By how many volts a set of weights w from 0 up shows that a net has no answer; above 0 it is proven. Every answer has
 * V_n = V0 - sum R_nm (A_m + P_m / V_m). Weighed and summed, with c_m = sum w_n R_nm:
 * sum w_n (V0 - sum R_nm A_m) = sum (w_m V_m + c_m P_m / V_m), and the right side is nowhere less than
 * sum 2 sqrt(w_m c_m P_m). Where the left is less than that, no volts above 0 can be an answer. For one device of constant
 * power this is P > V0² / (4 R), the most power a wire can hand over.
 */
const shownByV = ({ sourceV }: DcNet, { amps, watts, sharedOhm }: Loaded, weights: readonly number[]): number => {
  const left = dot(
    weights,
    sharedOhm.map((row) => sourceV - dot(row, amps)),
  );
  const least = sharedOhm.map((row, m) => 2 * Math.sqrt((weights[m] ?? 0) * dot(weights, row) * (watts[m] ?? 0)));
  return (least.reduce((sum, value) => sum + value, 0) - left) / weights.reduce((sum, value) => sum + value, 0);
};

/** The most volts by which it can be shown that a net has no answer, by sums alone and by nothing our solver says of it. */
export const noAnswerProofV = (net: DcNet): number => {
  const loaded = loadedNodes(net);
  const circuit = [{ net, converters: [] }];
  // our solver may help to find the weights: whether they prove anything is checked by the sums
  const [eased] = timesAsHeavy(circuit, mostTimes(circuit) * (1 - 1e-11));
  const answer = eased === undefined ? undefined : solveDc(eased.net);
  if (answer?.solved !== true) throw new Error('A net with lighter loads was to work.');
  const voltsOf = (node: string): number => answer.voltsAt.get(node) ?? Number.NaN;
  const lowest = loaded.nodes.reduce((low, node) => (voltsOf(node) < voltsOf(low) ? node : low));
  const tries = [weightsAtTheFall(loaded, answer.voltsAt), weightsAtTheFall(loaded, answer.voltsAt, lowest)];
  return Math.max(...tries.map((weights) => shownByV(net, loaded, weights)));
};
