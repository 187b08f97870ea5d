import { readFileSync } from 'node:fs';
import type { Boat, Need } from '../../src/core/boat/boat-schema.ts';
import type { OwnDay } from '../../src/core/boat/own-day.ts';
import { type ByHand, boatFromTable } from './boat-from-table.ts';
import { sandpiperMeasured } from './measured/sandpiper.ts';
import { sandpiperJoins } from './sandpiper-joins.ts';
import { type Table, tableSchema } from './table.ts';
import { sandpiperOrders, sandpiperWork } from './work/sandpiper.ts';

/** Sandpiper's table as designed. */
export const sandpiperTable = (): Table =>
  tableSchema.parse(JSON.parse(readFileSync(new URL('./tables/sandpiper.json', import.meta.url), 'utf8')));

const cables: ByHand['cables'] = {
  sc1: { kind: 'feeder', conductors: 2 },
  sc2: { kind: 'analog', conductors: 5, serves: 'lead-wind' },
  sc3: { kind: 'analog', conductors: 5, serves: 'lead-wind' },
  sc4: { kind: 'coax', serves: 'coax-vhf', coax: { kind: 'low-loss-foam-10-mm' } },
  sc5: { kind: 'coax', serves: 'coax-vhf', coax: { kind: 'low-loss-foam-10-mm' } },
  sc6: { kind: 'analog', serves: 'lead-log' },
  sc7: { kind: 'analog', serves: 'lead-depth' },
  // Power and data of the pilot in one sheath; the data pair is what the new multiplexer takes over.
  sc8: { kind: 'pair', conductors: 4, serves: 'pair-out' },
  sc9: { kind: 'feed', conductors: 2 },
};

const changes: ByHand['changes'] = {
  // One position on the bus: the AIS keeps its own to itself.
  ais: [
    ...[129025, 129026, 129029].map((pgn) => ({ path: `ports.n2k.sends.${pgn}`, how: 'seen' as const })),
    { path: 'power.dc.typical', value: 0.2, how: 'manual' },
  ],
  // Its antenna was inside, so nothing is joined to its input.
  'old-plotter': [{ path: 'turns', how: 'seen' }],
  // Its wifi is switched off.
  mux: [{ path: 'ports.radio', how: 'seen' }],
  'ais-gnss': [{ path: 'plugs.coax.fixedLead.valueM', value: 5, how: 'manual' }],
};

/** The radio gets its position in RMC alone, every two seconds: the most often that sentence should be sent at 4800 baud. */
const need = (asked: Need): Need =>
  asked.at === 'vhf' && asked.reading === 'position' ? { ...asked, everyMs: 2000 } : asked;

/** A tablet may look at the plotter and not work it; the password is her owner’s. */
const remotes: ByHand['remotes'] = {
  plotter: { writes: 'listen-only', password: 'changed', heldBy: ['owner'] },
};

/** Her owner swings the compass in May, before the first trip. */
const sites: ByHand['sites'] = { compass: { swing: 'planned' }, heading: { arrowForward: true } };

/** A fuse on the post of the house battery; one switch parts the two. */
const supply: ByHand['supply'] = {
  banks: {
    house: {
      coldCrankingA: 700,
      main: {
        kind: 'fuse',
        family: 'terminal-post',
        distance: { valueM: 0.05, how: 'taped', lessM: 0.02, moreM: 0.02 },
        ratingA: 50,
      },
      isolator: true,
    },
    start: { coldCrankingA: 500, isolator: true, partedBy: 'switch' },
  },
  panels: { switches: { freeWays: 1 } },
  chargers: [
    { id: 'alternator', place: 'engine', kind: 'alternator', charges: ['house', 'start'], ratedA: 50 },
    { id: 'solar', place: 'lazarette', kind: 'solar', charges: ['house'], ratedA: 5 },
  ],
  negativeAt: 'battery-box',
};

const days: readonly OwnDay[] = [
  {
    id: 'night-sail',
    name: 'Night sail, steering by hand half the time',
    like: 'under-way-night',
    hours: [
      { unit: 'handheld', hours: 2 },
      { unit: 'pilot', hours: 12 },
      { unit: 'plotter', hours: 10 },
    ],
  },
];

const openings: ByHand['openings'] = {
  'hole-plotter': { name: 'hole of the old plotter' },
  'hole-log': { name: 'hole of the log', atMm: [0, 0] },
  'hole-wind': { name: 'hole of the wind display', atMm: [140, 0] },
};

/** Sandpiper, a small budget in two phases: the old log, wind and pilot are kept behind a multiplexer. */
export const sandpiper = (): Boat => ({
  ...boatFromTable(sandpiperTable(), {
    joins: sandpiperJoins,
    supply,
    days,
    openings,
    cables,
    instanced: {},
    changes,
    remotes,
    sites,
    underwater: { waterlineM: 7.9, propellerXM: 1.9, keel: { fromXM: 3.9, toXM: 5.8 } },
    buses: [{ id: 'nav', name: 'Navigation bus', protocol: 'nmea2000' }],
    displacement: { valueKg: 4200, of: 'light' },
    // the pilot is lifted off its pin
    steering: [{ place: 'tiller', by: 'tiller', letsGo: [{ how: 'lever', at: 'coaming-stbd' }] }],
    need,
  }),
  ...sandpiperMeasured,
  work: sandpiperWork,
  orders: sandpiperOrders,
});
