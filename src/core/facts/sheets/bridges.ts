import type { Port, Sheet } from '../../boat/sheet.ts';
import { readingsOf } from '../message-readings.ts';
import type { ReadingId } from '../reading-ids.ts';
import { shown } from './display-parts.ts';
import { busPlug, busPort, busPower, netPlug, readings, safeFromCompass, sends, typicalSheet } from './parts.ts';

/** What a gateway passes on of a whole bus. */
const passed: readonly ReadingId[] = [
  'position',
  'course-speed-ground',
  'time-date',
  'heading',
  'variation',
  'rate-of-turn',
  'depth',
  'speed-water',
  'water-temperature',
  'wind-apparent',
  'wind-true',
  'rudder',
  'ais-targets',
  'engine',
  'battery',
];

interface Gateway {
  readonly id: string;
  readonly name: string;
  readonly len: number;
  readonly amps: readonly [typical: number, max: number];
  readonly plugs: Sheet['plugs'];
  readonly out: Port;
}

/** A gateway that listens to the bus and repeats it in its maker's own form. */
const gateway = ({ id, name, len, amps, plugs, out }: Gateway): Sheet =>
  typicalSheet(['maker-loads', 'practice-sheet-gaps'], {
    id,
    name,
    kind: 'gateway',
    plugs: [busPlug, ...plugs],
    ports: [
      { ...busPort(len, { hears: shown }), role: 'listen' },
      { ...out, sends: readings(...passed) },
    ],
    turns: [{ fromPort: 'n2k', toPort: out.id, carries: readings(...passed) }],
    power: [busPower({ typicalA: amps[0], maxA: amps[1] })],
    compassSafe: safeFromCompass(0.08),
  });

const fromNav = [126992, 127250, 127251, 127258, 128267, 129025, 129026, 129029, 130306] as const;
const bridged: readonly ReadingId[] = [
  'position',
  'course-speed-ground',
  'time-date',
  'heading',
  'variation',
  'rate-of-turn',
  'depth',
  'wind-apparent',
  'wind-true',
];

const busBridge = typicalSheet(['practice-sheet-gaps'], {
  id: 'bus-bridge',
  name: 'Bridge between two buses, one way, isolated: position, time, heading, depth and wind, typical',
  kind: 'gateway',
  plugs: [
    { ...busPlug, id: 'bus-a' },
    { ...busPlug, id: 'bus-b' },
  ],
  ports: [
    { ...busPort(2, { hears: fromNav.map((pgn) => ({ pgn })) }), id: 'side-a', onPlug: 'bus-a', isolated: true },
    { ...busPort(2, { sends: sends(...fromNav) }), id: 'side-b', onPlug: 'bus-b' },
  ],
  turns: [{ fromPort: 'side-a', toPort: 'side-b', carries: readings(...bridged) }],
  power: [{ ...busPower({ typicalA: 0.08, maxA: 0.1 }), port: 'side-b' }],
  compassSafe: safeFromCompass(0.08),
});

/** What a two-way bridge passes on: nearly all that a boat says on a bus. */
const everyDay = [
  ...fromNav,
  127237,
  127245,
  127257,
  127488,
  127489,
  127493,
  127505,
  127506,
  127508,
  128259,
  128275,
  129038,
  129039,
  129283,
  129284,
  129793,
  129794,
  129808,
  129809,
  129810,
  130310,
  130311,
  130312,
  130316,
] as const;
const bothWays = [...new Set(everyDay.flatMap((pgn) => readingsOf({ pgn }).map(({ reading }) => reading)))];

const sideOf = (id: string, plug: string): Port => ({
  ...busPort(2, { sends: sends(...everyDay), hears: everyDay.map((pgn) => ({ pgn })) }),
  id,
  onPlug: plug,
});

const busBridgeTwoWay = typicalSheet(['practice-sheet-gaps'], {
  id: 'bus-bridge-two-way',
  name: 'Bridge between two buses, both ways, isolated: navigation, engines, tanks, batteries, other ships, typical',
  kind: 'gateway',
  plugs: [
    { ...busPlug, id: 'bus-a' },
    { ...busPlug, id: 'bus-b' },
  ],
  ports: [{ ...sideOf('side-a', 'bus-a'), isolated: true }, sideOf('side-b', 'bus-b')],
  turns: [
    { fromPort: 'side-a', toPort: 'side-b', carries: readings(...bothWays) },
    { fromPort: 'side-b', toPort: 'side-a', carries: readings(...bothWays) },
  ],
  power: [{ ...busPower({ typicalA: 0.08, maxA: 0.1 }), port: 'side-b' }],
  compassSafe: safeFromCompass(0.08),
});

/** What joins the bus to the network, to a phone, to a computer or to another bus. */
export const bridges: readonly Sheet[] = [
  gateway({
    id: 'bus-gateway-ethernet',
    name: 'Gateway from the bus to the network, listens only, typical',
    len: 3,
    amps: [0.12, 0.15],
    plugs: [netPlug],
    out: { id: 'eth', onPlug: 'net', protocol: 'ethernet', dialect: 'maker-c/1', role: 'both' },
  }),
  gateway({
    id: 'bus-gateway-wifi',
    name: 'Gateway from the bus to wifi for a phone or tablet, listens only, typical',
    len: 2,
    amps: [0.06, 0.1],
    plugs: [],
    out: { id: 'radio', protocol: 'wifi', role: 'both' },
  }),
  gateway({
    id: 'bus-gateway-usb',
    name: 'Gateway from the bus to the USB socket of a computer, listens only, typical',
    len: 1,
    amps: [0.03, 0.05],
    plugs: [{ id: 'usb-lead', connector: 'usb-a', gender: 'male' }],
    out: { id: 'usb', onPlug: 'usb-lead', protocol: 'usb', role: 'both' },
  }),
  busBridge,
  busBridgeTwoWay,
];
