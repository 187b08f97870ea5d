import type { Draft } from 'mutative';
import type { Boat, Join, Kit, Need, Place, Way } from './boat-schema.ts';
import { inPlace } from './in-place.ts';
import type { Measure } from './measure.ts';
import type { Plug, Sends, Sheet } from './sheet.ts';

/** A small valid boat for tests, and a few ways to make another from it; each step gives a new builder. */
export interface BoatBuilder {
  readonly boat: Boat;
  /** puts whole parts of the file in place of what was there: `.with({ needs: [] })` */
  with(parts: Partial<Boat>): BoatBuilder;
  /** changes a draft of the boat in place: `.change((boat) => { boat.name = 'Tern'; })` */
  change(recipe: (draft: Draft<Boat>) => void): BoatBuilder;
  /** adds to the lists, in the order given */
  add(more: {
    places?: Place[];
    ways?: Way[];
    sheets?: Sheet[];
    kit?: Kit[];
    needs?: Need[];
    joins?: Join[];
  }): BoatBuilder;
  /** changes one unit's own fields */
  unit(id: string, fields: Partial<Kit>): BoatBuilder;
  /** changes one sheet in place */
  sheet(id: string, recipe: (draft: Draft<Sheet>) => void): BoatBuilder;
}

const taped = (valueM: number): Measure => ({ valueM, how: 'taped', lessM: 0.05, moreM: 0.1 });

const places: Place[] = [
  { id: 'battery-box', name: 'battery box', xM: 2, yM: -0.5, zM: 0.2, exposure: 'damp', reach: 'panel', tees: false },
  {
    id: 'helm',
    name: 'helm dash',
    xM: 5,
    yM: 0.6,
    zM: 1.4,
    exposure: 'dry',
    reach: 'open',
    tees: true,
    spares: 1,
  },
  { id: 'locker', name: 'electrical locker', xM: 4, yM: -0.8, zM: 0.9, exposure: 'dry', reach: 'open', tees: true },
  { id: 'mast-base', name: 'mast base', xM: 6, yM: 0, zM: 0.5, exposure: 'dry', reach: 'panel', tees: true },
  { id: 'stern-rail', name: 'stern rail', xM: 0.3, yM: -1.2, zM: 1.6, exposure: 'weather', reach: 'open', tees: false },
];

const ways: Way[] = [
  { id: 'battery-locker', ends: ['battery-box', 'locker'], length: taped(2.6), kind: 'open', known: 'seen' },
  { id: 'helm-mast', ends: ['helm', 'mast-base'], length: taped(1.9), kind: 'open', known: 'pulled' },
  {
    id: 'locker-helm',
    ends: ['locker', 'helm'],
    length: taped(2.2),
    kind: 'conduit',
    known: 'pulled',
    bore: { mm: 32, how: 'taped' },
  },
  { id: 'locker-mast', ends: ['locker', 'mast-base'], length: taped(2.7), kind: 'tray', known: 'seen' },
  {
    id: 'locker-stern',
    ends: ['locker', 'stern-rail'],
    length: taped(4.5),
    kind: 'conduit',
    known: 'pulled',
    bore: { mm: 25, how: 'taped' },
    through: 'deck',
  },
];

const busPlug = { id: 'bus', connector: 'n2k-micro', gender: 'male' } as const;
const powerPlug = { id: 'supply', connector: 'leads', gender: 'none' } as const;

const pgns = (...entries: [pgn: number, everyMs: number][]): Sends[] =>
  entries.map(([pgn, everyMs]) => ({ pgn, everyMs }));
const heard = (...entries: number[]): { pgn: number }[] => entries.map((pgn) => ({ pgn }));

const busPower = (maxA: number): NonNullable<Sheet['power']> => [
  { port: 'n2k', typical: maxA * 0.8, max: maxA, unit: 'A', behaves: 'current', minV: 9, maxV: 16 },
];

const pairConductors = (port: string): NonNullable<Plug['conductors']> => [
  { label: 'A', colour: 'white', ports: [port], role: 'A' },
  { label: 'B', colour: 'green', ports: [port], role: 'B' },
];

const sheets: Sheet[] = [
  {
    id: 'converter-0183',
    name: 'Converter to NMEA 0183',
    kind: 'converter',
    source: 'typical',
    plugs: [busPlug, { id: 'wires', connector: 'leads', gender: 'none', conductors: pairConductors('out') }],
    ports: [
      {
        id: 'n2k',
        onPlug: 'bus',
        protocol: 'nmea2000',
        role: 'both',
        len: 2,
        sends: [],
        hears: heard(129025, 129026, 126992, 127250),
      },
      {
        id: 'out',
        onPlug: 'wires',
        protocol: 'nmea0183',
        line: 'differential',
        isolated: true,
        baud: 4800,
        role: 'talk',
        sends: [
          { sentence: 'RMC', everyMs: 1000 },
          { sentence: 'HDG', everyMs: 1000 },
        ],
      },
    ],
    turns: [
      {
        fromPort: 'n2k',
        toPort: 'out',
        carries: [
          { reading: 'position' },
          { reading: 'course-speed-ground' },
          { reading: 'time-date' },
          { reading: 'heading', loses: ['instance'] },
        ],
      },
    ],
    power: busPower(0.1),
  },
  {
    id: 'fixed-radio',
    name: 'VHF radio, fixed',
    kind: 'vhf-radio',
    source: 'typical',
    plugs: [powerPlug, { id: 'wires', connector: 'leads', gender: 'none', conductors: pairConductors('gps-in') }],
    ports: [
      { id: 'dc', onPlug: 'supply', protocol: 'dc', role: 'listen' },
      {
        id: 'gps-in',
        onPlug: 'wires',
        protocol: 'nmea0183',
        line: 'differential',
        baud: 4800,
        role: 'listen',
        hears: [{ sentence: 'RMC' }],
      },
    ],
    power: [{ port: 'dc', typical: 0.6, max: 6, unit: 'A', behaves: 'current', minV: 11, maxV: 16, fuseA: 10 }],
  },
  {
    id: 'gnss-receiver',
    name: 'GNSS receiver',
    kind: 'gnss',
    source: 'typical',
    plugs: [{ ...busPlug, fixedLead: { valueM: 0.5, how: 'papers', lessM: 0, moreM: 0 } }],
    ports: [
      {
        id: 'n2k',
        onPlug: 'bus',
        protocol: 'nmea2000',
        role: 'both',
        len: 1,
        sends: pgns([126992, 1000], [129025, 100], [129026, 250], [129029, 1000]),
      },
    ],
    power: busPower(0.05),
  },
  {
    id: 'heading-sensor',
    name: 'Heading sensor',
    kind: 'compass',
    source: 'typical',
    plugs: [busPlug],
    ports: [
      {
        id: 'n2k',
        onPlug: 'bus',
        protocol: 'nmea2000',
        role: 'both',
        len: 1,
        sends: pgns([127250, 100], [127251, 100], [127257, 1000]),
      },
    ],
    power: busPower(0.05),
  },
  {
    id: 'small-display',
    name: '7-inch multifunction display',
    kind: 'display',
    source: 'typical',
    plugs: [busPlug, powerPlug],
    ports: [
      { id: 'dc', onPlug: 'supply', protocol: 'dc', role: 'listen' },
      {
        id: 'n2k',
        onPlug: 'bus',
        protocol: 'nmea2000',
        role: 'both',
        len: 1,
        hears: heard(126992, 127250, 127251, 129025, 129026, 129029),
      },
    ],
    power: [
      { port: 'dc', typical: 12, max: 18, unit: 'W', behaves: 'power', atV: 12, minV: 10.8, maxV: 17, fuseA: 5 },
      ...busPower(0.05),
    ],
  },
];

const kit: Kit[] = [
  {
    id: 'compass',
    name: 'Heading sensor at the mast',
    sheet: 'heading-sensor',
    fate: 'comes',
    place: 'mast-base',
    tail: taped(0.5),
  },
  {
    id: 'converter',
    name: 'Converter for the old radio',
    sheet: 'converter-0183',
    fate: 'comes',
    place: 'locker',
    tail: taped(0.4),
  },
  { id: 'display', name: 'Helm display', sheet: 'small-display', fate: 'comes', place: 'helm', tail: taped(0.6) },
  { id: 'gnss', name: 'GNSS on the stern rail', sheet: 'gnss-receiver', fate: 'comes', place: 'stern-rail' },
  { id: 'radio', name: 'Old radio', sheet: 'fixed-radio', fate: 'stays', place: 'helm', tail: taped(0.5) },
];

const needs: Need[] = [
  { reading: 'heading', at: 'display', must: true },
  { reading: 'position', at: 'display', must: true },
  { reading: 'position', at: 'radio', must: true },
];

const joins: Join[] = [
  {
    id: 'nav-join',
    kind: 'nmea2000',
    bus: 'nav',
    members: ['compass', 'converter', 'display', 'gnss'].map((unit) => ({ kit: unit, port: 'n2k', as: 'both' })),
    hold: 'fixed',
  },
  {
    id: 'radio-position',
    kind: 'nmea0183',
    members: [
      { kit: 'converter', port: 'out', as: 'talk' },
      { kit: 'radio', port: 'gps-in', as: 'listen' },
    ],
    hold: 'fixed',
  },
];

const smallBoat: Boat = {
  format: 'fairlead-boat',
  version: 1,
  name: 'Tern',
  hull: { kind: 'sloop', material: 'grp', lengthM: 8.4, beamM: 2.8, draftM: 1.5, airDraft: taped(12) },
  places,
  ways,
  cables: [],
  sheets,
  kit,
  needs,
  buses: [{ id: 'nav', name: 'Navigation bus', protocol: 'nmea2000' }],
  joins,
  supply: {
    banks: [
      {
        id: 'house',
        place: 'battery-box',
        chemistry: 'agm',
        nominalV: 12,
        capacityAh: 110,
        lowestV: 11.8,
        for: 'both',
      },
    ],
    panels: [
      {
        id: 'main-panel',
        place: 'locker',
        from: 'house',
        feeder: { length: taped(3), areaMm2: 16 },
        mainA: 30,
        circuits: [
          { id: 'bus-circuit', ratingA: 3, kind: 'breaker', feeds: ['nav'] },
          { id: 'helm-circuit', ratingA: 15, kind: 'breaker', feeds: ['display.dc', 'radio.dc'] },
        ],
      },
    ],
    dcdc: [],
  },
};

const builder = (boat: Boat): BoatBuilder => {
  const change = (recipe: (draft: Draft<Boat>) => void): BoatBuilder => builder(inPlace(boat, recipe));
  return {
    boat,
    change,
    with: (parts) => builder({ ...boat, ...parts }),
    add: (more) =>
      builder({
        ...boat,
        places: [...boat.places, ...(more.places ?? [])],
        ways: [...boat.ways, ...(more.ways ?? [])],
        sheets: [...boat.sheets, ...(more.sheets ?? [])],
        kit: [...boat.kit, ...(more.kit ?? [])],
        needs: [...boat.needs, ...(more.needs ?? [])],
        joins: [...boat.joins, ...(more.joins ?? [])],
      }),
    unit: (id, fields) =>
      builder({ ...boat, kit: boat.kit.map((unit) => (unit.id === id ? { ...unit, ...fields } : unit)) }),
    sheet: (id, recipe) =>
      builder({ ...boat, sheets: boat.sheets.map((sheet) => (sheet.id === id ? inPlace(sheet, recipe) : sheet)) }),
  };
};

/**
 * The Tern: five places with one loop, one bus with GNSS, heading sensor, display and a converter, an old radio behind
 * the converter, one bank, one panel. Valid in every part; lists sorted by id.
 *
 * @example aBoat().unit('gnss', { place: 'helm' }).with({ needs: [] }).boat
 */
export const aBoat = (): BoatBuilder => builder(smallBoat);
