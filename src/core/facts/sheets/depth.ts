import type { Sheet } from '../../boat/sheet.ts';
import {
  busPlug,
  busPort,
  busPower,
  netPlug,
  netPort,
  ownPower,
  readings,
  safeFromCompass,
  sends,
  supplyPlug,
  supplyPort,
  typicalSheet,
} from './parts.ts';

const everySecond = readings('depth', 'water-temperature').map((sent) => ({ ...sent, everyMs: 1000 }));

const sounderModule = typicalSheet(['maker-loads', 'memory-sensor-signals', 'practice-sheet-gaps'], {
  id: 'sounder-module',
  name: 'Single-channel sounder module, 200 kHz, typical',
  kind: 'sounder',
  plugs: [netPlug, { id: 'transducer', connector: 'transducer-8', gender: 'female' }, supplyPlug],
  ports: [
    supplyPort,
    netPort({ sends: [...readings('sonar-picture'), ...everySecond] }),
    {
      id: 'echo',
      onPlug: 'transducer',
      protocol: 'analog',
      role: 'listen',
      hears: readings('sonar-picture', 'depth', 'water-temperature'),
    },
  ],
  turns: [{ fromPort: 'echo', toPort: 'eth', carries: readings('sonar-picture', 'depth', 'water-temperature') }],
  power: [ownPower({ typicalA: 0.9, maxA: 2, minV: 10.8, fuseA: 3 })],
  compassSafe: safeFromCompass(0.08),
  sensor: { signals: [{ port: 'echo', frequenciesKHz: [200], powerW: 500 }] },
});

const transducerDepthTemp = typicalSheet(['memory-sensor-signals', 'practice-sheet-gaps'], {
  id: 'transducer-depth-temp',
  name: 'Through-hull depth and temperature transducer on its own 8 m lead, typical',
  kind: 'transducer',
  plugs: [
    {
      id: 'lead',
      connector: 'transducer-8',
      gender: 'male',
      fixedLead: { valueM: 8, how: 'papers', lessM: 0, moreM: 0 },
      mayCut: false,
    },
  ],
  ports: [
    {
      id: 'echo',
      onPlug: 'lead',
      protocol: 'analog',
      role: 'talk',
      sends: [...readings('sonar-picture'), ...everySecond],
    },
  ],
  cutout: { widthMm: 51, heightMm: 51 },
  sensor: { signals: [{ port: 'echo', frequenciesKHz: [200], powerW: 600 }] },
});

const sensorDepthBus = typicalSheet(['practice-sent-messages', 'memory-sensor-signals', 'practice-sheet-gaps'], {
  id: 'sensor-depth-bus',
  name: 'Small digital depth sensor for the bus, in-hull, typical',
  kind: 'depth-sensor',
  plugs: [busPlug],
  ports: [busPort(3, { sends: sends(128267) })],
  power: [busPower({ typicalA: 0.15, maxA: 0.15 })],
  sensor: { inHull: true, signals: [{ port: 'n2k', frequenciesKHz: [235] }] },
});

/** Depth: a sounder module with its transducer, and a sensor that needs no module. */
export const depth: readonly Sheet[] = [sounderModule, transducerDepthTemp, sensorDepthBus];
