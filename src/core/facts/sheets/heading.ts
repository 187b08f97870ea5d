import type { Sheet } from '../../boat/sheet.ts';
import {
  busPlug,
  busPort,
  busPower,
  hears,
  ownPower,
  pairPlug,
  safeFromCompass,
  says,
  sends,
  supplyPlug,
  supplyPort,
  talkPort,
  typicalSheet,
} from './parts.ts';

const headingSensorBus = typicalSheet(['practice-sent-messages', 'practice-sheet-gaps'], {
  id: 'heading-sensor-bus',
  name: '9-axis heading sensor for the bus, typical',
  kind: 'heading-sensor',
  plugs: [busPlug],
  ports: [busPort(2, { sends: sends(127250, 127251, 127257), hears: hears(127258) })],
  power: [busPower({ typicalA: 0.1, maxA: 0.1 })],
  ipCode: 'IPX6/IPX7',
  sensor: { north: 'nine-axis' },
});

const compassMagnetic = typicalSheet(['practice-sheet-gaps'], {
  id: 'compass-magnetic',
  name: 'Magnetic steering compass, typical',
  kind: 'steering-compass',
  plugs: [],
  ports: [],
});

const satelliteCompassBus = typicalSheet(['maker-loads', 'practice-sent-messages'], {
  id: 'satellite-compass-bus',
  name: 'Satellite compass for the bus: heading, attitude and position, typical',
  kind: 'heading-sensor',
  plugs: [busPlug],
  ports: [
    busPort(4, {
      sends: sends(126992, 127250, 127251, 127257, 127258, 129025, 129026, 129029, 129539, 129540),
    }),
  ],
  power: [busPower({ typicalA: 0.18, maxA: 0.18 })],
  // Two antennas tell the heading, so nothing magnetic is in it.
  compassSafe: safeFromCompass(0),
  sensor: { north: 'satellite' },
  ipCode: 'IPX6/IPX7',
});

const headingSensor0183 = typicalSheet(['practice-sent-messages', 'practice-sheet-gaps'], {
  id: 'heading-sensor-0183',
  name: 'Fluxgate heading sensor, NMEA 0183, typical',
  kind: 'heading-sensor',
  plugs: [pairPlug('data', ['out']), supplyPlug],
  ports: [supplyPort, talkPort('out', { sends: says(['HDG'], 100) })],
  power: [ownPower({ typicalA: 0.1, maxA: 0.15, minV: 10, fuseA: 1 })],
  sensor: { north: 'fluxgate' },
});

const gyro0183 = typicalSheet(['practice-sent-messages', 'practice-sheet-gaps'], {
  id: 'gyro-0183',
  name: 'Gyro compass, 24 V, NMEA 0183 at 38400 baud, typical',
  kind: 'heading-sensor',
  plugs: [pairPlug('data', ['out']), supplyPlug],
  ports: [supplyPort, talkPort('out', { baud: 38_400, sends: says(['HDT', 'ROT'], 100) })],
  power: [{ port: 'dc', typical: 60, max: 60, unit: 'W', behaves: 'power', minV: 20, maxV: 32, fuseA: 5 }],
  sensor: { north: 'gyro' },
});

/** Heading: sensors for the bus and for NMEA 0183, a gyro, and the compass that needs no wires. */
export const heading: readonly Sheet[] = [
  headingSensorBus,
  compassMagnetic,
  satelliteCompassBus,
  headingSensor0183,
  gyro0183,
];
