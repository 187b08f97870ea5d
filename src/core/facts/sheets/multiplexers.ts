import type { Sheet } from '../../boat/sheet.ts';
import {
  busPlug,
  busPort,
  busPower,
  hears,
  listenPort,
  listens,
  pairPlug,
  readings,
  safeFromCompass,
  says,
  sends,
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

/** Boxes that bring several talkers onto one line. */
export const multiplexers: readonly Sheet[] = [multiplexerBus];
