import type { Sheet } from '../../boat/sheet.ts';
import type { ReadingId } from '../reading-ids.ts';
import {
  busPlug,
  busPort,
  busPower,
  hears,
  listens,
  pairPlug,
  readings,
  safeFromCompass,
  says,
  sends,
  typicalSheet,
} from './parts.ts';

const converterSources = ['practice-converter', 'practice-sheet-gaps'] as const;

type Carried = NonNullable<Sheet['turns']>[number]['carries'];

/** A sentence names its kind only, so the sender's instance is lost on the way into 0183. */
const withoutInstance = (...ids: readonly ReadingId[]): Carried =>
  ids.map((reading) => ({ reading, loses: ['instance'] }));

const converterBusTo0183 = typicalSheet(converterSources, {
  id: 'converter-bus-to-0183',
  name: 'Small converter from the bus to one NMEA 0183 output, typical',
  kind: 'converter',
  plugs: [busPlug, pairPlug('data', ['out'])],
  ports: [
    busPort(2, { hears: hears(126992, 127258, 129025, 129026, 129029) }),
    {
      id: 'out',
      onPlug: 'data',
      protocol: 'nmea0183',
      line: 'differential',
      isolated: true,
      baud: 4800,
      role: 'talk',
      sends: says(['RMC', 'ZDA'], 1000),
    },
  ],
  turns: [
    {
      fromPort: 'n2k',
      toPort: 'out',
      carries: withoutInstance('position', 'course-speed-ground', 'time-date', 'variation'),
    },
  ],
  power: [busPower({ typicalA: 0.1, maxA: 0.1 })],
  compassSafe: safeFromCompass(0.08),
  ipCode: 'IP67',
});

const converterTwoWay = typicalSheet(converterSources, {
  id: 'converter-two-way',
  name: 'Two-way converter between the bus and NMEA 0183, isolated input, typical',
  kind: 'converter',
  plugs: [busPlug, pairPlug('data', ['in', 'out'])],
  ports: [
    busPort(2, {
      sends: sends(127245, 127250, 128259, 128267, 130306, 130316),
      hears: hears(126992, 127258, 128259, 128267, 129025, 129026, 129029, 129283, 129284, 130306, 130316),
    }),
    {
      id: 'in',
      onPlug: 'data',
      protocol: 'nmea0183',
      line: 'differential',
      isolated: true,
      baud: 4800,
      role: 'listen',
      hears: listens('HDG', 'RSA', 'VHW', 'DPT', 'MWV', 'MTW'),
    },
    {
      id: 'out',
      onPlug: 'data',
      protocol: 'nmea0183',
      line: 'differential',
      isolated: true,
      baud: 4800,
      role: 'talk',
      sends: [
        ...says(['APB', 'RMB', 'XTE'], 1000),
        ...says(['RMC'], 2000),
        ...says(['DPT', 'MTW', 'MWV', 'VHW'], 1000),
      ],
    },
  ],
  turns: [
    {
      fromPort: 'n2k',
      toPort: 'out',
      carries: withoutInstance(
        'position',
        'course-speed-ground',
        'time-date',
        'variation',
        'route',
        'cross-track',
        'depth',
        'water-temperature',
        'wind-apparent',
        'wind-true',
        'speed-water',
      ),
    },
    {
      fromPort: 'in',
      toPort: 'n2k',
      carries: readings(
        'heading',
        'rudder',
        'speed-water',
        'depth',
        'wind-apparent',
        'wind-true',
        'water-temperature',
        'variation',
      ),
    },
  ],
  power: [busPower({ typicalA: 0.1, maxA: 0.1 })],
  compassSafe: safeFromCompass(0.08),
});

const onOwnWire = readings('depth', 'speed-water', 'log-distance', 'water-temperature', 'wind-apparent', 'heading');

const converterSingleWire = typicalSheet(converterSources, {
  id: 'converter-single-wire',
  name: "Converter from one maker's old wire to the bus, typical",
  kind: 'converter',
  plugs: [busPlug, { id: 'old-wire', connector: 'maker-a-3', gender: 'female' }],
  ports: [
    busPort(2, { sends: sends(127250, 128259, 128267, 128275, 130306, 130316) }),
    {
      id: 'wire',
      onPlug: 'old-wire',
      protocol: 'single-wire',
      dialect: 'maker-a/1',
      role: 'listen',
      hears: onOwnWire,
    },
  ],
  turns: [{ fromPort: 'wire', toPort: 'n2k', carries: onOwnWire }],
  power: [busPower({ typicalA: 0.08, maxA: 0.1 })],
  compassSafe: safeFromCompass(0.08),
});

/** Converters between the bus and NMEA 0183, and from an old single wire. */
export const converters: readonly Sheet[] = [converterBusTo0183, converterTwoWay, converterSingleWire];
