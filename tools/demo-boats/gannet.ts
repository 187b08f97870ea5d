import { readFileSync } from 'node:fs';
import type { Boat, Need } from '../../src/core/boat/boat-schema.ts';
import type { OwnDay } from '../../src/core/boat/own-day.ts';
import { type ByHand, boatFromTable } from './boat-from-table.ts';
import { gannetJoins } from './gannet-joins.ts';
import { gannetMeasured } from './measured/gannet.ts';
import { type Table, tableSchema } from './table.ts';
import { gannetWork } from './work/gannet.ts';

/** Gannet's table as designed. */
export const gannetTable = (): Table =>
  tableSchema.parse(JSON.parse(readFileSync(new URL('./tables/gannet.json', import.meta.url), 'utf8')));

const cables: ByHand['cables'] = {
  gc1: { kind: 'feeder', conductors: 2 },
  gc2: { kind: 'feeder', conductors: 2, serves: 'm1' },
  gc3: { kind: 'feeder', conductors: 2, serves: 'm2' },
  gc4: { kind: 'analog', conductors: 2, serves: 'lead-pump', areaMm2: 10 },
  gc5: { kind: 'analog', conductors: 4, serves: 'lead-rudder' },
  gc6: { kind: 'analog', conductors: 4, serves: 'lead-fluxgate' },
  gc7: { kind: 'single-wire', serves: 'wire-head' },
  gc8: { kind: 'single-wire', serves: 'wire-head-fly' },
  gc9: { kind: 'coax', serves: 'coax-vhf-1', coax: { kind: 'low-loss-foam-10-mm' } },
  gc10: { kind: 'coax' },
  gc11: { kind: 'video', serves: 'old-radar-cable' },
  gc12: { kind: 'analog' },
  gc13: { kind: 'pair', serves: 'old-pair-gps' },
  gc14: { kind: 'analog', conductors: 2, serves: 'lead-fuel-p' },
  gc15: { kind: 'analog', conductors: 2, serves: 'lead-fuel-s' },
  gc16: { kind: 'analog', conductors: 2, serves: 'lead-water' },
};

const engineRun = (port: string) =>
  [
    { port, reading: 'engine' },
    { port, reading: 'transmission' },
  ] as const;

const instanced: ByHand['instanced'] = {
  'depth-bus': [{ port: 'n2k', reading: 'depth' }],
  gnss: [
    { port: 'n2k', reading: 'position' },
    { port: 'n2k', reading: 'course-speed-ground' },
  ],
  heading: [{ port: 'n2k', reading: 'heading' }],
  'eng-gw-port': engineRun('n2k'),
  'eng-gw-stbd': engineRun('n2k'),
  'engine-p': engineRun('engine-bus'),
  'engine-s': engineRun('engine-bus'),
  'fuel-p': [{ port: 'signal', reading: 'fuel-level' }],
  'fuel-s': [{ port: 'signal', reading: 'fuel-level' }],
  'water-s': [{ port: 'signal', reading: 'water-level' }],
  shunt: [{ port: 'n2k', reading: 'battery' }],
};

/** Both compasses are swung before the first trip, everything on and everything off. */
const sites: ByHand['sites'] = {
  'compass-helm': { swing: 'planned' },
  'compass-fly': { swing: 'planned' },
  heading: { arrowForward: true },
  fluxgate: { arrowForward: true },
  // The hull is solid round the well, and rises little so near the keel line; the old housing goes with the old sounder.
  transducer: { tiltDeg: 8, headroomMm: 260, laminate: 'solid', housing: 'new' },
  'depth-bus': { tiltDeg: 8, laminate: 'solid' },
};

const off = (...paths: string[]): NonNullable<ByHand['changes'][string]> =>
  paths.map((path) => ({ path, how: 'seen' }));

const changes: ByHand['changes'] = {
  // One position on the bus: the AIS keeps its own to itself.
  ais: off('ports.n2k.sends.129025', 'ports.n2k.sends.129026', 'ports.n2k.sends.129029'),
  // The pilot's own heading stays inside, so that two headings do not meet on the bus.
  'conv-pilot': off('ports.in.hears.HDG', 'ports.out.sends.DPT', 'ports.out.sends.MTW'),
  // One display steers the pilot and brings the sounder's temperature to the bus.
  'mfd-fly': off(
    'ports.n2k.sends.129283',
    'ports.n2k.sends.129284',
    'ports.n2k.sends.129285',
    'ports.n2k.sends.130316',
  ),
  'water-s': [{ path: 'ports.signal.sends.fuel-level.reading', value: 'water-level', how: 'seen' }],
};

/** RMC goes to the pilot every two seconds, the most a 4800 baud line of this load should carry. */
const need = (asked: Need): Need =>
  asked.at === 'pilot-computer' && (asked.reading === 'course-speed-ground' || asked.reading === 'variation')
    ? { ...asked, everyMs: 2000 }
    : asked;

const atBattery = (valueM: number) => ({ valueM, how: 'taped', lessM: 0.02, moreM: 0.02 }) as const;

/** One fuse at each battery; a relay joins the two while the engines charge them. */
const supply: ByHand['supply'] = {
  banks: {
    house: {
      coldCrankingA: 1300,
      shortCircuitA: 5200,
      main: { kind: 'fuse', family: 'class-t', distance: atBattery(0.15), ratingA: 100 },
      isolator: true,
    },
    start: {
      coldCrankingA: 1500,
      shortCircuitA: 4000,
      isolator: true,
      partedBy: 'relay',
    },
  },
  panels: { main: { freeWays: 2 }, 'helm-fuses': { freeWays: 2 }, 'fly-fuses': { freeWays: 1 } },
  chargers: [
    { id: 'alternator-port', place: 'engine-port', kind: 'alternator', charges: ['house', 'start'], ratedA: 60 },
    { id: 'alternator-stbd', place: 'engine-stbd', kind: 'alternator', charges: ['house', 'start'], ratedA: 60 },
  ],
  negativeAt: 'battery-house',
};

const days: readonly OwnDay[] = [
  {
    id: 'fishing',
    name: 'Two days at anchor, fishing',
    like: 'anchor',
    hours: [
      { unit: 'mfd-helm', hours: 6 },
      { unit: 'sonar', hours: 6 },
    ],
    chargedAfter: 2,
  },
];

const seated = { distanceM: 0.75, eyeAboveM: 0.3, reachM: 0.65 } as const;

/** The owner wants wide plates: the laminate round the old sounder is chipped. */
const openings: ByHand['openings'] = {
  'hole-plotter': { name: 'hole of the old plotter', atMm: [0, 0], viewed: seated },
  'hole-sounder': {
    name: 'hole of the old sounder',
    atMm: [300, -10],
    plate: { id: 'sounder-plate', overlapMm: 30, material: 'grp', thicknessMm: 5 },
    viewed: seated,
  },
  'hole-radar': { name: 'hole of the old radar screen', plate: { id: 'radar-plate', overlapMm: 25 } },
  'hole-fly': { name: 'hole of the old flybridge plotter', atMm: [0, 0] },
  'hole-fly-depth': { name: 'hole of the old depth repeater', atMm: [230, 0] },
  'hole-hull': { name: 'hole of the old transducer', throughHull: true },
};

/** Gannet, the first boat a newcomer sees: soundly designed, with the few doubts that honestly remain. */
export const gannet = (): Boat => ({
  ...boatFromTable(gannetTable(), {
    joins: gannetJoins,
    supply,
    days,
    openings,
    cables,
    instanced,
    changes,
    sites,
    underwater: { waterlineM: 10.6, propellerXM: 0.9 },
    buses: [{ id: 'nav', name: 'Navigation bus', protocol: 'nmea2000' }],
    displacement: { valueKg: 8800, of: 'light' },
    steering: [
      { place: 'helm-dash', by: 'wheel', letsGo: [{ how: 'hard-wired-switch' }, { how: 'pilot-head' }] },
      { place: 'fly-dash', by: 'wheel', letsGo: [{ how: 'hard-wired-switch' }, { how: 'pilot-head' }] },
    ],
    need,
  }),
  ...gannetMeasured,
  work: gannetWork,
});
