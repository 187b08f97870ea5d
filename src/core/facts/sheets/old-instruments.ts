import type { Sheet } from '../../boat/sheet.ts';
import {
  analogIn,
  leads,
  ownPower,
  pairPlug,
  readings,
  safeFromCompass,
  says,
  signalPlug,
  supplyPlug,
  supplyPort,
  talkPort,
  typicalSheet,
} from './parts.ts';

const instrumentSources = ['practice-sent-messages', 'memory-sensor-signals', 'practice-sheet-gaps'] as const;

/** One printed gauge with its backlight on. */
const gaugePower = ownPower({ typicalA: 0.06, maxA: 0.12, minV: 10, fuseA: 1 });

const logDepth0183 = typicalSheet(instrumentSources, {
  id: 'log-depth-0183',
  name: 'Old log and depth display with its two transducers, single-wire NMEA 0183 out, typical',
  kind: 'instrument',
  plugs: [signalPlug('data', 'out'), leads('wheel'), leads('element'), supplyPlug],
  ports: [
    supplyPort,
    analogIn('log', 'wheel', 'speed-water', 'log-distance', 'water-temperature'),
    analogIn('echo', 'element', 'depth'),
    talkPort('out', { line: 'single-ended', sends: says(['DBT', 'MTW', 'VHW', 'VLW'], 1000) }),
  ],
  turns: [
    { fromPort: 'log', toPort: 'out', carries: readings('speed-water', 'log-distance', 'water-temperature') },
    // It shows depth below the keel itself, and sends depth below the transducer: DBT has no field for the offset.
    { fromPort: 'echo', toPort: 'out', carries: [{ reading: 'depth', loses: ['offset'] }] },
  ],
  power: [gaugePower],
  compassSafe: safeFromCompass(0.3),
  lighting: { dims: 'own-knob' },
  sensor: {
    signals: [
      { port: 'echo', frequenciesKHz: [200], powerW: 100 },
      { port: 'log', feed: { leastV: 5, mostV: 8 }, pulses: { least: 4, most: 7 } },
    ],
  },
});

const windDisplay0183 = typicalSheet(instrumentSources, {
  id: 'wind-display-0183',
  name: 'Old wind display with its masthead unit, NMEA 0183 out, typical',
  kind: 'instrument',
  plugs: [pairPlug('data', ['out']), leads('vane'), supplyPlug],
  ports: [supplyPort, analogIn('head', 'vane', 'wind-apparent'), talkPort('out', { sends: says(['MWV'], 1000) })],
  turns: [{ fromPort: 'head', toPort: 'out', carries: readings('wind-apparent') }],
  power: [gaugePower],
  compassSafe: safeFromCompass(0.3),
  lighting: { dims: 'own-knob' },
  sensor: { signals: [{ port: 'head', feed: { leastV: 8, mostV: 8 }, vanes: ['sine-cosine'] }] },
});

/** Old instruments with their own transducer that a refit often keeps. */
export const oldInstruments: readonly Sheet[] = [logDepth0183, windDisplay0183];
