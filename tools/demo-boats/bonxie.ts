import { readFileSync } from 'node:fs';
import type { Boat, Need } from '../../src/core/boat/boat-schema.ts';
import type { OwnDay } from '../../src/core/boat/own-day.ts';
import { type ByHand, boatFromTable } from './boat-from-table.ts';
import { bonxieChanges, bonxieMounts } from './bonxie-changes.ts';
import { bonxieJoins } from './bonxie-joins.ts';
import { bonxieMeasured } from './measured/bonxie.ts';
import { type KitRow, type Table, tableSchema } from './table.ts';
import { bonxieWork } from './work/bonxie.ts';

/** Bonxie's table as designed. */
export const bonxieTable = (): Table =>
  tableSchema.parse(JSON.parse(readFileSync(new URL('./tables/bonxie.json', import.meta.url), 'utf8')));

const cables: ByHand['cables'] = {
  bc1: { kind: 'feeder', conductors: 2 },
  bc2: { kind: 'feeder', conductors: 2 },
  bc3: { kind: 'analog', conductors: 5, serves: 'lead-wind-main' },
  bc4: { kind: 'analog', conductors: 5, serves: 'lead-wind-miz' },
  bc5: { kind: 'analog', serves: 'lead-depth' },
  bc6: { kind: 'analog', serves: 'lead-log' },
  // Two leads in one loom; the second potentiometer is the one whose converter stands at its end.
  bc7: { kind: 'analog', conductors: 6, serves: 'lead-rudder-2' },
  bc8: { kind: 'analog', conductors: 4 },
  bc9: { kind: 'coax' },
  bc10: { kind: 'coax', serves: 'coax-hf' },
  bc11: { kind: 'pair', serves: 'pair-gyro' },
  bc12: { kind: 'video' },
  bc13: { kind: 'trunk' },
};

const at = (port: string, ...readings: ByHand['instanced'][string][number]['reading'][]) =>
  readings.map((reading) => ({ port, reading }));
const switching = at('n2k', 'switching');
const alerts = at('n2k', 'alerts');
const battery = at('n2k', 'battery');

const instanced: ByHand['instanced'] = {
  'gnss-1': at('n2k', 'position', 'course-speed-ground'),
  // Second for position, first for heading.
  'sat-compass': [
    ...at('n2k', 'position', 'course-speed-ground'),
    { port: 'n2k', reading: 'heading', instance: 0 },
    { port: 'n2k', reading: 'rate-of-turn', instance: 0 },
  ],
  'conv-gyro': [
    { port: 'n2k', reading: 'heading', instance: 1 },
    { port: 'n2k', reading: 'rate-of-turn', instance: 1 },
  ],
  'heading-2': at('n2k', 'heading', 'rate-of-turn'),
  'conv-depth': at('n2k', 'depth', 'speed-water', 'water-temperature'),
  'conv-wind-main': at('n2k', 'wind-apparent'),
  'conv-wind-miz': at('n2k', 'wind-apparent'),
  'conv-rudder': at('n2k', 'rudder'),
  'eng-gw': at('n2k', 'engine'),
  'gen-gw': at('n2k', 'engine'),
  'gear-box': at('n2k', 'transmission'),
  'main-engine': at('engine-bus', 'engine', 'transmission'),
  genset: at('engine-bus', 'engine'),
  'shunt-a': battery,
  'shunt-b': battery,
  'shunt-s': battery,
  'shunt-r': battery,
  charger: at('wire', 'charging'),
  'charger-gw': at('n2k', 'charging'),
  'ac-mon': at('n2k', 'ac-power'),
  // The mains monitor has number 0, so what the inverter makes is number 1.
  inverter: [{ port: 'wire', reading: 'ac-power', instance: 1 }],
  'inverter-gw': [{ port: 'n2k', reading: 'ac-power', instance: 1 }],
  'switch-1': switching,
  'switch-2': switching,
  'switch-3': switching,
  'switch-4': switching,
  'switch-5': switching,
  'switch-6': switching,
  'bilge-fore': alerts,
  'bilge-lab': alerts,
  'bilge-er': alerts,
  'bilge-mid': alerts,
  'bilge-aft': alerts,
  // What these count is none of the readings.
  'temp-er': [],
  'temp-exhaust': [],
  'temp-cold': [],
  'temp-lab': [],
  'winch-1': [],
  'winch-2': [],
  'steer-mon': [],
};

/** Typical sheets whose id would be the id of a unit aboard, and the switches, which have eight sockets. */
const sheets: ByHand['sheets'] = {
  charger: 'charger-mains',
  inverter: 'inverter-3kw',
  router: 'router-guest',
  epirb: 'beacon-distress',
  hailer: 'hailer-fog',
  computer: 'computer-small',
  'ethernet-switch': 'ethernet-switch-8',
};

const sensor = (id: string, name: string, sheetKind: string, place: string): KitRow => ({
  id,
  name,
  sheetKind,
  fate: 'stays',
  phase: 1,
  place,
  joinedInWords: 'named in the words of the unit it hangs on',
  buses: [],
});

const extraKit: readonly KitRow[] = [
  sensor('sender-fuel-stbd', 'fuel sender, starboard wing tank', 'tank-sender-resistive', 'er-tank-s'),
  sensor('sender-fuel-port', 'fuel sender, port wing tank', 'tank-sender-resistive', 'er-tank-p'),
  sensor('sender-fuel-day', 'fuel sender, day tank', 'tank-sender-resistive', 'lab-tank'),
  sensor('sender-water-aft', 'water sender, aft tank', 'tank-sender-resistive', 'aft-tank'),
  sensor('sender-water-fore', 'water sender, fore tank', 'tank-sender-resistive', 'fore-tank'),
  sensor('gear-senders', 'oil senders of the gearbox', 'gearbox-senders', 'er-engine'),
  {
    ...sensor('sonar-transducer', 'transducer of the sounder module', 'transducer-depth-temp', 'lab-void'),
    fate: 'comes',
    phase: 2,
  },
];

/** A temperature is sent every two seconds, and water changes no faster. */
const need = (asked: Need): Need => (asked.reading === 'water-temperature' ? { ...asked, everyMs: 2000 } : asked);

const near = (valueM: number) => ({ valueM, how: 'taped', lessM: 0.02, moreM: 0.02 }) as const;

const ofHouse = {
  coldCrankingA: 2400,
  shortCircuitA: 9000,
  main: { kind: 'fuse', family: 'class-t', distance: near(0.15), ratingA: 250 },
  isolator: true,
} as const;

/** A class T fuse at each house bank, one on the post of the radio bank; the starting bank has a charger lead of its own. */
const supply: ByHand['supply'] = {
  banks: {
    'house-a': ofHouse,
    'house-b': ofHouse,
    start: { coldCrankingA: 1400, isolator: true, partedBy: 'apart' },
    'radio-bank': {
      coldCrankingA: 1000,
      main: { kind: 'fuse', family: 'terminal-post', distance: near(0.05), ratingA: 80 },
      isolator: true,
    },
  },
  panels: {},
  chargers: [
    { id: 'alternator', place: 'er-engine', kind: 'alternator', charges: ['house-a', 'house-b', 'start'], ratedA: 80 },
    {
      id: 'mains-charger',
      place: 'er-mains',
      kind: 'mains',
      charges: ['house-a', 'house-b'],
      ratedA: 100,
      is: 'charger',
    },
    { id: 'radio-charging', place: 'wh-aft', kind: 'dcdc', charges: ['radio-bank'], ratedA: 30, is: 'charger-radio' },
  ],
  negativeAt: 'panel-24',
};

const days: readonly OwnDay[] = [
  {
    id: 'island',
    name: 'At anchor off the islands, satellite on for two watches',
    like: 'anchor',
    hours: [{ kind: 'satellite-terminal', hours: 8 }],
    chargedAfter: 2,
  },
];

/** One new face for both displays, one for the three instruments over them. */
const dash = { id: 'dash-plate', material: 'aluminium', thicknessMm: 4 } as const;
const repeaters = { id: 'repeater-plate', material: 'aluminium', thicknessMm: 4 } as const;
const openings: ByHand['openings'] = {
  'hole-wh-1': { name: 'hole of the old radar', atMm: [0, 0], plate: dash },
  'hole-wh-2': { name: 'hole of the old plotter, wheelhouse', atMm: [450, 0], plate: dash },
  'hole-rep-1': { name: 'hole of the depth repeater', for: 'instr-wh-1', atMm: [85, 290], plate: repeaters },
  'hole-rep-2': { name: 'hole of the wind repeater', for: 'instr-wh-2', atMm: [225, 290], plate: repeaters },
  'hole-rep-3': { name: 'hole of the rudder repeater', for: 'instr-wh-3', atMm: [365, 290], plate: repeaters },
  'hole-aft': { name: 'hole of the old plotter, aft helm' },
  'hole-chart': {
    name: 'hole of the old chart screen',
    plate: { id: 'chart-plate', overlapMm: 30, material: 'plywood' },
  },
};

/** Which of two counts: the antenna before the satellite compass for position, the satellite compass for turning. */
const sources: NonNullable<Boat['sources']> = [
  { reading: 'position', primary: 'gnss-1.n2k' },
  { reading: 'course-speed-ground', primary: 'gnss-1.n2k' },
  { reading: 'depth', primary: 'fls.n2k' },
  { reading: 'rate-of-turn', primary: 'sat-compass.n2k' },
];

/** Guests are on a wifi apart; tablets may look at the screens and work none of them. */
const remotes: ByHand['remotes'] = {
  'mfd-wh-1': { writes: 'listen-only' },
  router: { password: 'changed', heldBy: ['owner', 'skipper'], guests: 'guests' },
  'sat-term': { password: 'changed', heldBy: ['owner'] },
  'ship-mess': { writes: 'listen-only', password: 'changed', heldBy: ['crew', 'skipper'] },
};

/** Bonxie, the example of scale: two buses, two voltages, mains aboard, analog heads behind converters. */
export const bonxie = (): Boat => ({
  ...boatFromTable(bonxieTable(), {
    joins: bonxieJoins,
    supply,
    days,
    openings,
    cables,
    instanced,
    changes: bonxieChanges,
    mounts: bonxieMounts,
    sites: {
      'heading-2': { arrowForward: true, offSteelM: 1.6 },
      'sonar-transducer': { tiltDeg: 6, headroomMm: 450, housing: 'new' },
    },
    underwater: { waterlineM: 22.4, propellerXM: 1.8, keel: { fromXM: 2.4, toXM: 11.5 } },
    remotes,
    buses: [
      { id: 'nav', name: 'Navigation bus', protocol: 'nmea2000', grade: 'mid', shieldAt: ['panel-24'] },
      { id: 'ship', name: 'Ship systems bus', protocol: 'nmea2000', grade: 'mid', shieldAt: ['panel-24'] },
    ],
    ways: {
      // The conduit of the HF coax: no data in it.
      b63: { allows: ['coax'] },
      // Up to the aft helm and back: the gland is wide enough for both.
      b54: { trunkTimes: 2 },
    },
    sheets,
    extraKit,
    extraCircuits: { p24: [{ id: 'd31', ratingA: 200, kind: 'fuse', feeds: ['inverter.dc'] }] },
    displacement: { valueKg: 140_000, of: 'laden' },
    steering: [
      { place: 'wh-dash', by: 'wheel', letsGo: [{ how: 'hard-wired-switch' }, { how: 'pilot-head' }] },
      { place: 'aft-helm', by: 'wheel', letsGo: [{ how: 'hard-wired-switch' }, { how: 'pilot-head' }] },
      // the hand valve across the rams
      { place: 'steering-flat', by: 'emergency-tiller', letsGo: [{ how: 'lever' }] },
    ],
    need,
  }),
  sources,
  ...bonxieMeasured,
  work: bonxieWork,
});
