import type { Sheet } from '../../boat/sheet.ts';
import { analogOut, leads, typicalSheet } from './parts.ts';

const windHeadAnalog = typicalSheet(['practice-sheet-gaps'], {
  id: 'wind-head-analog',
  name: 'Masthead vane and cups, analog, typical',
  kind: 'wind-sensor',
  plugs: [leads('lead')],
  ports: [analogOut('signal', 'lead', 'wind-apparent')],
});

const transducerPaddleAnalog = typicalSheet(['practice-sheet-gaps'], {
  id: 'transducer-paddle-analog',
  name: 'Paddle wheel with temperature, analog, typical',
  kind: 'speed-sensor',
  plugs: [leads('lead')],
  ports: [analogOut('signal', 'lead', 'speed-water', 'log-distance', 'water-temperature')],
});

const transducerDepthAnalog = typicalSheet(['practice-sheet-gaps'], {
  id: 'transducer-depth-analog',
  name: 'Passive depth transducer 200 kHz, typical',
  kind: 'transducer',
  plugs: [leads('lead')],
  ports: [analogOut('echo', 'lead', 'sonar-picture', 'depth')],
});

/** Bare sensors that give a voltage, a resistance or pulses: something else must make a message of it. */
export const analogSensors: readonly Sheet[] = [windHeadAnalog, transducerPaddleAnalog, transducerDepthAnalog];
