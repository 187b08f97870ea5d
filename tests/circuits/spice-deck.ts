import type { DcLoad } from '../../src/core/network/dc-solve.ts';
import type { Circuit, Stage } from './circuit.ts';

/** A circuit as a netlist. `nodes`: stage by stage what each node of ours is called there. `alive`: what must have more volts than these. */
export interface SpiceDeck {
  readonly text: string;
  readonly nodes: readonly ReadonlyMap<string, string>[];
  readonly alive: readonly { readonly node: string; readonly aboveV: number }[];
}

/** Below this share of its source’s volts a load that holds its power draws no more, for at 0 V it would draw without end: it has fallen. */
const floorShare = 1e-3;

const number = (value: number): string => value.toExponential(17);

const nodesOf = ({ net, converters }: Stage, at: number): ReadonlyMap<string, string> => {
  const names = [
    net.source,
    ...net.edges.flatMap(({ from, to }) => [from, to]),
    ...net.loads.map(({ node }) => node),
    ...converters.map(({ node }) => node),
  ];
  return new Map([...new Set(names)].map((name, n) => [name, `s${at}n${n}`]));
};

/** A cable of no resistance is a source of 0 V, which simulators take and a resistor of 0 ohm they do not. */
const edgeLines = ({ net }: Stage, at: number, name: (node: string) => string): string[] =>
  net.edges.map(({ from, to, loopOhm }, n) =>
    loopOhm === 0
      ? `Vs${at}e${n} ${name(from)} ${name(to)} 0`
      : `Rs${at}e${n} ${name(from)} ${name(to)} ${number(loopOhm)}`,
  );

const loadLine = (load: DcLoad, part: string, node: string, floor: string): string =>
  load.behaves === 'current'
    ? `G${part} ${node} 0 share 0 ${number(load.amps)}`
    : `B${part} ${node} 0 I = V(share) * ${number(load.watts)} / max(V(${node}), ${floor})`;

const stageLines = (circuit: Circuit, at: number, names: SpiceDeck['nodes']): string[] => {
  const stage = circuit[at];
  if (stage === undefined) return [];
  const { net, converters } = stage;
  const name = (node: string): string => names[at]?.get(node) ?? 'nowhere';
  const floor = number(net.sourceV * floorShare);
  return [
    `Vs${at} ${name(net.source)} 0 ${number(net.sourceV)}`,
    ...edgeLines(stage, at, name),
    ...net.loads.map((load, n) => loadLine(load, `s${at}l${n}`, name(load.node), floor)),
    ...converters.map(({ node, feeds, efficiency }, n) => {
      const behind = circuit.findIndex(({ net: other }) => other.source === feeds);
      const factor = number((circuit[behind]?.net.sourceV ?? Number.NaN) / efficiency);
      // the current of a source counts from its plus through itself, so what it gives is below 0
      return `Bs${at}c${n} ${name(node)} 0 I = -I(Vs${behind}) * ${factor} / max(V(${name(node)}), ${floor})`;
    }),
    ...[...(names[at]?.values() ?? [])].map((node) => `.nodeset v(${node})=${number(net.sourceV)}`),
  ];
};

/**
 * A circuit as a netlist in the language of common circuit simulators. All loads grow together with the volts of the node
 * `share`, 1 being the circuit as it is: a simulator that lets them grow from nothing follows the answer at which the boat
 * really works, and falls off it where there is none. Converters stand in it as they are, not as watts.
 */
export const spiceDeck = (title: string, circuit: Circuit): SpiceDeck => {
  const nodes = circuit.map(nodesOf);
  const alive = circuit.flatMap(({ net, converters }, at) => {
    const named = (node: string): string => nodes[at]?.get(node) ?? 'nowhere';
    const floorV = net.sourceV * floorShare;
    return [
      ...net.loads.flatMap((load) => {
        if ((load.behaves === 'current' ? load.amps : load.watts) === 0) return [];
        return [{ node: named(load.node), aboveV: load.behaves === 'current' ? 0 : floorV }];
      }),
      ...converters.map(({ node }) => ({ node: named(node), aboveV: floorV })),
    ];
  });
  const lines = [
    `* ${title}`,
    '.options reltol=1e-9 vntol=1e-9 abstol=1e-12 gmin=1e-15 itl1=5000 itl2=5000',
    'Vshare share 0 1',
    ...circuit.flatMap((_, at) => stageLines(circuit, at, nodes)),
    '.end',
  ];
  return { text: `${lines.join('\n')}\n`, nodes, alive };
};
