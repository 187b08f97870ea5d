import type { Sheet } from '../../boat/sheet.ts';
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

const plotter0183 = typicalSheet(['maker-loads', 'practice-sent-messages', 'practice-display-envelope'], {
  id: 'plotter-0183',
  name: 'Old 10-inch chart plotter, NMEA 0183, typical',
  kind: 'display',
  plugs: [pairPlug('data', ['in', 'out']), supplyPlug],
  ports: [
    supplyPort,
    {
      id: 'in',
      onPlug: 'data',
      protocol: 'nmea0183',
      line: 'single-ended',
      baud: 4800,
      role: 'listen',
      hears: listens('RMC', 'GGA', 'GLL', 'VTG'),
    },
    {
      id: 'out',
      onPlug: 'data',
      protocol: 'nmea0183',
      line: 'single-ended',
      baud: 4800,
      role: 'talk',
      sends: [...says(['APB', 'RMB', 'XTE'], 1000), ...says(['RMC'], 2000)],
    },
  ],
  turns: [
    {
      fromPort: 'in',
      toPort: 'out',
      carries: readings('position', 'course-speed-ground', 'time-date', 'variation'),
    },
  ],
  power: [ownPower({ typicalA: 1.9, maxA: 2.7, minV: 10, fuseA: 5 })],
  compassSafe: safeFromCompass(0.5),
});

const sounderStandalone = typicalSheet(['maker-loads', 'practice-sheet-gaps'], {
  id: 'sounder-standalone',
  name: 'Old sounder with its own screen, 50 kHz, typical',
  kind: 'sounder',
  plugs: [
    { id: 'transducer', connector: 'transducer-8', gender: 'female' },
    signalPlug('repeat', 'repeater'),
    supplyPlug,
  ],
  ports: [
    supplyPort,
    { id: 'echo', onPlug: 'transducer', protocol: 'analog', role: 'listen', hears: readings('sonar-picture', 'depth') },
    { id: 'repeater', onPlug: 'repeat', protocol: 'analog', role: 'talk', sends: readings('depth') },
  ],
  turns: [{ fromPort: 'echo', toPort: 'repeater', carries: readings('depth') }],
  power: [ownPower({ typicalA: 0.9, maxA: 2, minV: 10.8, fuseA: 3 })],
  compassSafe: safeFromCompass(0.5),
});

const radarScreenOld = typicalSheet(['memory-loads', 'practice-sheet-gaps'], {
  id: 'radar-screen-old',
  name: 'Old monochrome radar screen, its load with the dome, typical',
  kind: 'display',
  plugs: [{ id: 'scanner', connector: 'maker-b-radar', gender: 'female' }, supplyPlug],
  ports: [
    supplyPort,
    { id: 'video', onPlug: 'scanner', protocol: 'video', role: 'listen', hears: readings('radar-picture') },
  ],
  power: [ownPower({ typicalA: 2.5, maxA: 4, minV: 10.8, fuseA: 5 })],
  compassSafe: safeFromCompass(0.5),
});

const radarMagnetron2kw = typicalSheet(['memory-scanners', 'maker-compass-distance', 'practice-sheet-gaps'], {
  id: 'radar-magnetron-2kw',
  name: 'Old 2 kW magnetron dome, fed by its screen, typical',
  kind: 'radar',
  scanner: { kind: 'dome', sends: 'pulses', peakKw: 2, verticalBeamDeg: 30, acrossM: 0.46, leastRangeM: 25 },
  plugs: [{ id: 'cable', connector: 'maker-b-radar', gender: 'male' }],
  ports: [{ id: 'video', onPlug: 'cable', protocol: 'video', role: 'talk', sends: readings('radar-picture') }],
  compassSafe: safeFromCompass(0.7),
});

const repeaterAnalog = typicalSheet(['maker-loads', 'practice-sheet-gaps'], {
  id: 'repeater-analog',
  name: 'Old depth repeater, typical',
  kind: 'instrument',
  plugs: [signalPlug('lead', 'in'), supplyPlug],
  ports: [supplyPort, { id: 'in', onPlug: 'lead', protocol: 'analog', role: 'listen', hears: readings('depth') }],
  power: [ownPower({ typicalA: 0.03, maxA: 0.04, minV: 10, fuseA: 3 })],
});

/** Old kit that usually leaves: plotter, sounder, radar, repeater. */
export const oldKit: readonly Sheet[] = [
  plotter0183,
  sounderStandalone,
  radarScreenOld,
  radarMagnetron2kw,
  repeaterAnalog,
];
