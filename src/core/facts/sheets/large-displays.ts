import type { Sheet } from '../../boat/sheet.ts';
import {
  displayPower,
  displaySources,
  network,
  routeAndAlarms,
  shown,
  temperatureToBus,
  workedOutWind,
} from './display-parts.ts';
import {
  busPlug,
  busPort,
  netPlug,
  netPort,
  readings,
  safeFromCompass,
  sends,
  supplyPlug,
  supplyPort,
  typicalSheet,
} from './parts.ts';

interface Large {
  readonly inches: number;
  readonly typicalW: number;
  readonly maxW: number;
  readonly fuseA: number;
  readonly sizes?: Pick<Sheet, 'body' | 'cutout' | 'plugsMm'>;
}

/** A display for 12 and 24 V with two network sockets and an input for an old camera. */
const largeDisplay = ({ inches, sizes = {}, ...load }: Large): Sheet =>
  typicalSheet(displaySources, {
    id: `multifunction-display-${inches}`,
    name: `${inches}-inch multifunction display, 12 or 24 V, typical`,
    kind: 'display',
    plugs: [
      busPlug,
      netPlug,
      { ...netPlug, id: 'net-2' },
      { id: 'camera', connector: 'video-bnc', gender: 'female' },
      supplyPlug,
    ],
    ports: [
      supplyPort,
      busPort(1, { sends: [...routeAndAlarms, ...sends(130316), ...workedOutWind], hears: shown }),
      netPort({ sends: readings('chart-share', 'route'), hears: network }),
      { ...netPort({}), id: 'eth-2', onPlug: 'net-2' },
      { id: 'video', onPlug: 'camera', protocol: 'video', role: 'listen', hears: readings('camera') },
    ],
    together: [['eth', 'eth-2']],
    turns: temperatureToBus,
    power: [displayPower({ ...load, maxV: 32 })],
    ...sizes,
    compassSafe: safeFromCompass(0.7),
    ipCode: 'IPX6/IPX7',
  });

/** Displays of a wheelhouse. Nothing printed gives the sizes of the two largest. */
export const largeDisplays: readonly Sheet[] = [
  largeDisplay({
    inches: 16,
    typicalW: 15.6,
    maxW: 52,
    fuseA: 7.5,
    sizes: {
      body: { widthMm: 410, heightMm: 265, depthMm: 100 },
      cutout: { widthMm: 385, heightMm: 242 },
      plugsMm: 90,
    },
  }),
  largeDisplay({ inches: 22, typicalW: 46.8, maxW: 59, fuseA: 7.5 }),
  largeDisplay({ inches: 24, typicalW: 73.2, maxW: 88, fuseA: 15 }),
];
