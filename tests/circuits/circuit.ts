import { type DcAnswer, type DcLoad, type DcNet, solveDc } from '../../src/core/network/dc-solve.ts';

/** A converter: it draws at a node of its own stage what the stage behind it takes, divided by its efficiency (a share). */
export interface Converter {
  readonly node: string;
  /** the source of the stage it feeds */
  readonly feeds: string;
  readonly efficiency: number;
}

/** One source with all that hangs on it, the converters apart from the other loads. */
export interface Stage {
  readonly net: DcNet;
  readonly converters: readonly Converter[];
}

/** A whole boat’s direct current: stages, each but the banks’ fed by a converter of another. */
export type Circuit = readonly Stage[];

/** Volts at every node, stage by stage in the order of the circuit. */
export type CircuitVolts = readonly ReadonlyMap<string, number>[];

/** The same circuit with every load so many times as heavy. */
export const timesAsHeavy = (circuit: Circuit, times: number): Circuit =>
  circuit.map(({ net, converters }) => ({
    net: {
      ...net,
      loads: net.loads.map((load) =>
        load.behaves === 'current' ? { ...load, amps: load.amps * times } : { ...load, watts: load.watts * times },
      ),
    },
    converters,
  }));

/** A stage with its converters as the watts they take, and our solver’s answer to it. */
export interface SolvedStage {
  readonly net: DcNet;
  readonly answer: DcAnswer;
}

/** Our solver on a circuit: each stage by itself, those that converters feed first; one that cannot work takes nothing from its converter. */
export const solveStages = (circuit: Circuit): readonly SolvedStage[] => {
  const solved = new Map<string, SolvedStage>();
  const solve = (source: string): SolvedStage => {
    const known = solved.get(source);
    if (known !== undefined) return known;
    const stage = circuit.find(({ net }) => net.source === source);
    if (stage === undefined) throw new Error(`No stage has the source ${source}.`);
    const taken = stage.converters.map(({ node, feeds, efficiency }): DcLoad => {
      const { net: behind, answer } = solve(feeds);
      return { node, behaves: 'power', watts: answer.solved ? (behind.sourceV * answer.sourceA) / efficiency : 0 };
    });
    const net = { ...stage.net, loads: [...stage.net.loads, ...taken] };
    const own = { net, answer: solveDc(net) };
    solved.set(source, own);
    return own;
  };
  return circuit.map(({ net }) => solve(net.source));
};

/** The volts our solver gives a circuit; nothing where one of its stages cannot work. */
export const solveCircuit = (circuit: Circuit): CircuitVolts | undefined => {
  const volts = solveStages(circuit).flatMap(({ answer }) => (answer.solved ? [answer.voltsAt] : []));
  return volts.length === circuit.length ? volts : undefined;
};
