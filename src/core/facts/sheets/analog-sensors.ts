import type { Signal } from '../../boat/sensor.ts';
import type { Sheet } from '../../boat/sheet.ts';
import type { ReadingId } from '../reading-ids.ts';
import { analogOut, leads, typicalSheet } from './parts.ts';

interface Bare {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly port?: string;
  readonly gives: readonly ReadingId[];
  readonly cutoutMm?: number;
  /** what it gives at its port */
  readonly signal?: Omit<Signal, 'port'>;
}

/** A sensor that gives a voltage, a resistance or pulses, on leads that may be cut. */
const bare = ({ id, name, kind, port = 'signal', gives, cutoutMm, signal }: Bare): Sheet =>
  typicalSheet(['practice-sheet-gaps', ...(signal === undefined ? [] : (['memory-sensor-signals'] as const))], {
    id,
    name,
    kind,
    plugs: [leads('lead')],
    ports: [analogOut(port, 'lead', ...gives)],
    ...(signal === undefined ? {} : { sensor: { signals: [{ port, ...signal }] } }),
    ...(cutoutMm === undefined ? {} : { cutout: { shape: 'round', widthMm: cutoutMm, heightMm: cutoutMm } }),
  });

/** Bare sensors: something else must make a message of what they measure. */
export const analogSensors: readonly Sheet[] = [
  bare({
    id: 'wind-head-analog',
    name: 'Masthead vane and cups, analog, typical',
    kind: 'wind-sensor',
    gives: ['wind-apparent'],
    signal: { feed: { leastV: 6, mostV: 10 }, vanes: ['sine-cosine'] },
  }),
  bare({
    id: 'transducer-paddle-analog',
    name: 'Paddle wheel with temperature, analog, typical',
    kind: 'speed-sensor',
    gives: ['speed-water', 'log-distance', 'water-temperature'],
    signal: { feed: { leastV: 5, mostV: 12 }, pulses: { least: 5, most: 6 } },
  }),
  bare({
    id: 'transducer-depth-analog',
    name: 'Passive depth transducer 200 kHz, typical',
    kind: 'transducer',
    port: 'echo',
    gives: ['sonar-picture', 'depth'],
    signal: { frequenciesKHz: [200], powerW: 300 },
  }),
  bare({
    id: 'transducer-dst-analog',
    name: 'Through-hull transducer for depth, speed and temperature, analog, typical',
    kind: 'transducer',
    port: 'echo',
    gives: ['sonar-picture', 'depth', 'speed-water', 'log-distance', 'water-temperature'],
    signal: { frequenciesKHz: [200], powerW: 500, feed: { leastV: 5, mostV: 12 }, pulses: { least: 5, most: 6 } },
    cutoutMm: 51,
  }),
  bare({
    id: 'transducer-1kw',
    name: 'Through-hull transducer for a large sounder, 1 kW, two frequencies, typical',
    kind: 'transducer',
    port: 'echo',
    gives: ['sonar-picture', 'depth', 'water-temperature'],
    signal: { frequenciesKHz: [50, 200], powerW: 1000 },
    cutoutMm: 95,
  }),
  bare({
    id: 'temperature-probe',
    name: 'Temperature probe for water, typical',
    kind: 'temperature-sensor',
    gives: ['water-temperature'],
  }),
  bare({
    id: 'engine-senders',
    name: 'Senders of an older engine: revolutions, oil, temperature, typical',
    kind: 'engine',
    gives: ['engine'],
  }),
  bare({
    id: 'gearbox-senders',
    name: 'Oil senders of a gearbox, typical',
    kind: 'gearbox',
    gives: ['transmission'],
  }),
];
