import { type Boat, boatSchema } from '../src/core/boat/boat-schema.ts';

/** So many stations along the boat, each a tee place with units round it; a bus serves a row of stations. */
const stationsABus = 10;
const devicesAStation = 5;

const sheets: Boat['sheets'] = [
  {
    id: 'bus-unit',
    name: 'Instrument, 4 in',
    kind: 'instrument',
    source: 'typical',
    plugs: [{ id: 'bus', connector: 'n2k-micro', gender: 'male' }],
    ports: [{ id: 'n2k', onPlug: 'bus', protocol: 'nmea2000', role: 'both', len: 1, sends: [], hears: [] }],
  },
];

const station = (order: number, count: number): Boat['places'][number] => ({
  id: `station-${order}`,
  name: `station ${order}`,
  xM: 1 + (46 * Math.floor(order / 2)) / (count / 2),
  yM: order % 2 === 0 ? -1.5 : 1.5,
  zM: 0.6 + (order % 5) * 0.5,
  exposure: 'dry',
  reach: 'open',
  tees: true,
});

/** A boat of 48 m that nobody built, with as many bus devices as asked, fifty a bus. */
export const largeBoat = (devices: number): Boat => {
  const stations = Math.ceil(devices / devicesAStation);
  const buses = Math.ceil(stations / stationsABus);
  const busOf = (order: number): number => Math.floor(order / stationsABus);
  const units = Array.from({ length: devices }, (_, order) => ({ order, at: Math.floor(order / devicesAStation) }));
  const walkOf = (bus: number) =>
    Array.from({ length: stations }, (_, at) => at)
      .filter((at) => busOf(at) === bus)
      .map((at, step) => ({
        place: `station-${at}`,
        ...(step === 0 ? {} : { via: `way-${at - 1}` }),
        tees: [
          ...(step === 0 ? ['feed'] : []),
          ...units.filter((unit) => unit.at === at).map(({ order }) => `unit-${order}.n2k`),
        ],
      }));
  return boatSchema.parse({
    format: 'fairlead-boat',
    version: 1,
    name: 'Many',
    hull: {
      kind: 'ketch',
      material: 'steel',
      lengthM: 48,
      beamM: 9,
      draftM: 3.5,
      airDraft: { valueM: 40, how: 'papers', lessM: 0.5, moreM: 0.5 },
    },
    places: Array.from({ length: stations }, (_, order) => station(order, stations)),
    ways: Array.from({ length: stations - 1 }, (_, order) => ({
      id: `way-${order}`,
      ends: [`station-${order}`, `station-${order + 1}`],
      length: { valueM: 4, how: 'taped', lessM: 0.05, moreM: 0.1 },
      kind: 'tray',
      known: 'seen',
    })),
    cables: [],
    sheets,
    kit: units.map(({ order, at }) => ({
      id: `unit-${order}`,
      name: `instrument ${order}`,
      sheet: 'bus-unit',
      fate: 'comes',
      place: `station-${at}`,
    })),
    needs: [],
    buses: Array.from({ length: buses }, (_, bus) => ({ id: `bus-${bus}`, name: `Bus ${bus}`, protocol: 'nmea2000' })),
    joins: Array.from({ length: buses }, (_, bus) => ({
      id: `join-${bus}`,
      kind: 'nmea2000',
      bus: `bus-${bus}`,
      hold: 'fixed',
      members: units
        .filter(({ at }) => busOf(at) === bus)
        .map(({ order }) => ({ kit: `unit-${order}`, port: 'n2k', as: 'both' })),
    })),
    supply: {
      banks: [
        { id: 'house', place: 'station-0', chemistry: 'agm', nominalV: 12, capacityAh: 800, lowestV: 12, for: 'house' },
      ],
      panels: [
        {
          id: 'panel',
          place: 'station-0',
          from: 'house',
          circuits: Array.from({ length: buses }, (_, bus) => ({
            id: `c-${bus}`,
            ratingA: 3,
            kind: 'fuse',
            feeds: [`bus-${bus}`],
          })),
        },
      ],
      dcdc: [],
    },
    // fixed, so that what is measured waits for no search
    pins: {
      layouts: Object.fromEntries(
        Array.from({ length: buses }, (_, bus) => [`bus-${bus}`, { grade: 'mid', walk: walkOf(bus), state: 'fixed' }]),
      ),
    },
  });
};
