import type { Sheet } from '../../boat/sheet.ts';
import { displayPower, displaySources, network, routeAndAlarms, shown, workedOutWind } from './display-parts.ts';
import {
  busPlug,
  busPort,
  listenPort,
  listens,
  netPlug,
  netPort,
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

/** What a display with its own position antenna gives to the bus, beside the route. */
const ownPosition = sends(126992, 127258, 129025, 129026, 129029, 129539, 129540);

const multifunctionDisplay5 = typicalSheet(displaySources, {
  id: 'multifunction-display-5',
  name: '5-inch chart display with inner position antenna, typical',
  kind: 'display',
  plugs: [busPlug, supplyPlug],
  ports: [supplyPort, busPort(1, { sends: [...routeAndAlarms, ...ownPosition], hears: shown })],
  power: [displayPower({ typicalW: 4.8, maxW: 18, fuseA: 3 })],
  body: { widthMm: 170, heightMm: 105, depthMm: 52 },
  cutout: { widthMm: 150, heightMm: 88 },
  plugsMm: 60,
  face: { worked: 'both' },
  compassSafe: safeFromCompass(0.5),
  ipCode: 'IPX6/IPX7',
});

const multifunctionDisplay7 = typicalSheet(displaySources, {
  id: 'multifunction-display-7',
  name: '7-inch multifunction display with inner position antenna and one NMEA 0183 port, typical',
  kind: 'display',
  plugs: [busPlug, pairPlug('data', ['in', 'out']), supplyPlug],
  ports: [
    supplyPort,
    busPort(1, { sends: [...routeAndAlarms, ...ownPosition, ...workedOutWind], hears: shown }),
    listenPort('in', {
      hears: listens('DBT', 'DPT', 'HDG', 'HDM', 'MTW', 'MWV', 'VDM', 'VHW', 'VLW', 'DSC'),
    }),
    talkPort('out', { sends: [...says(['RMC'], 2000), ...says(['APB', 'RMB', 'XTE'], 1000)] }),
    { id: 'radio', protocol: 'wifi', role: 'both' },
  ],
  power: [displayPower({ typicalW: 9.6, maxW: 20, fuseA: 3 })],
  body: { widthMm: 222, heightMm: 142, depthMm: 65 },
  cutout: { widthMm: 194, heightMm: 118 },
  plugsMm: 60,
  face: { worked: 'both' },
  compassSafe: safeFromCompass(0.5),
  ipCode: 'IPX6/IPX7',
  lighting: { dims: 'with-group' },
});

const multifunctionDisplay10 = typicalSheet(displaySources, {
  id: 'multifunction-display-10',
  name: '10-inch multifunction display with inner position antenna, typical',
  kind: 'display',
  plugs: [busPlug, netPlug, supplyPlug],
  ports: [
    supplyPort,
    busPort(1, { sends: [...routeAndAlarms, ...workedOutWind], hears: shown }),
    netPort({
      sends: readings('chart-share', 'route', 'position', 'course-speed-ground', 'time-date'),
      hears: network,
    }),
    { id: 'radio', protocol: 'wifi', role: 'both' },
  ],
  power: [displayPower({ typicalW: 20.4, maxW: 41, fuseA: 7.5 })],
  compassSafe: safeFromCompass(0.5),
  ipCode: 'IPX6/IPX7',
  lighting: { dims: 'with-group' },
});

/** Displays of the cockpit, up to 10 inches. */
export const smallDisplays: readonly Sheet[] = [multifunctionDisplay5, multifunctionDisplay7, multifunctionDisplay10];
