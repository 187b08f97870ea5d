import type { Port, Sheet } from '../../boat/sheet.ts';
import {
  leads,
  listenPort,
  listens,
  netPlug,
  netPort,
  ownPower,
  ownWatts,
  pairPlug,
  readings,
  safeFromCompass,
  supplyPlug,
  supplyPort,
  typicalSheet,
} from './parts.ts';

const sockets = (...ids: readonly string[]) => ({
  plugs: ids.map((id) => ({ ...netPlug, id: `socket-${id}` })),
  ports: ids.map((id): Port => ({ ...netPort({}), id, onPlug: `socket-${id}` })),
});

const eight = ['p1', 'p2', 'p3', 'p4', 'p5', 'p6', 'p7', 'p8'] as const;
const plain = ['u1', 'u2', 'u3', 'u4'] as const;

const ethernetSwitch8 = typicalSheet(['practice-sheet-gaps', 'maker-compass-distance'], {
  id: 'ethernet-switch-8',
  name: '8-port Ethernet switch, 12 or 24 V, typical',
  kind: 'network-switch',
  plugs: [...sockets(...eight).plugs, supplyPlug],
  ports: [supplyPort, ...sockets(...eight).ports],
  together: [[...eight]],
  power: [ownWatts({ typicalW: 7, maxW: 8, minV: 10.8, fuseA: 3 })],
  compassSafe: safeFromCompass(0.08),
});

const ethernetSwitchPoe = typicalSheet(['maker-loads', 'memory-switch-loads', 'maker-compass-distance'], {
  id: 'ethernet-switch-poe',
  name: 'Ethernet switch with eight PoE sockets and four plain ones, with booster, typical',
  kind: 'network-switch',
  plugs: [...sockets(...eight, ...plain).plugs, supplyPlug],
  ports: [
    supplyPort,
    ...sockets(...eight).ports.map((port) => ({ ...port, poe: 'at' as const })),
    ...sockets(...plain).ports,
  ],
  together: [[...eight, ...plain]],
  // Below 10.8 V it drops its PoE sockets.
  power: [ownWatts({ typicalW: 10, maxW: 160, minV: 10.8, fuseA: 20 })],
  compassSafe: safeFromCompass(0.08),
});

const lan = ['lan-1', 'lan-2', 'lan-3', 'lan-4'] as const;

const router = typicalSheet(['practice-remote', 'practice-sheet-gaps', 'maker-compass-distance'], {
  id: 'router-guest',
  name: 'Router with four sockets inside, one outside and a guest network apart, typical',
  kind: 'router',
  plugs: [...sockets(...lan, 'wan').plugs, supplyPlug],
  ports: [
    supplyPort,
    ...sockets(...lan, 'wan').ports,
    { id: 'radio', protocol: 'wifi', role: 'both' },
    { id: 'guests', protocol: 'wifi', role: 'both' },
  ],
  // Nothing outside and no guest is one network with the boat.
  together: [[...lan, 'radio']],
  remote: { givesAddresses: true },
  power: [ownWatts({ typicalW: 8, maxW: 15, minV: 10.8, fuseA: 3 })],
  compassSafe: safeFromCompass(0.3),
});

const satelliteTerminal = typicalSheet(['practice-loads', 'practice-sheet-gaps'], {
  id: 'satellite-terminal',
  name: 'Satellite internet terminal with its own supply, typical',
  kind: 'satellite-terminal',
  plugs: [netPlug, supplyPlug],
  ports: [supplyPort, netPort({})],
  power: [ownWatts({ typicalW: 75, maxW: 110, minV: 10.8, fuseA: 15 })],
  compassSafe: safeFromCompass(1),
  ipCode: 'IP67',
});

const cellularHub = typicalSheet(['maker-loads', 'practice-sheet-gaps'], {
  id: 'cellular-hub',
  name: 'Cellular modem that reports the boat ashore, typical',
  kind: 'cellular-hub',
  plugs: [netPlug, supplyPlug],
  ports: [supplyPort, netPort({})],
  power: [ownPower({ typicalA: 1.7, maxA: 2, minV: 10, maxV: 32, fuseA: 3 })],
  compassSafe: safeFromCompass(0.3),
});

const cameraIpPoe = typicalSheet(['maker-loads', 'practice-sheet-gaps'], {
  id: 'camera-ip-poe',
  name: 'Network camera fed over its Ethernet cable, typical',
  kind: 'camera',
  plugs: [netPlug],
  ports: [netPort({ sends: readings('camera') })],
  power: [{ port: 'eth', typical: 4.8, max: 4.8, unit: 'W', behaves: 'power', minV: 37, maxV: 57 }],
  ipCode: 'IP66/IP67',
});

const cameraAnalog = typicalSheet(['practice-sheet-gaps'], {
  id: 'camera-analog',
  name: 'Old camera with a video lead, typical',
  kind: 'camera',
  plugs: [{ id: 'lead', connector: 'video-bnc', gender: 'male' }, supplyPlug],
  ports: [supplyPort, { id: 'video', onPlug: 'lead', protocol: 'video', role: 'talk', sends: readings('camera') }],
  power: [ownPower({ typicalA: 0.2, maxA: 0.4, minV: 10, fuseA: 1 })],
});

/** Readings a computer or tablet shows with a chart program. */
const onChart = readings(
  'position',
  'course-speed-ground',
  'time-date',
  'heading',
  'depth',
  'speed-water',
  'wind-apparent',
  'ais-targets',
);

const computer = typicalSheet(['practice-sheet-gaps'], {
  id: 'computer-small',
  name: 'Small computer with network, USB and one NMEA 0183 input, typical',
  kind: 'computer',
  plugs: [netPlug, { id: 'usb-a', connector: 'usb-a', gender: 'female' }, pairPlug('data', ['in']), supplyPlug],
  ports: [
    supplyPort,
    { ...netPort({ hears: onChart }), dialect: 'maker-c/1' },
    { id: 'usb', onPlug: 'usb-a', protocol: 'usb', role: 'both', hears: onChart },
    listenPort('in', { hears: listens('DPT', 'HDG', 'HDT', 'MWV', 'RMC', 'VDM', 'VHW', 'ZDA') }),
  ],
  power: [ownWatts({ typicalW: 25, maxW: 60, minV: 10.8, fuseA: 7.5 })],
  compassSafe: safeFromCompass(1),
});

const tabletWifi = typicalSheet(['practice-sheet-gaps'], {
  id: 'tablet-wifi',
  name: 'Tablet with a chart program, on its own battery, typical',
  kind: 'tablet',
  plugs: [leads('charger')],
  ports: [{ id: 'radio', protocol: 'wifi', role: 'both', hears: onChart }],
});

/** Switches, routers, cameras and computers of the boat's network. */
export const networkUnits: readonly Sheet[] = [
  ethernetSwitch8,
  ethernetSwitchPoe,
  router,
  satelliteTerminal,
  cellularHub,
  cameraIpPoe,
  cameraAnalog,
  computer,
  tabletWifi,
];
