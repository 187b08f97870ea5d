import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Boat, boatSchema } from '../src/core/boat/boat-schema.ts';
import { quickPlan } from '../src/core/quick-plan.test-helper.ts';
import { wreck } from '../tools/demo-boats/wreck/index.ts';
import { anExample } from './an-example.test-helper.ts';
import { askNgspice, type Followed, hasNgspice, steps } from './circuits/ask-ngspice.ts';
import { boatCircuit } from './circuits/boat-circuit.ts';
import { type Circuit, type CircuitVolts, solveCircuit, timesAsHeavy } from './circuits/circuit.ts';
import { mostTimes } from './circuits/most-times.ts';
import { publishedNetworks } from './circuits/published-networks.ts';
import { randomCircuit } from './circuits/random-circuit.ts';

/** Agreement asked for at every node, V. */
const toleranceV = 1e-3;

/** The largest difference between two answers about one circuit, V; without end where only one of them has volts. */
const apartV = (ours: CircuitVolts | undefined, theirs: CircuitVolts | undefined): number => {
  if (ours === undefined || theirs === undefined) return ours === theirs ? 0 : Number.POSITIVE_INFINITY;
  const differences = ours.flatMap((stage, at) =>
    [...stage].map(([node, volts]) => Math.abs(volts - (theirs[at]?.get(node) ?? Number.NaN))),
  );
  return differences.some(Number.isNaN) ? Number.POSITIVE_INFINITY : Math.max(0, ...differences);
};

/** The largest difference while the loads of a circuit grow from nothing to what they are. */
const apartOnTheWayV = (circuit: Circuit, theirs: Followed | undefined): number =>
  Math.max(
    ...Array.from({ length: steps + 1 }, (_, step) =>
      apartV(solveCircuit(timesAsHeavy(circuit, step / steps)), theirs?.[step]),
    ),
  );

/** Random circuits, loaded to a share of the most each of them bears, the shares by turns. */
const loadedTo = (shares: readonly number[], count: number, seed: number): Circuit[] =>
  fc
    .sample(randomCircuit, { numRuns: count, seed })
    .map((circuit, n) => timesAsHeavy(circuit, mostTimes(circuit) * (shares[n % shares.length] ?? 1)));

/** Volts in a plan that the simulator does not give: each node of each supply, and the far end of each feed. */
const unlike = (boat: Boat): { compared: number; apart: string[] } => {
  const made = quickPlan(boat);
  const theirs = askNgspice([boatCircuit(boat, made)])[0]?.at(-1);
  const stageOf = (panel: string): number => made.supplies.findIndex(({ at }) => at.some(({ node }) => node === panel));
  const claims = [
    ...made.supplies.flatMap(({ at }, stage) => at.map((entry) => ({ ...entry, stage }))),
    ...made.feeds.map(({ to, panel, atEndV = Number.NaN }) => ({ node: to, volts: atEndV, stage: stageOf(panel) })),
  ];
  const apart = claims.filter(
    ({ node, volts, stage }) => !(Math.abs(volts - (theirs?.[stage]?.get(node) ?? Number.NaN)) < toleranceV),
  );
  return { compared: claims.length, apart: apart.map(({ node, volts }) => `${node} at ${volts} V`) };
};

/** The boat with her backbones settled as they are, so that no other is laid where the volts change. */
const settled = (boat: Boat): Boat => {
  const layouts = quickPlan(boat).buses.map(({ id, grade, walk }) => [id, { grade, walk, state: 'fixed' }]);
  return boatSchema.parse({ ...boat, pins: { ...boat.pins, layouts: Object.fromEntries(layouts) } });
};

/** The boat with a feeder of her panel so thin that it sags. */
const sagging = (boat: Boat, panel: string): Boat => ({
  ...boat,
  supply: {
    ...boat.supply,
    panels: boat.supply.panels.map((entry) =>
      entry.id === panel && entry.feeder !== undefined ? { ...entry, feeder: { ...entry.feeder, areaMm2: 4 } } : entry,
    ),
  },
});

describe.skipIf(!hasNgspice)('a circuit simulator from elsewhere', () => {
  test('gives the same volts at every node of 200 random boats, up to a hair before they cannot work', {
    timeout: 120_000,
  }, () => {
    const circuits = loadedTo([0.1, 0.4, 0.7, 0.9, 0.99, 0.9999, 1 - 1e-6, 1 - 1e-8], 200, 1);
    const theirs = askNgspice(circuits);
    for (const [n, circuit] of circuits.entries()) {
      expect(theirs[n]?.at(-1), `circuit ${n} works`).toBeDefined();
      expect(apartOnTheWayV(circuit, theirs[n]), `circuit ${n}`).toBeLessThan(toleranceV);
    }
  });

  test('finds no volts for the same loads where we say that a boat cannot work, and falls at the same share of them', {
    timeout: 120_000,
  }, () => {
    const circuits = loadedTo([1 + 1e-6, 1.0001, 1.01, 1.3, 3], 100, 2);
    const theirs = askNgspice(circuits);
    for (const [n, circuit] of circuits.entries()) {
      expect(theirs[n]?.at(-1), `circuit ${n} cannot work`).toBeUndefined();
      expect(apartOnTheWayV(circuit, theirs[n]), `circuit ${n}`).toBeLessThan(toleranceV);
    }
  });

  test.each(publishedNetworks)('prints the figure of $name', ({ circuit, lostV, toleranceV: withinV, works }) => {
    const answer = askNgspice([circuit])[0]?.at(-1)?.[0];
    expect(answer !== undefined).toBe(works);
    const sourceV = circuit[0]?.net.sourceV ?? Number.NaN;
    for (const [node, lost] of Object.entries(lostV)) {
      expect(Math.abs(sourceV - (answer?.get(node) ?? Number.NaN) - lost), node).toBeLessThanOrEqual(withinV);
    }
  });

  test('notices one cable in a boat that is 1 % too long', () => {
    const [circuit] = loadedTo([0.9], 1, 3);
    if (circuit === undefined) throw new Error('No circuit was drawn.');
    const longer = circuit.map(({ net, converters }, at) => ({
      net: {
        ...net,
        edges: net.edges.map((edge, n) => (at + n === 0 ? { ...edge, loopOhm: edge.loopOhm * 1.01 } : edge)),
      },
      converters,
    }));
    expect(apartOnTheWayV(circuit, askNgspice([longer])[0])).toBeGreaterThan(toleranceV);
  });

  test.each([
    ['gannet', 40],
    ['sandpiper', 20],
    ['bonxie', 150],
    ['wreck', 170],
  ])(
    'has the volts that the plan of the %s prints at every panel, converter and port',
    { timeout: 60_000 },
    (name, atLeast) => {
      // without the one bank that cannot work: a simulator that finds no volts there finds none at all
      const { compared, apart } = unlike(name === 'wreck' ? wreck('power/cannot-work') : anExample(name));

      expect(apart).toEqual([]);
      expect(compared).toBeGreaterThanOrEqual(atLeast);
    },
  );

  test('sees a sagging panel feeder at the far end of the backbone, as the plan does', { timeout: 60_000 }, () => {
    const sound = settled(anExample('gannet'));
    const sags = sagging(sound, 'main');
    const volts = (boat: Boat, at: string): number =>
      quickPlan(boat)
        .supplies.flatMap((supply) => supply.at)
        .find(({ node }) => node === at)?.volts ?? Number.NaN;
    const lostV = volts(sound, 'main') - volts(sags, 'main');
    expect(lostV).toBeGreaterThan(0.5);
    expect(volts(sound, 'gnss.n2k') - volts(sags, 'gnss.n2k')).toBeCloseTo(lostV, 5);
    expect(unlike(sags).apart).toEqual([]);
  });
});
