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
}

/** A sensor that gives a voltage, a resistance or pulses, on leads that may be cut. */
const bare = ({ id, name, kind, port = 'signal', gives, cutoutMm }: Bare): Sheet =>
  typicalSheet(['practice-sheet-gaps'], {
    id,
    name,
    kind,
    plugs: [leads('lead')],
    ports: [analogOut(port, 'lead', ...gives)],
    ...(cutoutMm === undefined ? {} : { cutout: { shape: 'round', widthMm: cutoutMm, heightMm: cutoutMm } }),
  });

/** Bare sensors: something else must make a message of what they measure. */
export const analogSensors: readonly Sheet[] = [
  bare({
    id: 'wind-head-analog',
    name: 'Masthead vane and cups, analog, typical',
    kind: 'wind-sensor',
    gives: ['wind-apparent'],
  }),
  bare({
    id: 'transducer-paddle-analog',
    name: 'Paddle wheel with temperature, analog, typical',
    kind: 'speed-sensor',
    gives: ['speed-water', 'log-distance', 'water-temperature'],
  }),
  bare({
    id: 'transducer-depth-analog',
    name: 'Passive depth transducer 200 kHz, typical',
    kind: 'transducer',
    port: 'echo',
    gives: ['sonar-picture', 'depth'],
  }),
  bare({
    id: 'transducer-dst-analog',
    name: 'Through-hull transducer for depth, speed and temperature, analog, typical',
    kind: 'transducer',
    port: 'echo',
    gives: ['sonar-picture', 'depth', 'speed-water', 'log-distance', 'water-temperature'],
    cutoutMm: 51,
  }),
  bare({
    id: 'transducer-1kw',
    name: 'Through-hull transducer for a large sounder, 1 kW, two frequencies, typical',
    kind: 'transducer',
    port: 'echo',
    gives: ['sonar-picture', 'depth', 'water-temperature'],
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
