import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DcLoad, DcNet } from '../src/core/network/dc-solve.ts';
import { type Circuit, type CircuitVolts, solveCircuit, solveStages, timesAsHeavy } from './circuits/circuit.ts';
import { mostTimes } from './circuits/most-times.ts';
import { noAnswerProofV } from './circuits/no-answer-proof.ts';
import { randomCircuit } from './circuits/random-circuit.ts';

/** A hair of rounding, V. */
const hairV = 1e-9;

/** Random boats loaded so that they work, from lightly to a hair before they cannot. */
const working: fc.Arbitrary<Circuit> = fc
  .tuple(randomCircuit, fc.constantFrom(0.05, 0.3, 0.6, 0.9, 0.999))
  .map(([circuit, share]) => timesAsHeavy(circuit, share * mostTimes(circuit)));

const wattsOf = (load: DcLoad, volts: number): number => (load.behaves === 'current' ? load.amps * volts : load.watts);

/** One stage changed, chosen by a number. */
const withStage = (circuit: Circuit, which: number, change: (net: DcNet) => DcNet): Circuit =>
  circuit.map((stage, n) => (n === which % circuit.length ? { ...stage, net: change(stage.net) } : stage));

const expectNoneHigher = (low: CircuitVolts, high: CircuitVolts): void => {
  for (const [stage, volts] of low.entries()) {
    for (const [node, value] of volts)
      expect(value).toBeLessThanOrEqual((high[stage]?.get(node) ?? Number.NaN) + hairV);
  }
};

describe('the direct current of any boat', { timeout: 60_000 }, () => {
  it('loses no more anywhere, nor in the cable itself, where one cable is thicker', () => {
    fc.assert(
      fc.property(working, fc.nat(), fc.nat(), fc.integer({ min: 1, max: 99 }), (circuit, which, edge, percent) => {
        const thicker = withStage(circuit, which, (net) => ({
          ...net,
          edges: net.edges.map((entry, n) =>
            n === edge % net.edges.length ? { ...entry, loopOhm: (entry.loopOhm * percent) / 100 } : entry,
          ),
        }));
        const [before, after] = [solveCircuit(circuit), solveCircuit(thicker)];
        if (before === undefined || after === undefined) throw new Error('A thicker cable took the answer away.');
        expectNoneHigher(before, after);
        const at = which % circuit.length;
        const { from = '', to = '' } = circuit[at]?.net.edges[edge % (circuit[at]?.net.edges.length ?? 1)] ?? {};
        const lostV = (volts: CircuitVolts): number =>
          Math.abs((volts[at]?.get(from) ?? Number.NaN) - (volts[at]?.get(to) ?? Number.NaN));
        expect(lostV(after)).toBeLessThanOrEqual(lostV(before) + hairV);
      }),
      { numRuns: 60, seed: 1 },
    );
  });

  it('has more volts nowhere where one load is heavier, and works no more where it did not', () => {
    fc.assert(
      fc.property(working, fc.nat(), fc.nat(), fc.integer({ min: 1, max: 100 }), (circuit, which, load, percent) => {
        const heavier = withStage(circuit, which, (net) => ({
          ...net,
          loads: net.loads.map((entry, n): DcLoad => {
            if (n !== load % net.loads.length) return entry;
            const times = 1 + percent / 100;
            return entry.behaves === 'current'
              ? { ...entry, amps: entry.amps * times }
              : { ...entry, watts: entry.watts * times };
          }),
        }));
        const [before, after] = [solveCircuit(circuit), solveCircuit(heavier)];
        if (before === undefined) throw new Error('The circuit was to work.');
        if (after !== undefined) expectNoneHigher(after, before);
      }),
      { numRuns: 60, seed: 2 },
    );
  });

  it('spends what its banks give: on its units, in its cables and in its converters, to the last milliwatt', () => {
    fc.assert(
      fc.property(working, (circuit) => {
        const stages = solveStages(circuit);
        let givenW = 0;
        let [unitsW, cablesW, convertersW] = [0, 0, 0];
        for (const [n, { net, answer }] of stages.entries()) {
          if (!answer.solved) throw new Error('The circuit was to work.');
          const at = (node: string): number => answer.voltsAt.get(node) ?? Number.NaN;
          const own = circuit[n];
          if (n === 0) givenW = net.sourceV * answer.sourceA;
          for (const load of own?.net.loads ?? []) unitsW += wattsOf(load, at(load.node));
          for (const { from, to, loopOhm } of net.edges) {
            if (loopOhm > 0) cablesW += (at(from) - at(to)) ** 2 / loopOhm;
          }
          for (const { feeds, efficiency } of own?.converters ?? []) {
            const behind = stages.find((stage) => stage.net.source === feeds);
            if (behind?.answer.solved !== true) throw new Error('The circuit was to work.');
            convertersW += behind.net.sourceV * behind.answer.sourceA * (1 / efficiency - 1);
          }
        }
        expect(Math.abs(givenW - unitsW - cablesW - convertersW)).toBeLessThan(1e-3);
      }),
      { numRuns: 60, seed: 3 },
    );
  });

  it('keeps its proportions: twice the volts with twice the amperes, and the same volts in twice the ohms with half of them', () => {
    const scaled = (circuit: Circuit, by: { volts: number; amps: number }): Circuit =>
      circuit.map(({ net, converters }) => ({
        net: {
          ...net,
          sourceV: net.sourceV * by.volts,
          edges: net.edges.map((edge) => ({ ...edge, loopOhm: (edge.loopOhm * by.volts) / by.amps })),
          loads: net.loads.map((load) =>
            load.behaves === 'current'
              ? { ...load, amps: load.amps * by.amps }
              : { ...load, watts: load.watts * by.amps * by.volts },
          ),
        },
        converters,
      }));
    const factor = fc.integer({ min: 20, max: 500 }).map((percent) => percent / 100);
    fc.assert(
      fc.property(working, factor, factor, (circuit, volts, amps) => {
        const [plain, other] = [solveCircuit(circuit), solveCircuit(scaled(circuit, { volts, amps }))];
        for (const [stage, values] of (plain ?? []).entries()) {
          for (const [node, value] of values) {
            expect(Math.abs((other?.[stage]?.get(node) ?? Number.NaN) / volts - value)).toBeLessThan(1e-6);
          }
        }
        expect(other).toBeDefined();
      }),
      { numRuns: 60, seed: 4 },
    );
  });

  it('cannot work where we say so: weights show for each such net that no volts can be its answer', () => {
    let shown = 0;
    fc.assert(
      fc.property(randomCircuit, fc.constantFrom(1e-6, 1e-3, 0.1, 2), (circuit, over) => {
        for (const { net } of solveStages(timesAsHeavy(circuit, 0.5 * mostTimes(circuit)))) {
          const alone = [{ net, converters: [] }];
          const [heavy] = timesAsHeavy(alone, mostTimes(alone) * (1 + over));
          const [light] = timesAsHeavy(alone, mostTimes(alone) * (1 - over / 4));
          if (heavy === undefined || light === undefined) throw new Error('No stage.');
          expect(solveCircuit([heavy])).toBeUndefined();
          expect(noAnswerProofV(heavy.net)).toBeGreaterThan(0);
          expect(noAnswerProofV(light.net)).toBeLessThan(0);
          shown += 1;
        }
      }),
      { numRuns: 40, seed: 5 },
    );
    expect(shown).toBeGreaterThan(60);
  });
});
