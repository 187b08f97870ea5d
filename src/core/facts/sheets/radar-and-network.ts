import type { Sheet } from '../../boat/sheet.ts';
import {
  netPlug,
  netPort,
  ownPower,
  readings,
  safeFromCompass,
  supplyPlug,
  supplyPort,
  typicalSheet,
} from './parts.ts';

const radarDome24 = typicalSheet(['maker-loads', 'maker-compass-distance', 'memory-scanners'], {
  id: 'radar-dome-24',
  name: '24-inch solid-state dome radar, typical',
  kind: 'radar',
  scanner: { kind: 'dome', sends: 'solid-state', verticalBeamDeg: 25, acrossM: 0.61, leastRangeM: 6, peopleM: 0.1 },
  plugs: [netPlug, supplyPlug],
  ports: [supplyPort, netPort({ sends: readings('radar-picture', 'radar-targets') })],
  power: [ownPower({ typicalA: 2.1, maxA: 2.1, minV: 10.8, fuseA: 5 })],
  compassSafe: safeFromCompass(1),
  ipCode: 'IPX6',
});

const sockets = ['p1', 'p2', 'p3', 'p4', 'p5'] as const;

const ethernetSwitch = typicalSheet(['practice-sheet-gaps', 'maker-compass-distance'], {
  id: 'ethernet-switch',
  name: '5-port Ethernet switch, 12 V, typical',
  kind: 'network-switch',
  plugs: [...sockets.map((port) => ({ ...netPlug, id: `socket-${port}` })), supplyPlug],
  ports: [supplyPort, ...sockets.map((port) => ({ ...netPort({}), id: port, onPlug: `socket-${port}` }))],
  together: [[...sockets]],
  power: [ownPower({ typicalA: 0.5, maxA: 0.5, minV: 10.8, fuseA: 3 })],
  compassSafe: safeFromCompass(0.08),
});

/** The Ethernet side: radar and the switch that joins it to the screens. */
export const radarAndNetwork: readonly Sheet[] = [radarDome24, ethernetSwitch];
