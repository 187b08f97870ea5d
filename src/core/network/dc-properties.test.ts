import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DcAnswer, type DcLoad, type DcNet, solveDc } from './dc-solve.ts';
import type { DcEdge } from './dc-tree.ts';

/** Spread evenly, which fast-check's own doubles are not: most of those are next to nothing. */
const evenly = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 1_000_000 }).map((parts) => least + ((most - least) * parts) / 1_000_000);

describe('a device that draws constant power', () => {
  const one = (watts: number, loopOhm: number, sourceV: number): DcAnswer =>
    solveDc({
      source: 's',
      sourceV,
      edges: [{ id: 'e', from: 's', to: 'd', loopOhm }],
      loads: [{ node: 'd', behaves: 'power', watts }],
    });

  it('has an operating point up to V0² / 4R, there at half the volts, and none above', () => {
    expect(one(36, 1, 12)).toMatchObject({ solved: true });
    const edge = one(36, 1, 12);
    expect(edge.solved && edge.voltsAt.get('d')).toBeCloseTo(6, 4);
    expect(one(36 * (1 - 1e-9), 1, 12).solved).toBe(true);
    expect(one(36 * (1 + 1e-9), 1, 12)).toEqual({ solved: false, why: 'no operating point', worst: 'd' });
    expect(one(1e6, 1, 12).solved).toBe(false);
    expect(one(1e6, 0, 12).solved).toBe(true);
  });

  it('agrees with the closed form wherever the power lies', () => {
    const ohm = evenly(1e-4, 50);
    const share = evenly(0, 2);
    fc.assert(
      fc.property(ohm, share, evenly(1, 60), (loopOhm, shareOfMost, sourceV) => {
        const watts = (shareOfMost * sourceV ** 2) / (4 * loopOhm);
        fc.pre(Math.abs(shareOfMost - 1) > 1e-9);
        const answer = one(watts, loopOhm, sourceV);
        expect(answer.solved).toBe(sourceV ** 2 >= 4 * watts * loopOhm);
        if (!answer.solved) return;
        const closedV = (sourceV + Math.sqrt(sourceV ** 2 - 4 * watts * loopOhm)) / 2;
        expect(Math.abs((answer.voltsAt.get('d') ?? 0) - closedV)).toBeLessThan(1e-6 * sourceV);
      }),
    );
  });
});

/** A random tree of 2 to 9 nodes, node n hanging on an earlier one, with a load of some kind at most nodes. */
const nets = (mostWatts: number): fc.Arbitrary<DcNet> =>
  fc
    .array(
      fc.record({
        hangsOn: fc.nat(),
        loopOhm: evenly(0.01, 1),
        behaves: fc.constantFrom('current' as const, 'power' as const),
        size: evenly(0, 1),
        turned: fc.boolean(),
      }),
      { minLength: 1, maxLength: 8 },
    )
    .map((parts) => ({
      source: 'n0',
      sourceV: 12,
      edges: parts.map(({ hangsOn, loopOhm, turned }, n): DcEdge => {
        const ends = [`n${hangsOn % (n + 1)}`, `n${n + 1}`] as const;
        return { id: `e${n}`, from: ends[turned ? 1 : 0], to: ends[turned ? 0 : 1], loopOhm };
      }),
      loads: parts.map(
        ({ behaves, size }, n): DcLoad =>
          behaves === 'current'
            ? { node: `n${n + 1}`, behaves, amps: size }
            : { node: `n${n + 1}`, behaves, watts: size * mostWatts },
      ),
    }));

/** Gauss-Jordan on the full conductance matrix of all nodes but the source: the resistance from node to node. */
const resistanceMatrix = (net: DcNet): number[][] => {
  const size = net.edges.length;
  const at = (node: string): number => Number(node.slice(1)) - 1;
  const rows = Array.from({ length: size }, (_, r) =>
    Array.from({ length: 2 * size }, (_, c) => Number(c === size + r)),
  );
  const add = (r: number, c: number, siemens: number): void => {
    const row = rows[r];
    if (row !== undefined && c >= 0) row[c] = (row[c] ?? 0) + siemens;
  };
  for (const { from, to, loopOhm } of net.edges) {
    for (const [here, there] of [[at(from), at(to)] as const, [at(to), at(from)] as const]) {
      add(here, here, 1 / loopOhm);
      add(here, there, -1 / loopOhm);
    }
  }
  for (const [p, pivotRow] of rows.entries()) {
    const pivot = pivotRow[p] ?? Number.NaN;
    for (const [c, value] of pivotRow.entries()) pivotRow[c] = value / pivot;
    for (const row of rows) {
      const factor = row === pivotRow ? 0 : (row[p] ?? Number.NaN);
      for (const [c, value] of row.entries()) row[c] = value - factor * (pivotRow[c] ?? Number.NaN);
    }
  }
  return rows.map((row) => row.slice(size));
};

/** Plain repeated substitution from the top: 'none' once a loaded node is at 0 V or less, undefined when still moving. */
const secondOpinion = (net: DcNet): readonly number[] | 'none' | undefined => {
  const ohms = resistanceMatrix(net);
  let volts = net.loads.map(() => net.sourceV);
  for (let round = 0; round < 2000; round += 1) {
    const amps = net.loads.map((load, n) => (load.behaves === 'current' ? load.amps : load.watts / (volts[n] ?? 0)));
    const next = ohms.map((row) => net.sourceV - row.reduce((sum, ohm, n) => sum + ohm * (amps[n] ?? 0), 0));
    const isDead = net.loads.some(
      (load, n) => (load.behaves === 'current' ? load.amps : load.watts) > 0 && !((next[n] ?? 0) > 0),
    );
    if (isDead) return 'none';
    if (next.every((value, n) => Math.abs(value - (volts[n] ?? 0)) < 1e-13)) return next;
    volts = next;
  }
  return undefined;
};

describe('any tree of cables', () => {
  it('gives the volts that the full matrix gives, and no answer exactly where repeated substitution falls through the floor', () => {
    let answers = 0;
    let refusals = 0;
    fc.assert(
      fc.property(nets(40), (net) => {
        const second = secondOpinion(net);
        fc.pre(second !== undefined);
        const first = solveDc(net);
        expect(first.solved).toBe(second !== 'none');
        if (!first.solved || second === undefined || second === 'none') {
          refusals += 1;
          return;
        }
        answers += 1;
        for (const [n, volts] of second.entries()) {
          expect(Math.abs((first.voltsAt.get(`n${n + 1}`) ?? 0) - volts)).toBeLessThan(1e-8);
        }
      }),
      { numRuns: 200 },
    );
    expect(answers).toBeGreaterThan(20);
    expect(refusals).toBeGreaterThan(20);
  });

  it('loses no current at a node and no volts along an edge', () => {
    fc.assert(
      fc.property(nets(3), (net) => {
        const answer = solveDc(net);
        if (!answer.solved) return;
        const at = (node: string): number => answer.voltsAt.get(node) ?? Number.NaN;
        let drawnA = 0;
        for (const load of net.loads) drawnA += load.behaves === 'current' ? load.amps : load.watts / at(load.node);
        expect(answer.sourceA).toBeCloseTo(drawnA, 9);
        for (const { id, from, to, loopOhm } of net.edges) {
          const amps = answer.ampsIn.get(id) ?? Number.NaN;
          expect(amps).toBeGreaterThanOrEqual(0);
          expect(Math.abs(at(from) - at(to))).toBeCloseTo(loopOhm * amps, 9);
        }
      }),
    );
  });

  it('never has more volts anywhere for a heavier load or a thinner cable', () => {
    fc.assert(
      fc.property(nets(3), fc.nat(), fc.nat(), (net, whichLoad, whichEdge) => {
        const before = solveDc(net);
        const loads = net.loads.map((load, n): DcLoad => {
          if (n !== whichLoad % net.loads.length) return load;
          return load.behaves === 'current' ? { ...load, amps: load.amps + 0.2 } : { ...load, watts: load.watts + 1 };
        });
        const edges = net.edges.map((edge, n) =>
          n === whichEdge % net.edges.length ? { ...edge, loopOhm: edge.loopOhm * 1.3 } : edge,
        );
        for (const worse of [solveDc({ ...net, loads }), solveDc({ ...net, edges })]) {
          if (!worse.solved) continue;
          if (!before.solved) throw new Error('the lighter net had no operating point and the heavier one has');
          for (const [node, volts] of worse.voltsAt) {
            expect(volts).toBeLessThanOrEqual((before.voltsAt.get(node) ?? 0) + 1e-9);
          }
        }
      }),
    );
  });

  it('never loses more anywhere when a load of constant current moves one stop nearer the source', () => {
    fc.assert(
      fc.property(nets(0), fc.nat(), (net, which) => {
        const n = which % net.edges.length;
        const edge = net.edges[n];
        if (edge === undefined) return;
        const outer = `n${n + 1}`;
        const inner = edge.from === outer ? edge.to : edge.from;
        const before = solveDc(net);
        const after = solveDc({
          ...net,
          loads: net.loads.map((load) => (load.node === outer ? { ...load, node: inner } : load)),
        });
        if (!before.solved) return;
        if (!after.solved) throw new Error('moving a load nearer took the operating point away');
        for (const [node, volts] of after.voltsAt) {
          expect(volts).toBeGreaterThanOrEqual((before.voltsAt.get(node) ?? 0) - 1e-9);
        }
      }),
    );
  });

  it('loses at least as much with constant power as with the current that power would draw at the source', () => {
    fc.assert(
      fc.property(nets(3), (net) => {
        const power = solveDc(net);
        if (!power.solved) return;
        const asCurrent = net.loads.map(
          (load): DcLoad =>
            load.behaves === 'current' ? load : { node: load.node, behaves: 'current', amps: load.watts / net.sourceV },
        );
        const current = solveDc({ ...net, loads: asCurrent });
        if (!current.solved) throw new Error('constant power had an operating point and constant current has none');
        for (const [node, volts] of power.voltsAt) {
          expect(volts).toBeLessThanOrEqual((current.voltsAt.get(node) ?? 0) + 1e-9);
        }
      }),
    );
  });

  it('gives the same figures to the last bit however its lists are ordered', () => {
    fc.assert(
      fc.property(nets(3), (net) => {
        const turned = { ...net, edges: net.edges.toReversed(), loads: net.loads.toReversed() };
        expect(solveDc(turned)).toEqual(solveDc(net));
      }),
    );
  });
});
