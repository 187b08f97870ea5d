import type { Sheet } from '../../boat/sheet.ts';
import {
  busPlug,
  busPort,
  busPower,
  hears,
  listenPort,
  listens,
  ownPower,
  pairPlug,
  readings,
  safeFromCompass,
  says,
  sends,
  supplyPlug,
  supplyPort,
  talkPort,
  typicalSheet,
} from './parts.ts';

const inputs = ['in-1', 'in-2', 'in-3', 'in-4'] as const;

/** What it takes from instruments; heading only from a compass, for a log without one may invent it. */
const fromInstruments = readings(
  'depth',
  'speed-water',
  'log-distance',
  'water-temperature',
  'wind-apparent',
  'heading',
  'rudder',
);

/** What it passes on to a computer of instruments, position and ships alike. */
const throughUsb = readings(
  'depth',
  'speed-water',
  'log-distance',
  'water-temperature',
  'wind-apparent',
  'heading',
  'position',
  'course-speed-ground',
  'time-date',
  'ais-targets',
);

const multiplexerBus = typicalSheet(['practice-converter', 'practice-sheet-gaps'], {
  id: 'multiplexer-bus',
  name: 'Multiplexer with four isolated NMEA 0183 inputs, one output and a bus port, typical',
  kind: 'multiplexer',
  plugs: [busPlug, pairPlug('inputs', inputs), pairPlug('data', ['out'])],
  ports: [
    busPort(3, {
      sends: sends(127245, 127250, 128259, 128267, 128275, 130306, 130316),
      hears: hears(126992, 127258, 129025, 129026, 129029, 129283, 129284, 130306),
    }),
    ...inputs.map((id) =>
      listenPort(id, {
        onPlug: 'inputs',
        isolated: true,
        hears: listens('DBT', 'DPT', 'HDG', 'HDM', 'MTW', 'MWV', 'RSA', 'VHW', 'VLW'),
      }),
    ),
    talkPort('out', { sends: [...says(['RMC'], 2000), ...says(['APB', 'RMB', 'XTE', 'MWV'], 1000)] }),
    { id: 'radio', protocol: 'wifi', role: 'both' },
  ],
  turns: [
    {
      fromPort: 'n2k',
      toPort: 'out',
      carries: [
        ...readings('position', 'course-speed-ground', 'time-date', 'variation', 'route', 'cross-track'),
        { reading: 'wind-apparent', loses: ['instance'] },
      ],
    },
    ...inputs.flatMap((fromPort) => [
      { fromPort, toPort: 'n2k', carries: fromInstruments },
      { fromPort, toPort: 'out', carries: readings('wind-apparent') },
    ]),
  ],
  power: [busPower({ typicalA: 0.12, maxA: 0.15 })],
  compassSafe: safeFromCompass(0.08),
});

const multiplexer0183 = typicalSheet(['practice-converter', 'practice-sheet-gaps'], {
  id: 'multiplexer-0183',
  name: 'Multiplexer with four NMEA 0183 inputs, one output at 38400 baud and USB, typical',
  kind: 'multiplexer',
  plugs: [
    pairPlug('inputs', inputs),
    pairPlug('data', ['out']),
    { id: 'usb-b', connector: 'usb-b', gender: 'female' },
    supplyPlug,
  ],
  ports: [
    supplyPort,
    ...inputs.map((id) =>
      listenPort(id, {
        onPlug: 'inputs',
        isolated: true,
        hears: listens('DBT', 'DPT', 'GGA', 'HDG', 'HDM', 'MTW', 'MWV', 'RMC', 'VDM', 'VHW', 'VLW', 'VTG'),
      }),
    ),
    talkPort('out', {
      baud: 38_400,
      sends: [
        ...says(['DBT', 'DPT', 'MTW', 'MWV', 'RMC', 'VHW', 'VLW'], 1000),
        ...says(['HDG'], 100),
        ...says(['VDM']),
      ],
    }),
    { id: 'usb', onPlug: 'usb-b', protocol: 'usb', role: 'both', sends: throughUsb },
  ],
  turns: inputs.flatMap((fromPort) => [
    { fromPort, toPort: 'out', carries: throughUsb },
    { fromPort, toPort: 'usb', carries: throughUsb },
  ]),
  power: [ownPower({ typicalA: 0.08, maxA: 0.15, minV: 10, fuseA: 1 })],
  compassSafe: safeFromCompass(0.08),
});

const outputs = ['out-1', 'out-2', 'out-3', 'out-4'] as const;
const repeated = ['APB', 'DPT', 'HDG', 'MWV', 'RMB', 'RMC', 'VHW', 'XTE', 'ZDA'] as const;

const buffer0183 = typicalSheet(['practice-sheet-gaps'], {
  id: 'buffer-0183',
  name: 'Buffer: one NMEA 0183 talker to four isolated outputs, typical',
  kind: 'multiplexer',
  plugs: [pairPlug('data', ['in']), pairPlug('outputs', outputs), supplyPlug],
  ports: [
    supplyPort,
    listenPort('in', { hears: listens(...repeated) }),
    ...outputs.map((id) => talkPort(id, { onPlug: 'outputs', isolated: true, sends: says(repeated, 1000) })),
  ],
  turns: outputs.map((toPort) => ({
    fromPort: 'in',
    toPort,
    carries: readings(
      'position',
      'course-speed-ground',
      'time-date',
      'variation',
      'heading',
      'depth',
      'speed-water',
      'wind-apparent',
      'route',
      'cross-track',
    ),
  })),
  power: [ownPower({ typicalA: 0.05, maxA: 0.1, minV: 10, fuseA: 1 })],
  compassSafe: safeFromCompass(0.08),
});

/** Boxes that bring several talkers onto one line, or one talker to many listeners. */
export const multiplexers: readonly Sheet[] = [multiplexerBus, multiplexer0183, buffer0183];
