import type { Sheet } from '../../boat/sheet.ts';
import { displayPower, displaySources, network, routeAndAlarms, shown, temperatureToBus } from './display-parts.ts';
import {
  busPlug,
  busPort,
  busPower,
  hears,
  netPlug,
  netPort,
  readings,
  safeFromCompass,
  sends,
  supplyPlug,
  supplyPort,
  typicalSheet,
} from './parts.ts';

const multifunctionDisplay12 = typicalSheet(displaySources, {
  id: 'multifunction-display-12',
  name: '12-inch multifunction display, typical',
  kind: 'display',
  plugs: [busPlug, netPlug, supplyPlug],
  ports: [
    supplyPort,
    busPort(1, { sends: [...routeAndAlarms, ...sends(130316)], hears: shown }),
    netPort({ sends: readings('chart-share', 'route'), hears: network }),
  ],
  turns: temperatureToBus,
  power: [displayPower({ typicalW: 27.6, maxW: 36.5, fuseA: 5 })],
  body: { widthMm: 335, heightMm: 218, depthMm: 85 },
  cutout: { widthMm: 306, heightMm: 192 },
  plugsMm: 80,
  face: { worked: 'both' },
  compassSafe: safeFromCompass(0.5),
  ipCode: 'IPX6/IPX7',
  lighting: { dims: 'with-group' },
});

const multifunctionDisplay9 = typicalSheet(displaySources, {
  id: 'multifunction-display-9',
  name: '9-inch multifunction display with inner position antenna, typical',
  kind: 'display',
  plugs: [busPlug, netPlug, supplyPlug],
  ports: [
    supplyPort,
    busPort(1, { sends: [...routeAndAlarms, ...sends(130316)], hears: shown }),
    netPort({
      sends: readings('chart-share', 'route', 'position', 'course-speed-ground', 'time-date'),
      hears: network,
    }),
  ],
  turns: temperatureToBus,
  power: [displayPower({ typicalW: 10.8, maxW: 18, fuseA: 3 })],
  body: { widthMm: 262, heightMm: 164, depthMm: 75 },
  cutout: { widthMm: 236, heightMm: 142 },
  plugsMm: 75,
  face: { worked: 'both' },
  compassSafe: safeFromCompass(0.5),
  ipCode: 'IPX6/IPX7',
  lighting: { dims: 'with-group' },
});

const instrument4 = typicalSheet(displaySources, {
  id: 'instrument-4',
  name: '4-inch colour instrument, typical',
  kind: 'instrument',
  plugs: [busPlug],
  ports: [
    busPort(6, {
      hears: hears(
        126992,
        127245,
        127250,
        127251,
        127257,
        127258,
        127488,
        127489,
        127505,
        127506,
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
  power: [busPower({ typicalA: 0.25, maxA: 0.3 })],
  body: { widthMm: 112, heightMm: 115, depthMm: 25 },
  cutout: { shape: 'round', widthMm: 92, heightMm: 92 },
  plugsMm: 35,
  face: { worked: 'keys' },
  compassSafe: safeFromCompass(0.5),
  ipCode: 'IPX6/IPX7',
  lighting: { dims: 'with-group' },
});

/** Screens: two multifunction displays and a bus instrument. */
export const displays: readonly Sheet[] = [multifunctionDisplay12, multifunctionDisplay9, instrument4];
