import type { Sends, Sheet } from '../../boat/sheet.ts';
import { analogIn, busPlug, busPort, busPower, leads, readings, sends, typicalSheet } from './parts.ts';

interface BusSensor {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly len: number;
  readonly amps: readonly [typical: number, max: number];
  readonly sends: Sends[];
  readonly terminator?: true;
  readonly cutoutMm?: number;
}

/** A sensor that makes its own messages and is fed by the bus. */
const busSensor = ({ id, name, kind, len, amps, sends: said, terminator, cutoutMm }: BusSensor): Sheet =>
  typicalSheet(['maker-loads', 'practice-sent-messages', 'practice-sheet-gaps'], {
    id,
    name,
    kind,
    plugs: [busPlug],
    ports: [busPort(len, { sends: said })],
    ...(terminator === undefined ? {} : { terminator }),
    power: [busPower({ typicalA: amps[0], maxA: amps[1] })],
    ...(cutoutMm === undefined ? {} : { cutout: { shape: 'round', widthMm: cutoutMm, heightMm: cutoutMm } }),
    ipCode: 'IPX6/IPX7',
  });

const air: Sends = { reading: 'air-temperature', everyMs: 2000 };

const temperatureSensorBus = typicalSheet(['practice-sent-messages', 'practice-sheet-gaps'], {
  id: 'temperature-sensor-bus',
  name: 'Temperature box for the bus, two probes, typical',
  kind: 'temperature-sensor',
  plugs: [busPlug, leads('probe-1'), leads('probe-2')],
  ports: [
    busPort(1, { sends: sends(130316) }),
    analogIn('in-1', 'probe-1', 'water-temperature', 'air-temperature'),
    analogIn('in-2', 'probe-2', 'water-temperature', 'air-temperature'),
  ],
  // What the message is of follows from the probe; a probe in a locker or an exhaust is neither, and gives no reading.
  turns: ['in-1', 'in-2'].map((fromPort) => ({
    fromPort,
    toPort: 'n2k',
    carries: readings('water-temperature', 'air-temperature'),
  })),
  power: [busPower({ typicalA: 0.03, maxA: 0.05 })],
});

/** Sensors with a bus plug: wind, weather, water, temperature. */
export const busSensors: readonly Sheet[] = [
  busSensor({
    id: 'wind-sensor-bus',
    name: 'Masthead wind sensor for the bus, typical',
    kind: 'wind-sensor',
    len: 1,
    amps: [0.028, 0.05],
    sends: sends(130306),
  }),
  busSensor({
    id: 'wind-sensor-terminator',
    name: 'Masthead wind sensor with the terminator built in, at the end of the trunk, typical',
    kind: 'wind-sensor',
    len: 1,
    amps: [0.028, 0.05],
    sends: sends(130306),
    terminator: true,
  }),
  busSensor({
    id: 'weather-station-bus',
    name: 'Station for air temperature, pressure and humidity, typical',
    kind: 'weather-sensor',
    len: 2,
    amps: [0.06, 0.1],
    sends: [...sends(130312, 130313, 130314), air],
  }),
  busSensor({
    id: 'weather-sensor-wind-bus',
    name: 'Masthead sensor for wind without moving parts, air temperature and pressure, typical',
    kind: 'weather-sensor',
    len: 2,
    amps: [0.06, 0.1],
    sends: [...sends(130306, 130312, 130314), { reading: 'wind-apparent', everyMs: 100 }, air],
  }),
  busSensor({
    id: 'sensor-dst-bus',
    name: 'Through-hull sensor for depth, speed and temperature, for the bus, typical',
    kind: 'depth-sensor',
    len: 3,
    amps: [0.1, 0.15],
    sends: sends(128259, 128267, 128275, 130316),
    cutoutMm: 51,
  }),
  busSensor({
    id: 'speed-sensor-bus',
    name: 'Through-hull sensor for speed and temperature, for the bus, typical',
    kind: 'speed-sensor',
    len: 2,
    amps: [0.06, 0.1],
    sends: sends(128259, 128275, 130316),
    cutoutMm: 51,
  }),
  temperatureSensorBus,
];
