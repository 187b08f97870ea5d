import type * as z from 'zod';
import { type Boat, type Bus, boatSchema, type Cable, type Join, type Kit, type Way } from './boat-schema.ts';
import { canonicalMeasures, canonicalPapers, canonicalSea } from './canonical-measures.ts';
import { canonicalSheet } from './canonical-sheet.ts';
import { canonicalWork } from './canonical-work.ts';
import { byCodeUnit } from './ids.ts';
import { inSchemaOrder } from './in-schema-order.ts';
import { keptFor } from './kept-for.ts';
import type { Opening } from './opening.ts';
import type { OwnDay } from './own-day.ts';
import type { QuoteTerms } from './quote.ts';
import { type Sheet, sheetSchema } from './sheet.ts';
import { sortedBy } from './sorted-by.ts';
import type { SteeringPlace } from './steering.ts';
import type { Supply } from './supply.ts';
import { walkingOrder } from './walking-order.ts';

const byId = (entry: { readonly id: string }): string[] => [entry.id];
const wordsInOrder = (words: readonly string[]): string[] => [...words].sort(byCodeUnit);

const canonicalWay = (way: Way): Way => {
  const [a, b] = way.ends;
  return {
    ...way,
    ends: a <= b ? [a, b] : [b, a],
    ...(way.allows === undefined ? {} : { allows: [...way.allows].sort(byCodeUnit) }),
    ...(way.near === undefined ? {} : { near: wordsInOrder(way.near) }),
  };
};

const canonicalCable = (cable: Cable, ways: ReadonlyMap<string, Way>): Cable => {
  const known = cable.ways.flatMap((id) => ways.get(id) ?? []);
  const ends = { from: cable.from.place, to: cable.to.place };
  const walked = known.length === cable.ways.length ? walkingOrder(known, ends) : undefined;
  const losses = cable.coax?.losses;
  return {
    ...cable,
    ways: [...(walked ?? wordsInOrder(cable.ways))],
    ...(losses === undefined ? {} : { coax: { ...cable.coax, losses: sortedBy(losses, ({ mhz }) => [mhz]) } }),
  };
};

const canonicalUnit = (unit: Kit): Kit => ({
  ...unit,
  ...(unit.instances === undefined
    ? {}
    : { instances: sortedBy(unit.instances, (entry) => [entry.port, entry.reading]) }),
  ...(unit.remote?.heldBy === undefined
    ? {}
    : { remote: { ...unit.remote, heldBy: [...unit.remote.heldBy].sort(byCodeUnit) } }),
  ...(unit.aboard?.settings === undefined
    ? {}
    : { aboard: { ...unit.aboard, settings: sortedBy(unit.aboard.settings, ({ name }) => [name]) } }),
});

const canonicalJoin = (join: Join): Join => ({
  ...join,
  members: sortedBy(join.members, (member) => [member.kit, member.port]),
  ...(join.shieldAt === undefined ? {} : { shieldAt: wordsInOrder(join.shieldAt) }),
});

const canonicalSupply = (supply: Supply): Supply => ({
  ...supply,
  banks: sortedBy(supply.banks, byId),
  panels: sortedBy(
    supply.panels.map((panel) => ({
      ...panel,
      circuits: sortedBy(
        panel.circuits.map((circuit) => ({ ...circuit, feeds: wordsInOrder(circuit.feeds) })),
        byId,
      ),
    })),
    byId,
  ),
  dcdc: sortedBy(supply.dcdc, byId),
  ...(supply.chargers === undefined
    ? {}
    : {
        chargers: sortedBy(
          supply.chargers.map((charger) => ({ ...charger, charges: wordsInOrder(charger.charges) })),
          byId,
        ),
      }),
});

const canonicalDays = (days: readonly OwnDay[]): OwnDay[] =>
  sortedBy(
    days.map((day) => ({ ...day, hours: sortedBy(day.hours, ({ unit, kind }) => [unit, kind]) })),
    byId,
  );

const canonicalQuote = ({ hours, includes, ...others }: QuoteTerms): QuoteTerms => ({
  ...others,
  ...(hours === undefined ? {} : { hours: sortedBy(hours, ({ task }) => [task]) }),
  ...(includes === undefined ? {} : { includes: [...new Set(includes)].sort(byCodeUnit) }),
});

const canonicalSteering = (steering: readonly SteeringPlace[]): SteeringPlace[] =>
  sortedBy(
    steering.map((entry) => ({
      ...entry,
      letsGo: sortedBy(entry.letsGo, ({ how, at, circuit }) => [how, at, circuit]),
    })),
    ({ place, by }) => [place, by],
  );

const canonicalBus = (bus: Bus): Bus =>
  bus.shieldAt === undefined ? bus : { ...bus, shieldAt: wordsInOrder(bus.shieldAt) };

const canonicalOpening = (opening: Opening): Opening => ({
  ...opening,
  ...(opening.screws === undefined ? {} : { screws: sortedBy(opening.screws, ({ xMm, yMm }) => [xMm, yMm]) }),
  ...(opening.behind?.obstacles === undefined
    ? {}
    : {
        behind: {
          ...opening.behind,
          obstacles: sortedBy(opening.behind.obstacles, ({ what, xMm, yMm }) => [what, xMm, yMm]),
        },
      }),
});

type Pins = NonNullable<Boat['pins']>;

const canonicalWalks = (layouts: NonNullable<Pins['layouts']>): NonNullable<Pins['layouts']> =>
  Object.fromEntries(
    Object.entries(layouts).map(([bus, layout]) => [
      bus,
      { ...layout, walk: layout.walk.map((step) => ({ ...step, tees: wordsInOrder(step.tees) })) },
    ]),
  );

/** The two places where ways that make one path start and end: those that an odd number of them leads to. */
const pathEnds = (ways: readonly Way[]): readonly string[] => {
  const counts = new Map<string, number>();
  for (const end of ways.flatMap(({ ends }) => ends)) counts.set(end, (counts.get(end) ?? 0) + 1);
  return [...counts].flatMap(([place, count]) => (count % 2 === 1 ? [place] : [])).sort(byCodeUnit);
};

const canonicalRoute = (ids: readonly string[], ways: ReadonlyMap<string, Way>): string[] => {
  const known = ids.flatMap((id) => ways.get(id) ?? []);
  const [from, to, ...others] = pathEnds(known);
  const isPath = known.length === ids.length && from !== undefined && to !== undefined && others.length === 0;
  return [...((isPath ? walkingOrder(known, { from, to }) : undefined) ?? wordsInOrder(ids))];
};

const canonicalPins = ({ layouts, routes, ...others }: Pins, ways: ReadonlyMap<string, Way>): Pins => ({
  ...others,
  ...(layouts === undefined ? {} : { layouts: canonicalWalks(layouts) }),
  ...(routes === undefined
    ? {}
    : {
        routes: Object.fromEntries(
          Object.entries(routes).map(([line, route]) => [line, { ...route, ways: canonicalRoute(route.ways, ways) }]),
        ),
      }),
});

const { shape } = boatSchema;
const waysById = keptFor((ways: Boat['ways']): ReadonlyMap<string, Way> => new Map(ways.map((way) => [way.id, way])));
const sheetInOrder = keptFor((sheet: Sheet) => inSchemaOrder(sheetSchema, canonicalSheet(sheet)));

type Parts = Required<Boat>;
/** The names of the parts that are more than a word or a number. */
type PartName = { [Name in keyof Parts]: Parts[Name] extends object ? Name : never }[keyof Parts];

/** A part with its lists in order; those of some hang on the ways of the boat. */
type Ordered<Name extends PartName> = (part: Parts[Name], ways: Boat['ways']) => Parts[Name];

/** Parts whose lists have no order of their own; what is not named here is left as it is. */
const ordered: { readonly [Name in PartName]?: Ordered<Name> } = {
  hull: (hull) => (hull.masts === undefined ? hull : { ...hull, masts: sortedBy(hull.masts, ({ foot }) => [foot]) }),
  places: (places) => sortedBy(places, byId),
  ways: (ways) => sortedBy(ways.map(canonicalWay), byId),
  cables: (cables, ways) =>
    sortedBy(
      cables.map((cable) => canonicalCable(cable, waysById(ways))),
      byId,
    ),
  sheets: (sheets) => sortedBy(sheets.map(sheetInOrder), byId),
  kit: (kit) => sortedBy(kit.map(canonicalUnit), byId),
  needs: (needs) => sortedBy(needs, (need) => [need.reading, need.instance, need.at]),
  sources: (sources) => sortedBy(sources, ({ reading, instance, at }) => [reading, instance, at]),
  buses: (buses) => sortedBy(buses.map(canonicalBus), byId),
  joins: (joins) => sortedBy(joins.map(canonicalJoin), byId),
  supply: canonicalSupply,
  measures: canonicalMeasures,
  papers: canonicalPapers,
  sea: canonicalSea,
  days: canonicalDays,
  steering: canonicalSteering,
  openings: (openings) => sortedBy(openings.map(canonicalOpening), byId),
  pins: (pins, ways) => canonicalPins(pins, waysById(ways)),
  orders: (orders) => sortedBy(orders, (entry) => [entry.item]),
  quote: canonicalQuote,
  work: canonicalWork,
  accepted: (accepted) => sortedBy(accepted, (entry) => [entry.finding]),
  underlays: (underlays) => sortedBy(underlays, (entry) => [entry.view]),
  photos: (photos) => sortedBy(photos, ({ of, shows, picture }) => [of, shows, picture.hash]),
  fitted: (fitted) => sortedBy(fitted, byId),
  revisions: (revisions) => sortedBy(revisions, ({ mark }) => [mark]),
  proof: ({ proved }) => ({ proved: sortedBy(proved, ({ reading, instance, from }) => [reading, instance, from]) }),
};

type AnyOrdered = (part: object, ways: Boat['ways']) => object;

/** One part in order, kept for as long as it stands: an edit leaves nearly all of them the very ones they were. */
const partInOrder = (name: keyof Boat): AnyOrdered => {
  // reason: each is given the part of its own name only
  const { [name]: order = (part: object) => part } = ordered as Partial<Record<keyof Boat, AnyOrdered>>;
  const put = (part: object, ways: Boat['ways']): object => {
    const own = order(part, ways);
    // each sheet was put in order by itself
    return name === 'sheets' ? own : (inSchemaOrder(shape[name] as z.ZodType, own) as object);
  };
  if (name !== 'cables' && name !== 'pins') return keptFor((part: object) => put(part, []));
  const kept = keptFor((part: object) => keptFor((ways: Boat['ways']) => put(part, ways)));
  return (part, ways) => kept(part)(ways);
};

const names = Object.keys(shape) as (keyof Boat)[];
const inOrderOf = new Map(names.map((name) => [name, partInOrder(name)]));

/**
 * The same boat with everything that has no order of its own put into one: lists sorted by their ids, the ends of ways by
 * code unit, the ways of a cable as they are walked from its `from`, those of a settled route from the end that comes first by
 * code unit, names in the order of the schema. Changes of a unit,
 * steps of a pinned walk, runs, tacks and points of a trial, points of an outline and exclusions of a quote keep their order. However a file's lists and names are shuffled, its
 * canonical boat is the same, to the byte when written.
 */
export const canonicalBoat = (boat: Boat): Boat => {
  const own: Record<string, unknown> = {};
  for (const name of names) {
    const part = boat[name];
    if (part !== undefined) own[name] = typeof part === 'object' ? inOrderOf.get(name)?.(part, boat.ways) : part;
  }
  // reason: every part came from the boat under its own name
  return own as Boat;
};
