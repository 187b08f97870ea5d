import type { Sheet } from '../../boat/sheet.ts';
import {
  analogIn,
  busPlug,
  busPort,
  busPower,
  hears,
  leads,
  listenPort,
  listens,
  ownPower,
  pairPlug,
  readings,
  safeFromCompass,
  sends,
  supplyPlug,
  supplyPort,
  typicalSheet,
} from './parts.ts';

const instrumentMono = typicalSheet(
  ['practice-lighting', 'maker-loads', 'practice-sent-messages', 'practice-sheet-gaps'],
  {
    id: 'instrument-mono',
    name: 'Monochrome instrument for the bus, typical',
    kind: 'instrument',
    plugs: [busPlug],
    ports: [
      busPort(1, {
        hears: hears(
          126992,
          127245,
          127250,
          127251,
          127488,
          127489,
          127505,
          127508,
          128259,
          128267,
          128275,
          129025,
          129026,
          129029,
          129283,
          129284,
          130306,
          130310,
          130311,
          130312,
          130316,
        ),
      }),
    ],
    power: [busPower({ typicalA: 0.03, maxA: 0.04 })],
    compassSafe: safeFromCompass(0.3),
    ipCode: 'IPX6/IPX7',
    lighting: { dims: 'with-group' },
  },
);

const repeater0183 = typicalSheet(
  ['practice-lighting', 'maker-loads', 'practice-sent-messages', 'practice-sheet-gaps'],
  {
    id: 'repeater-0183',
    name: 'Old repeater for NMEA 0183: depth, speed, wind or heading, typical',
    kind: 'instrument',
    plugs: [pairPlug('data', ['in']), supplyPlug],
    ports: [
      supplyPort,
      listenPort('in', { hears: listens('DBT', 'DPT', 'HDG', 'HDM', 'HDT', 'MTW', 'MWV', 'VHW', 'VLW', 'VWR', 'XTE') }),
    ],
    power: [ownPower({ typicalA: 0.04, maxA: 0.06, minV: 10, fuseA: 1 })],
    compassSafe: safeFromCompass(0.3),
    lighting: { dims: 'own-knob' },
  },
);

/** An old instrument on its maker's own wire, which runs on to the next one. */
const onWire = { protocol: 'single-wire', dialect: 'maker-a/1', role: 'both' } as const;
const wirePlugs = [
  { id: 'from-last', connector: 'maker-a-3', gender: 'female' },
  { id: 'to-next', connector: 'maker-a-3', gender: 'female' },
] as const;
const wirePower = {
  port: 'wire',
  typical: 0.03,
  max: 0.06,
  unit: 'A',
  behaves: 'current',
  minV: 10,
  maxV: 16,
} as const;

const depthSingleWire = typicalSheet(['maker-loads', 'practice-sheet-gaps'], {
  id: 'depth-single-wire',
  name: "Old depth instrument with its transducer, on its maker's own wire, typical",
  kind: 'instrument',
  plugs: [...wirePlugs, leads('element')],
  ports: [
    { ...onWire, id: 'wire', onPlug: 'from-last', sends: readings('depth') },
    { ...onWire, id: 'next', onPlug: 'to-next', sends: readings('depth') },
    analogIn('echo', 'element', 'depth'),
  ],
  together: [['wire', 'next']],
  turns: [
    { fromPort: 'echo', toPort: 'wire', carries: readings('depth') },
    { fromPort: 'echo', toPort: 'next', carries: readings('depth') },
  ],
  power: [wirePower],
  compassSafe: safeFromCompass(0.3),
});

const repeaterSingleWire = typicalSheet(['maker-loads', 'practice-sheet-gaps'], {
  id: 'repeater-single-wire',
  name: "Old repeater on its maker's own wire, typical",
  kind: 'instrument',
  plugs: [...wirePlugs],
  ports: [
    {
      ...onWire,
      id: 'wire',
      onPlug: 'from-last',
      hears: readings('depth', 'speed-water', 'log-distance', 'water-temperature', 'wind-apparent', 'heading'),
    },
    { ...onWire, id: 'next', onPlug: 'to-next' },
  ],
  together: [['wire', 'next']],
  power: [wirePower],
  compassSafe: safeFromCompass(0.3),
});

const keypadBus = typicalSheet(['maker-loads', 'practice-sheet-gaps'], {
  id: 'display-keypad-bus',
  name: 'Keypad that works the displays over the bus, typical',
  kind: 'keypad',
  plugs: [busPlug],
  ports: [busPort(2, { sends: sends(65_280) })],
  power: [busPower({ typicalA: 0.05, maxA: 0.1 })],
  compassSafe: safeFromCompass(0.3),
  ipCode: 'IPX6',
});

/** Instrument heads beside the colour one, new and old. */
export const instruments: readonly Sheet[] = [
  instrumentMono,
  repeater0183,
  depthSingleWire,
  repeaterSingleWire,
  keypadBus,
];
