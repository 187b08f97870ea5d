import { type DcLoad, type DcNet, solveDc } from '../../src/core/network/dc-solve.ts';

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

/** Our solver on a circuit: each stage by itself, those that converters feed first. Nothing where one of them cannot work. */
export const solveCircuit = (circuit: Circuit): CircuitVolts | undefined => {
  const answers = new Map<string, ReturnType<typeof solveDc>>();
  const answerOf = (source: string): ReturnType<typeof solveDc> => {
    const known = answers.get(source);
    if (known !== undefined) return known;
    const stage = circuit.find(({ net }) => net.source === source);
    if (stage === undefined) throw new Error(`No stage has the source ${source}.`);
    const taken = stage.converters.map(({ node, feeds, efficiency }): DcLoad => {
      const fed = answerOf(feeds);
      const outV = circuit.find(({ net }) => net.source === feeds)?.net.sourceV ?? Number.NaN;
      return { node, behaves: 'power', watts: fed.solved ? (outV * fed.sourceA) / efficiency : 0 };
    });
    const answer = solveDc({ ...stage.net, loads: [...stage.net.loads, ...taken] });
    answers.set(source, answer);
    return answer;
  };
  const volts = circuit.map(({ net }) => answerOf(net.source));
  return volts.every((answer) => answer.solved) ? volts.map(({ voltsAt }) => voltsAt) : undefined;
};
