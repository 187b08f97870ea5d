import type { Plug, Port, Sheet } from '../../boat/sheet.ts';
import {
  listens,
  ownPower,
  pairPlug,
  readings,
  safeFromCompass,
  says,
  signalPlug,
  supplyPlug,
  supplyPort,
  typicalSheet,
} from './parts.ts';

const makerPlug = (id: string): Plug => ({ id, connector: 'maker-a-3', gender: 'female' });

/** What the computer tells its heads over the maker's own wire. */
const toHeads = readings('pilot-state', 'heading', 'rudder', 'cross-track');

const headWire = (id: string, onPlug: string): Port => ({
  id,
  onPlug,
  protocol: 'single-wire',
  dialect: 'maker-a/1',
  role: 'both',
});

const pilotComputer0183 = typicalSheet(
  ['maker-loads', 'memory-pilot-outputs', 'practice-sent-messages', 'practice-sheet-gaps'],
  {
    id: 'pilot-computer-0183',
    name: 'Old pilot computer, NMEA 0183 in and out, drive output 20 A, typical',
    kind: 'pilot-computer',
    plugs: [
      supplyPlug,
      pairPlug('data', ['in', 'out']),
      makerPlug('heads'),
      signalPlug('fluxgate', 'flux'),
      signalPlug('rudder', 'rudder-in'),
      signalPlug('drive', 'motor'),
    ],
    ports: [
      supplyPort,
      {
        id: 'in',
        onPlug: 'data',
        protocol: 'nmea0183',
        line: 'differential',
        baud: 4800,
        role: 'listen',
        hears: listens('APB', 'RMB', 'XTE', 'RMC'),
      },
      {
        id: 'out',
        onPlug: 'data',
        protocol: 'nmea0183',
        line: 'differential',
        baud: 4800,
        role: 'talk',
        sends: says(['HDG', 'RSA'], 1000),
      },
      { ...headWire('head-wire', 'heads'), sends: toHeads, hears: readings('pilot-command') },
      { id: 'flux', onPlug: 'fluxgate', protocol: 'analog', role: 'listen', hears: readings('heading') },
      { id: 'rudder-in', onPlug: 'rudder', protocol: 'analog', role: 'listen', hears: readings('rudder') },
      { id: 'motor', onPlug: 'drive', protocol: 'analog', role: 'talk', sends: readings('pilot-command') },
    ],
    turns: [
      { fromPort: 'flux', toPort: 'out', carries: readings('heading') },
      // HDG has a field for variation; the computer fills it only with what it hears.
      { fromPort: 'in', toPort: 'out', carries: readings('variation') },
      { fromPort: 'flux', toPort: 'head-wire', carries: readings('heading') },
      { fromPort: 'rudder-in', toPort: 'out', carries: readings('rudder') },
      { fromPort: 'rudder-in', toPort: 'head-wire', carries: readings('rudder') },
      { fromPort: 'in', toPort: 'head-wire', carries: readings('cross-track') },
    ],
    power: [ownPower({ typicalA: 0.4, maxA: 1, minV: 10.8, fuseA: 25 })],
    driveOutput: {
      port: 'motor',
      works: ['reversing-motor', 'solenoid-valves'],
      runA: 12,
      peakA: 20,
      valveA: 5,
      clutch: { fitted: true, clutchA: 2 },
      rudder: { hears: ['potentiometer'], needed: true },
    },
  },
);

const pilotHeadMaker = typicalSheet(['maker-loads', 'practice-sheet-gaps'], {
  id: 'pilot-head-maker',
  name: "Old pilot head on its maker's own wire, typical",
  kind: 'pilot-head',
  plugs: [makerPlug('from-computer'), makerPlug('to-next')],
  ports: [
    { ...headWire('wire', 'from-computer'), sends: readings('pilot-command'), hears: toHeads },
    headWire('next', 'to-next'),
  ],
  together: [['wire', 'next']],
  power: [{ port: 'wire', typical: 0.03, max: 0.04, unit: 'A', behaves: 'current', minV: 10.8, maxV: 16 }],
  compassSafe: safeFromCompass(0.4),
  ipCode: 'IPX6/IPX7',
});

const sensor = (id: string, name: string, kind: string, reading: 'heading' | 'rudder'): Sheet =>
  typicalSheet(['practice-sheet-gaps'], {
    id,
    name,
    kind,
    plugs: [signalPlug('lead', 'signal')],
    ports: [{ id: 'signal', onPlug: 'lead', protocol: 'analog', role: 'talk', sends: readings(reading) }],
  });

const fluxgateAnalog: Sheet = {
  ...sensor('fluxgate-analog', 'Fluxgate compass of a pilot, typical', 'heading-sensor', 'heading'),
  sensor: { north: 'fluxgate' },
};
const rudderAnalog: Sheet = {
  ...sensor('rudder-analog', 'Rudder potentiometer, typical', 'rudder-sensor', 'rudder'),
  rudderSensor: 'potentiometer',
};

const hydraulicPump12 = typicalSheet(['memory-pilot-outputs', 'practice-sheet-gaps'], {
  id: 'hydraulic-pump-12',
  name: 'Reversing hydraulic pump 1.0 l/min, 12 V, typical',
  kind: 'steering-drive',
  plugs: [signalPlug('leads', 'motor')],
  ports: [{ id: 'motor', onPlug: 'leads', protocol: 'analog', role: 'listen', hears: readings('pilot-command') }],
  power: [{ port: 'motor', typical: 6, max: 6, peak: 18, unit: 'A', behaves: 'current', minV: 10.8, maxV: 16 }],
  // Its check valves shut it off from the helm pump when it stands still.
  drive: {
    type: 'reversing-pump',
    motorV: 12,
    runA: 6,
    peakA: 18,
    bypass: false,
    whenPowerIsLost: 'lets-go',
    needsRudderSensor: true,
    boatKg: 12_000,
  },
});

/** A kept pilot: computer, heads, sensors, pump. */
export const pilot: readonly Sheet[] = [
  pilotComputer0183,
  pilotHeadMaker,
  fluxgateAnalog,
  rudderAnalog,
  hydraulicPump12,
];
