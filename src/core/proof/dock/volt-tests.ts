import { dockFigures } from '../../facts/dock-figures.ts';
import type { BusEntry } from '../../plan-shape.ts';
import type { TestEntry, TestSpot } from '../../tests-shape.ts';
import { busTest, busTestId, endSpots, busFacts as facts, windowOf } from './bus-test.ts';
import { type DockInput, placeOf } from './dock-input.ts';

/** Volts at the bus with everything drawing its most and the bank at its lowest: at its feed, and at the unit worst off. */
const lowestVolts = ({ plan }: DockInput, bus: BusEntry) => {
  const solved = new Map(plan.supplies.flatMap(({ at }) => at.map(({ node, volts }) => [node, volts] as const)));
  const ports = bus.volts.map(({ port, lowestV }) => ({ port, volts: solved.get(port) ?? lowestV }));
  const lowest = Math.min(...ports.map(({ volts }) => volts));
  return { feedV: solved.get(bus.id), far: ports.find(({ volts }) => volts === lowest) };
};

/** The farthest drop once more while the engine is cranked and while it charges: the least and the most a unit gets. */
const engineTests = ({ under: _, ...far }: TestEntry, { plan }: DockInput): TestEntry[] =>
  plan.banks.some(({ cranks }) => cranks)
    ? ['cranking', 'charging'].map((what) => ({ ...far, id: `${far.id}:${what}`, what, after: [far.id] }))
    : [];

/** Volts along one bus: polarity before anything is plugged, at feed, ends and farthest drop, and none with the breaker off. */
export const voltTests = (input: DockInput, bus: BusEntry, feedAt: { readonly place?: string }): TestEntry[] => {
  const { feedV, far } = lowestVolts(input, bus);
  const feed = busTestId(bus.id, 'bus-volts', 'feed');
  const passes = windowOf(facts.volts);
  const { belowFeedMostV } = facts.volts;
  const rest = { kind: 'number', unit: 'V', power: 'on', passes, source: facts.volts.source } as const;
  const lossV = feedV === undefined || far === undefined ? undefined : feedV - far.volts;
  const under = {
    test: feed,
    ...(lossV === undefined ? {} : { rightV: lossV }),
    ...(belowFeedMostV === undefined ? {} : { mostV: belowFeedMostV }),
  };
  const away = (spot: TestSpot, place: { readonly place?: string }): TestEntry =>
    busTest(bus, 'bus-volts', spot, { ...rest, ...place, under, after: [feed] });
  const polarity = busTestId(bus.id, 'feed-polarity');
  return [
    busTest(bus, 'feed-polarity', undefined, { ...rest, ...feedAt, after: [busTestId(bus.id, 'data-ohm', 'end-1')] }),
    busTest(bus, 'bus-volts', 'feed', {
      ...rest,
      ...feedAt,
      ...(feedV === undefined
        ? {}
        : { right: { least: feedV, ...(passes.most === undefined ? {} : { most: passes.most }) } }),
      after: [polarity],
    }),
    ...endSpots.map((spot, end) => away(spot, { place: bus.ends[end === 0 ? 0 : 1] })),
    ...(far === undefined ? [] : [{ ...away('far', placeOf(input.index, far.port)), about: [bus.id, far.port] }]),
    ...(far === undefined
      ? []
      : engineTests({ ...away('far', placeOf(input.index, far.port)), about: [bus.id, far.port] }, input)),
    busTest(bus, 'bus-dead', undefined, {
      kind: 'number',
      unit: 'V',
      ...feedAt,
      power: 'off',
      right: { most: dockFigures.deadMostV.value },
      source: dockFigures.deadMostV.source,
      after: [feed],
    }),
  ];
};
