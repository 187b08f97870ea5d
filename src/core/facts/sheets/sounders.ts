import type { Sheet } from '../../boat/sheet.ts';
import {
  busPlug,
  busPort,
  netPlug,
  netPort,
  ownPower,
  ownWatts,
  readings,
  safeFromCompass,
  sends,
  supplyPlug,
  supplyPort,
  typicalSheet,
} from './parts.ts';

const everySecond = readings('depth', 'water-temperature').map((sent) => ({ ...sent, everyMs: 1000 }));

const sounderModuleLarge = typicalSheet(['maker-loads', 'memory-sensor-signals', 'practice-sheet-gaps'], {
  id: 'sounder-module-large',
  name: 'Large sounder module, 1 kW, two channels, typical',
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
  power: [ownPower({ typicalA: 4.8, maxA: 8.3, minV: 10.8, maxV: 32, fuseA: 15 })],
  compassSafe: safeFromCompass(0.6),
  sensor: { signals: [{ port: 'echo', frequenciesKHz: [50, 200], powerW: 1000 }] },
});

const sonarModuleFls = typicalSheet(['practice-sheet-gaps'], {
  id: 'sonar-module-fls',
  name: 'Forward-looking sonar module with its own transducer, typical',
  kind: 'sounder',
  plugs: [busPlug, netPlug, supplyPlug],
  ports: [supplyPort, busPort(1, { sends: sends(128267) }), netPort({ sends: readings('sonar-picture') })],
  power: [ownWatts({ typicalW: 12, maxW: 24, minV: 10.8, fuseA: 5 })],
  compassSafe: safeFromCompass(0.6),
});

/** Sounders beside the small module: a large one and one that looks ahead. */
export const sounders: readonly Sheet[] = [sounderModuleLarge, sonarModuleFls];
