import { keptFor } from '../../boat/kept-for.ts';
import { dockFigures } from '../../facts/dock-figures.ts';
import type { BusEntry } from '../../plan-shape.ts';
import type { TestEntry, TestWindow } from '../../tests-shape.ts';
import { busLadder, type LadderCase, type Lifted, middleStep } from './bus-ladder.ts';
import { busTest, busTestId, endSpots, busFacts as facts, windowOf } from './bus-test.ts';
import type { DockInput } from './dock-input.ts';
import { ladderOhm } from './ladder-ohm.ts';
import { voltTests } from './volt-tests.ts';

/** What a sound bus reads at a step: from the least to the most its parts allow, by a hand meter. */
const soundOhm = (bus: BusEntry, step: number, lifted?: Lifted): { right: TestWindow; expect: number } => {
  const reads = (how: LadderCase): number => ladderOhm(busLadder(bus, how, lifted), step);
  const share = dockFigures.meterPct.value / 100;
  return {
    right: {
      least: reads('least') * (1 - share),
      most: reads('most') * (1 + share) + dockFigures.leadsOhm.value,
    },
    expect: reads('usual'),
  };
};

/** Ohm between the data wires, all plugged, the power off; then each terminator lifted once. */
const pairTests = (bus: BusEntry): TestEntry[] => {
  const steps = { 'end-1': 0, middle: middleStep(bus), 'end-2': bus.walk.length - 1 };
  const test = (kind: 'data-ohm' | 'lifted-ohm', spot: keyof typeof steps): TestEntry => {
    const isLifted = kind === 'lifted-ohm';
    const step = steps[spot];
    const { place } = bus.walk[step] ?? {};
    return busTest(bus, kind, spot, {
      kind: 'number',
      unit: 'ohm',
      ...(place === undefined ? {} : { place }),
      power: 'off',
      ...soundOhm(bus, step, isLifted && spot !== 'middle' ? spot : undefined),
      ...(isLifted ? {} : { passes: windowOf(facts.ohm) }),
      source: isLifted ? facts.lifted.source : facts.ohm.source,
      ...(isLifted ? { after: [busTestId(bus.id, 'data-ohm', spot)] } : {}),
    });
  };
  return [
    ...(['end-1', 'middle', 'end-2'] as const)
      // a trunk of one or two places has no middle of its own
      .filter((spot) => spot !== 'middle' || (steps.middle !== 0 && steps.middle !== steps['end-2']))
      .map((spot) => test('data-ohm', spot)),
    ...endSpots.map((spot) => test('lifted-ohm', spot)),
  ];
};

const strayKinds = [
  'high-to-minus',
  'high-to-plus',
  'high-to-shield',
  'low-to-minus',
  'low-to-plus',
  'low-to-shield',
] as const;

const insulationTests = (bus: BusEntry, place: { readonly place?: string }): TestEntry[] => [
  ...strayKinds.map((kind) =>
    busTest(bus, kind, undefined, {
      kind: 'number',
      unit: 'ohm',
      ...place,
      power: 'off',
      right: windowOf(facts.wires),
      passes: { least: facts.wires.faultBelow ?? 0 },
      source: facts.wires.source,
    }),
  ),
  busTest(bus, 'shield-to-ground', undefined, {
    kind: 'number',
    unit: 'ohm',
    ...place,
    power: 'off',
    right: windowOf(facts.shield),
    source: facts.shield.source,
  }),
];

const idleTests = (bus: BusEntry): TestEntry[] =>
  endSpots.flatMap((spot, end) =>
    (['high-idle', 'low-idle'] as const).map((kind) =>
      busTest(bus, kind, spot, {
        kind: 'number',
        unit: 'V',
        place: bus.ends[end === 0 ? 0 : 1],
        power: 'on',
        ...(facts.idle.expect === undefined ? {} : { expect: facts.idle.expect }),
        right: windowOf(facts.idle),
        source: facts.idle.source,
        after: [busTestId(bus.id, 'bus-volts', spot)],
      }),
    ),
  );

const countTests = (bus: BusEntry): TestEntry[] => {
  const after = [busTestId(bus.id, 'bus-volts', 'feed')];
  const rest = { kind: 'count', power: 'on', source: facts.count.source, after } as const;
  const { devices } = bus;
  return [
    busTest(bus, 'devices', undefined, {
      ...rest,
      unit: 'devices',
      expect: devices,
      right: { least: devices, most: devices },
    }),
    busTest(bus, 'errors', undefined, { ...rest, unit: 'errors', expect: 0, right: { most: 0 } }),
  ];
};

/** What hangs on the bus alone: with the power off, and with it on beside the volts. Kept for as long as it is laid as it is. */
const ownTests = keptFor((bus: BusEntry) => ({
  off: [...pairTests(bus), ...insulationTests(bus, feedPlaceOf(bus))],
  on: [...idleTests(bus), ...countTests(bus)],
}));

const feedPlaceOf = ({ feedPlace }: BusEntry): { readonly place?: string } =>
  feedPlace === undefined ? {} : { place: feedPlace };

/** The tests of every bus, with the power off and with it on. */
export const busTests = (
  input: DockInput,
): { readonly off: readonly TestEntry[]; readonly on: readonly TestEntry[] } => {
  const tests = input.plan.buses.map((bus) => {
    const { off, on } = ownTests(bus);
    return { off, on: [...voltTests(input, bus, feedPlaceOf(bus)), ...on] };
  });
  return { off: tests.flatMap(({ off }) => off), on: tests.flatMap(({ on }) => on) };
};
