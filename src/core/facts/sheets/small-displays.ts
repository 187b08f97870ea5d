import type { Sheet } from '../../boat/sheet.ts';
import { displayPower, displaySources, routeAndAlarms, shown } from './display-parts.ts';
import {
  busPlug,
  busPort,
  listenPort,
  listens,
  pairPlug,
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

/** A small display tells the bus which wind it has worked out: the message alone would leave open which. */
const workedOutWind = [...sends(130306), { reading: 'wind-true' as const }];

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
  body: { widthMm: 222, heightMm: 142, depthMm: 125 },
  cutout: { widthMm: 194, heightMm: 118 },
  compassSafe: safeFromCompass(0.5),
  ipCode: 'IPX6/IPX7',
});

/** Displays of the cockpit, up to 10 inches. */
export const smallDisplays: readonly Sheet[] = [multifunctionDisplay7];
