import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit, splitDotted } from '../boat/ids.ts';
import { lengthMm } from '../boat/measure.ts';
import { smallPartPrices, teesOfBackbone } from '../facts/buying.ts';
import { labour } from '../facts/labour.ts';
import { typicalPrices } from '../facts/prices.ts';
import type { PhaseEntry, Provide } from '../phases-shape.ts';
import type { BusEntry, LineEntry, WayEntry } from '../plan-shape.ts';
import { priceList } from '../prices/price-list.ts';

/** The last phase as planned, and how full the ways are and what the buses have in each phase before it. */
export interface ProvideInput {
  readonly index: BoatIndex;
  readonly lines: readonly LineEntry[];
  readonly ways: readonly WayEntry[];
  readonly buses: readonly BusEntry[];
  readonly earlier: readonly (Pick<PhaseEntry, 'phase' | 'buses'> & { readonly ways: readonly WayEntry[] })[];
}

interface Site extends ProvideInput {
  readonly prices: ReturnType<typeof priceList>;
  readonly perHour: number;
  /** the phase of the work on which something that comes can be provided for: the last one before it, if there is one */
  readonly nowFor: (until: number) => ProvideInput['earlier'][number] | undefined;
}

/** From which phase a unit that comes is aboard; 0 for what is there already. */
const comesIn = (index: BoatIndex, dotted: string): number => {
  const unit = index.kit.get(splitDotted(dotted).kit);
  return unit?.fate === 'comes' ? (unit.phase ?? 1) : 0;
};

/** The phase in which a line is laid: with the later of its two units. A stretch of trunk lies from the first. */
const laidIn = (index: BoatIndex, { kind, from, to }: LineEntry): number =>
  kind === 'trunk' ? 0 : Math.max(comesIn(index, from), comesIn(index, to));

const leastHours = (id: string): number => labour.find((task) => task.id === id)?.professionalH[0] ?? 0;

/** Every pair of a key and a phase once, with what falls under it. */
const grouped = <Entry>(
  entries: readonly Entry[],
  keyOf: (entry: Entry) => string,
): (readonly [Entry, readonly Entry[]])[] => {
  const groups = new Map<string, Entry[]>();
  for (const entry of entries) groups.set(keyOf(entry), [...(groups.get(keyOf(entry)) ?? []), entry]);
  return [...groups.values()].flatMap((group) => group.slice(0, 1).map((first) => [first, group] as const));
};

/** A tee left free where the tee of a later unit will stand, on a bus that is laid by then; less those already free there. */
const teesFor = (site: Site): Provide[] => {
  const { index, prices, perHour } = site;
  const later = site.buses.flatMap((bus) =>
    bus.walk.flatMap(({ place, tees }) =>
      tees
        .filter((tee) => tee !== 'feed' && !tee.startsWith('spare@'))
        .map((tee) => ({ bus: bus.id, place, unit: splitDotted(tee).kit, until: comesIn(index, tee) })),
    ),
  );
  const wantedFree = (bus: BusEntry | undefined, place: string): number =>
    bus?.walk
      .filter((step) => step.place === place)
      .flatMap(({ tees }) => tees.filter((tee) => tee.startsWith('spare@'))).length ?? 0;
  return grouped(later, ({ bus, place, until }) => `${bus} ${place} ${until}`).flatMap(
    ([{ bus, place, until }, group]) => {
      const now = site.nowFor(until);
      const laid = now?.buses.find(({ id }) => id === bus);
      if (now === undefined || laid === undefined) return [];
      const free =
        (laid.spares.find((spare) => spare.place === place)?.count ?? 0) -
        wantedFree(
          site.buses.find(({ id }) => id === bus),
          place,
        );
      const count = group.length - Math.max(0, free);
      if (count <= 0) return [];
      const cap = prices.each('dust-cap', smallPartPrices.dustCap);
      const hours = leastHours('backbone-10') / teesOfBackbone.value;
      return [
        {
          id: `tee:${bus}:${place}:${until}`,
          does: 'tee',
          at: place,
          phase: now.phase,
          until,
          for: group.map(({ unit }) => unit).sort(byCodeUnit),
          bus,
          count,
          ...(cap === undefined ? {} : { now: count * (prices.tee + cap) }),
          later: Math.round(count * (prices.tee + hours * perHour)),
        },
      ];
    },
  );
};

/** Ways in which a cable is drawn rather than laid. */
const drawnKinds: ReadonlySet<string> = new Set(['conduit', 'mast']);

const laterLines = ({ index, lines }: Site): { line: LineEntry; until: number }[] =>
  lines
    .filter(({ kept }) => kept === undefined)
    .map((line) => ({ line, until: laidIn(index, line) }))
    .filter(({ until }) => until > 0);

/** A messenger line through each conduit and mast, and each way opened for hours, that a later line takes. */
const messengersFor = (site: Site): Provide[] => {
  const through = laterLines(site).flatMap(({ line, until }) =>
    [...new Set(line.ways)].flatMap((id) => {
      const way = site.index.ways.get(id);
      return way === undefined ? [] : [{ way, line, until }];
    }),
  );
  return grouped(through, ({ way, until }) => `${way.id} ${until}`).flatMap(([{ way, until }, group]) => {
    const now = site.nowFor(until);
    const isClosed = way.kind === 'mast' || (way.hours ?? 0) > 0;
    if (now === undefined || !(isClosed || drawnKinds.has(way.kind))) return [];
    const hours = way.hours ?? (way.kind === 'mast' ? leastHours('mast-cable-up') : undefined);
    const perM = site.prices.each('messenger-line', smallPartPrices.messengerPerM);
    return [
      {
        id: `messenger:${way.id}:${until}`,
        does: 'messenger',
        at: way.id,
        phase: now.phase,
        until,
        for: group.map(({ line }) => line.id).sort(byCodeUnit),
        ...(isClosed ? { closed: true } : {}),
        ...(perM === undefined ? {} : { now: Math.ceil(lengthMm(way.length).longestMm / 1000) * perM }),
        ...(hours === undefined ? {} : { later: Math.round(hours * site.perHour) }),
      },
    ];
  });
};

const isTight = (entry: WayEntry | undefined): boolean => entry?.verdict === 'doubt' || entry?.verdict === 'refused';

/** A wider pipe where what comes later would pass the fill that what is there now keeps. */
const conduitsFor = (site: Site): Provide[] => {
  const later = new Map(laterLines(site).map(({ line, until }) => [line.id, until]));
  return site.ways.flatMap((entry): Provide[] => {
    const lines = entry.lines.filter((line) => later.has(line));
    const until = Math.max(0, ...lines.map((line) => later.get(line) ?? 0));
    const now = site.nowFor(until);
    if (now === undefined || !isTight(entry) || isTight(now.ways.find(({ id }) => id === entry.id))) return [];
    return [
      {
        id: `conduit:${entry.id}:${until}`,
        does: 'conduit',
        at: entry.id,
        phase: now.phase,
        until,
        for: lines.filter((line) => later.get(line) === until),
        ...(entry.fitsAtMm === undefined ? {} : { wideMm: entry.fitsAtMm }),
        later: Math.round(leastHours('pull-full') * site.perHour),
      },
    ];
  });
};

/** A circuit that feeds only what comes later is kept free till then. */
const circuitsFor = (site: Site): Provide[] =>
  [...site.index.panels.values()].flatMap((panel) =>
    panel.circuits.flatMap((circuit): Provide[] => {
      const comes = circuit.feeds.map((target) => (target.includes('.') ? comesIn(site.index, target) : 0));
      const until = comes.length === 0 ? 0 : Math.min(...comes);
      const now = site.nowFor(until);
      if (now === undefined) return [];
      const units = [...new Set(circuit.feeds.map((target) => splitDotted(target).kit))].sort(byCodeUnit);
      const at = `${panel.id}.${circuit.id}`;
      return [{ id: `circuit:${at}:${until}`, does: 'circuit', at, phase: now.phase, until, for: units, now: 0 }];
    }),
  );

/** A plug of a unit aboard that a later line will take. */
const plugsFor = (site: Site): Provide[] =>
  laterLines(site).flatMap(({ line, until }): Provide[] => {
    const now = site.nowFor(until);
    if (now === undefined || line.kind === 'drop' || line.kind === 'feed') return [];
    const ends = [line.from, line.to].filter((end) => {
      const kit = end.includes('.') ? site.index.kit.get(splitDotted(end).kit) : undefined;
      return kit !== undefined && comesIn(site.index, end) <= now.phase;
    });
    return ends.map((at) => ({
      id: `plug:${at}:${until}:${line.id}`,
      does: 'plug',
      at,
      phase: now.phase,
      until,
      for: [line.id],
      now: 0,
    }));
  });

/**
 * What to provide in an earlier phase for what comes in a later one, from lines, ways and trunks of the last phase. Costs are
 * in hundredths of the currency; a circuit or a plug kept free costs nothing. Sorted by id.
 */
export const provideNow = (input: ProvideInput): Provide[] => {
  const site: Site = {
    ...input,
    prices: priceList(input.index.boat),
    perHour: (input.index.boat.prices ?? typicalPrices).hour,
    nowFor: (until) => input.earlier.filter(({ phase }) => phase < until).at(-1),
  };
  return [teesFor, messengersFor, conduitsFor, circuitsFor, plugsFor]
    .flatMap((find) => find(site))
    .sort((a, b) => byCodeUnit(a.id, b.id));
};
