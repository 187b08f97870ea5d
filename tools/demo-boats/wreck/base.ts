import type { Boat, Join, Kit, Place, Way } from '../../../src/core/boat/boat-schema.ts';
import type { Measure } from '../../../src/core/boat/measure.ts';
import type { Sheet } from '../../../src/core/boat/sheet.ts';
import { suppliedFunctions } from '../../../src/core/facts/essential-functions.ts';
import { typicalSheets } from '../../../src/core/facts/sheets/index.ts';

/** A taped length with a hand's breadth of doubt. */
export const taped = (valueM: number): Measure => ({ valueM, how: 'taped', lessM: 0.05, moreM: 0.1 });

type Row = [
  id: string,
  name: string,
  x: number,
  y: number,
  z: number,
  exposure: Place['exposure'],
  reach: Place['reach'],
];

const placeRows: readonly Row[] = [
  ['fore-locker', 'chain locker in the bow', 9.2, 0, 0.8, 'damp', 'hard'],
  ['pulpit', 'pulpit at the bow', 10.2, 0, 1.4, 'weather', 'open'],
  ['fore-cabin', 'locker under the forward berth', 7.6, 0.3, 0.5, 'dry', 'panel'],
  ['bilge-well', 'bilge well ahead of the helm', 6.6, 0, -0.3, 'bilge', 'panel'],
  ['binnacle', 'compass on the dash top', 5.7, 0.2, 1.8, 'dry', 'open'],
  ['helm', 'face of the dash', 5.4, 0.7, 1.5, 'dry', 'open'],
  ['helm-locker', 'locker under the helm', 5.3, 0.8, 0.9, 'dry', 'open'],
  ['roof', 'antenna bracket on the roof', 4.8, 0, 2.9, 'weather', 'open'],
  ['panel-locker', 'locker of the switch panel', 4.6, -0.9, 0.9, 'dry', 'open'],
  ['engine-room', 'engine space', 3.4, 0, 0.2, 'engine', 'panel'],
  ['aft-cabin', 'locker in the aft cabin', 2.6, 0.4, 0.6, 'dry', 'panel'],
  ['battery-box', 'house battery', 2.2, -0.6, 0.2, 'damp', 'panel'],
  ['cockpit', 'cockpit bulkhead', 1.6, -0.1, 1, 'spray', 'open'],
  ['stern-locker', 'locker in the stern', 0.6, 0.5, 0.7, 'damp', 'panel'],
];

const withTees = new Set(['fore-cabin', 'helm-locker', 'panel-locker', 'aft-cabin', 'stern-locker']);

const places: Place[] = placeRows.map(([id, name, xM, yM, zM, exposure, reach]) => ({
  id,
  name,
  xM,
  yM,
  zM,
  exposure,
  reach,
  tees: withTees.has(id),
}));

const wayRows: readonly (readonly [id: string, a: string, b: string, lengthM: number])[] = [
  ['w1', 'fore-locker', 'fore-cabin', 2],
  ['w2', 'fore-cabin', 'bilge-well', 1.6],
  ['w3', 'bilge-well', 'helm-locker', 2.3],
  ['w4', 'helm-locker', 'helm', 0.8],
  ['w5', 'helm-locker', 'panel-locker', 2.2],
  ['w6', 'panel-locker', 'engine-room', 2],
  ['w7', 'engine-room', 'aft-cabin', 1.3],
  ['w8', 'panel-locker', 'aft-cabin', 2.8],
  ['w9', 'aft-cabin', 'stern-locker', 2.4],
  ['w10', 'aft-cabin', 'battery-box', 1.4],
  ['w11', 'panel-locker', 'roof', 2.6],
  ['w12', 'stern-locker', 'cockpit', 1.8],
  ['w13', 'helm', 'binnacle', 0.9],
  ['w14', 'helm-locker', 'cockpit', 4.2],
  ['w15', 'helm', 'pulpit', 5.2],
];

const ways: Way[] = wayRows.map(([id, a, b, lengthM]) => ({
  id,
  ends: [a, b],
  length: taped(lengthM),
  kind: 'open',
  known: 'seen',
}));

/** Somebody once read every manual of the Wreck, so that one unread sheet shows; all her 0183 lines are pairs. */
export const read = (sheet: Sheet): Sheet => ({
  ...sheet,
  source: 'manual',
  sourceNote: 'Read aboard in its manual, chapter on connections.',
  // whatever of it can be touched is of plastic
  earthing: { body: 'plastic' },
  ports: sheet.ports.map((port) => (port.line === undefined ? port : { ...port, line: 'differential' })),
});

const sheetOf = (id: string): Sheet => {
  const sheet = typicalSheets.find((entry) => entry.id === id);
  if (sheet === undefined) throw new Error(`The Wreck uses a sheet ${id}, which is not there.`);
  return read(sheet);
};

const radioByManual: Sheet = {
  ...sheetOf('vhf-dsc-0183'),
  id: 'radio-by-manual',
  name: 'Fixed VHF with DSC, as its manual has it',
  source: 'manual',
  sourceNote: 'Installation manual, page 12: connections and supply.',
  compassSafe: { valueM: 0.6, how: 'papers' },
};

const fuelSensor: Sheet = {
  ...sheetOf('sensor-depth-bus'),
  id: 'fuel-sensor-bus',
  name: 'Fuel sensor for the bus, typical',
  kind: 'tank-sender',
  ports: sheetOf('sensor-depth-bus').ports.map((port) => ({
    ...port,
    sends: [
      { pgn: 127505, everyMs: 2500 },
      { reading: 'fuel-level', everyMs: 2500 },
    ],
  })),
};

/** One that hangs on nothing aboard, charged ashore. */
const handheldRadio: Sheet = {
  id: 'handheld-radio',
  name: 'Handheld radio, charged ashore',
  kind: 'radio',
  source: 'typical',
  sourceNote: 'Invented for this boat.',
  plugs: [],
  ports: [],
  ownBattery: true,
};

type KitRow = [id: string, name: string, sheet: string, place: string, tailM: number];

const kitRows: readonly KitRow[] = [
  ['compass', 'steering compass', 'compass-magnetic', 'binnacle', 0],
  ['depth', 'depth sensor', 'sensor-depth-bus', 'bilge-well', 0.3],
  ['display', 'display at the helm', 'multifunction-display-9', 'helm', 1],
  ['fuel-port', 'fuel sensor, port', 'fuel-sensor-bus', 'aft-cabin', 0.6],
  ['fuel-stbd', 'fuel sensor, starboard', 'fuel-sensor-bus', 'aft-cabin', 0.8],
  ['gnss', 'position antenna', 'gnss-antenna-bus', 'roof', 0.3],
  ['gps-old', 'old position antenna of the radio', 'gnss-antenna-0183', 'roof', 0.5],
  ['gps-spare', 'old position antenna of the plotter', 'gnss-antenna-0183', 'roof', 0.5],
  ['handheld', 'handheld radio', 'handheld-radio', 'helm', 0],
  ['instr-aft', 'instrument in the cockpit', 'instrument-4', 'cockpit', 0.4],
  ['plotter-old', 'old plotter, kept as a spare', 'plotter-0183', 'helm', 0.5],
  ['radio', 'fixed VHF with DSC', 'radio-by-manual', 'helm', 0.5],
  ['radio-whip', 'whip of the radio', 'vhf-whip-1m', 'pulpit', 0.3],
];

const fuelInstance: ReadonlyMap<string, number> = new Map([
  ['fuel-port', 0],
  ['fuel-stbd', 1],
]);

const kit: Kit[] = kitRows.map(([id, name, sheet, place, tailM]) => {
  const instance = fuelInstance.get(id);
  return {
    id,
    name,
    sheet,
    fate: 'stays',
    place,
    ...(tailM === 0 ? {} : { tail: taped(tailM) }),
    ...(instance === undefined ? {} : { instances: [{ port: 'n2k', reading: 'fuel-level', instance }] }),
    ...(id === 'compass' ? { site: { swing: 'planned' as const } } : {}),
  };
});

const pair = (
  id: string,
  kind: Join['kind'],
  [from, talk]: [string, string],
  [to, listen]: [string, string],
): Join => ({
  id,
  kind,
  members: [
    { kit: from, port: talk, as: 'talk' },
    { kit: to, port: listen, as: 'listen' },
  ],
  hold: 'fixed',
});

const onNav = ['depth', 'display', 'fuel-port', 'fuel-stbd', 'gnss', 'instr-aft'];

const joins: Join[] = [
  {
    id: 'on-nav',
    kind: 'nmea2000',
    bus: 'nav',
    members: onNav.map((unit) => ({ kit: unit, port: 'n2k', as: 'both' })),
    hold: 'fixed',
  },
  pair('pair-plotter', 'nmea0183', ['gps-spare', 'out'], ['plotter-old', 'in']),
  pair('pair-radio', 'nmea0183', ['gps-old', 'out'], ['radio', 'in']),
  pair('coax-radio', 'coax', ['radio-whip', 'rf'], ['radio', 'rf']),
];

const supply: Boat['supply'] = {
  banks: [
    {
      id: 'house',
      place: 'battery-box',
      chemistry: 'agm',
      nominalV: 12,
      capacityAh: 160,
      lowestV: 11.8,
      for: 'house',
      coldCrankingA: 600,
      main: { kind: 'fuse', family: 'anl', distance: taped(0.05), ratingA: 40 },
      isolator: true,
    },
  ],
  panels: [
    {
      id: 'switches',
      place: 'panel-locker',
      from: 'house',
      feeder: { length: taped(5), areaMm2: 95 },
      mainA: 40,
      freeWays: 24,
      circuits: [
        { id: 'c-nav', ratingA: 3, kind: 'breaker', feeds: ['nav'] },
        { id: 'c-display', ratingA: 3, kind: 'fuse', feeds: ['display.dc'] },
        { id: 'c-plotter', ratingA: 5, kind: 'fuse', feeds: ['plotter-old.dc'] },
        { id: 'c-radio', ratingA: 10, kind: 'breaker', feeds: ['radio.dc'] },
      ],
    },
  ],
  dcdc: [],
  negativeAt: 'battery-box',
};

const pins: NonNullable<Boat['pins']> = {
  layouts: {
    nav: {
      grade: 'light',
      walk: [
        { place: 'fore-cabin', tees: ['depth.n2k'] },
        { place: 'bilge-well', via: 'w2', tees: [] },
        { place: 'helm-locker', via: 'w3', tees: ['display.n2k'] },
        { place: 'panel-locker', via: 'w5', tees: ['gnss.n2k', 'feed'] },
        { place: 'aft-cabin', via: 'w8', tees: ['fuel-port.n2k', 'fuel-stbd.n2k'] },
        { place: 'stern-locker', via: 'w9', tees: ['instr-aft.n2k'] },
      ],
      state: 'fixed',
    },
  },
};

const typicalUsed = [...new Set(kitRows.map(([, , sheet]) => sheet))].filter(
  (id) => ![radioByManual.id, fuelSensor.id, handheldRadio.id].includes(id),
);

/** The Wreck before anything was done to her: small, old and sound, her trunk held where it lies. */
export const wreckBase: Boat = {
  format: 'fairlead-boat',
  version: 1,
  name: 'Wreck',
  hull: {
    kind: 'sport-cruiser',
    material: 'grp',
    lengthM: 10,
    beamM: 3.2,
    draftM: 0.9,
    airDraft: taped(3.6),
    displacement: { valueKg: 4000, of: 'light' },
    underwater: { waterlineM: 9, propellerXM: 1.2, keel: { fromXM: 3, toXM: 6 } },
  },
  places,
  ways,
  cables: [],
  sheets: [...typicalUsed.map(sheetOf), radioByManual, fuelSensor, handheldRadio],
  kit,
  needs: [
    { reading: 'position', at: 'display', must: true, everyMs: 1000 },
    { reading: 'depth', at: 'display', must: true, everyMs: 1000 },
    { reading: 'position', at: 'instr-aft', must: true, everyMs: 1000 },
  ],
  buses: [{ id: 'nav', name: 'Navigation bus', protocol: 'nmea2000', grade: 'light' }],
  joins,
  supply,
  steering: [{ place: 'helm', by: 'wheel', letsGo: [{ how: 'hard-wired-switch' }] }],
  papers: {
    flag: 'GB',
    workBy: 'radio-installer',
    number: { digits: '000111222', from: 'state', readBackBy: 'the mate' },
    paperwork: [
      { paper: 'inland-identification', state: 'not-needed' },
      { paper: 'ship-number', state: 'have' },
      { paper: 'ship-radio-licence', state: 'have' },
    ],
  },
  pins,
  work: {
    starts: [
      { phase: 1, on: '2027-03-01' },
      { phase: 2, on: '2027-09-06' },
      { phase: 5, on: '2028-03-06' },
      { phase: 6, on: '2028-05-08' },
      { phase: 7, on: '2028-06-05' },
      { phase: 8, on: '2028-07-03' },
      { phase: 9, on: '2028-08-07' },
    ],
    hands: [
      { id: 'owner', name: 'the owner', is: 'owner', can: ['aloft'] },
      { id: 'radio-hand', name: 'the radio installer', is: 'professional', can: ['aloft', 'radio'] },
    ],
    essentials: suppliedFunctions.map((one) => ({ function: one, on: ['switches'] })),
  },
};
