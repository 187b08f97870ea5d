import type { Drive } from '../../boat/drive.ts';
import type { Plug, Sheet } from '../../boat/sheet.ts';
import { listenPort, listens, ownPower, safeFromCompass, supplyPort, typicalSheet } from './parts.ts';

/** One socket for the feed and the data of a small pilot. */
const socket: Plug = {
  id: 'socket',
  connector: 'deck-socket-4',
  gender: 'male',
  conductors: [
    { label: 'plus', colour: 'as marked', ports: ['dc'], role: 'plus' },
    { label: 'minus', colour: 'as marked', ports: ['dc'], role: 'minus' },
    { label: 'in A', colour: 'as marked', ports: ['in'], role: 'A' },
    { label: 'in B', colour: 'as marked', ports: ['in'], role: 'B' },
  ],
};

/** A pilot that is one unit with its compass, its motor and an NMEA 0183 input. */
const smallPilot = ({ id, name, drive, fuseA }: { id: string; name: string; drive: Drive; fuseA: number }): Sheet =>
  typicalSheet(['memory-loads', 'memory-pilot-outputs', 'practice-sent-messages', 'practice-sheet-gaps'], {
    id,
    name,
    kind: 'pilot',
    plugs: [socket],
    ports: [
      { ...supplyPort, onPlug: 'socket' },
      listenPort('in', {
        onPlug: 'socket',
        hears: listens('APB', 'BWC', 'MWV', 'RMB', 'RMC', 'VTG', 'VWR', 'XTE'),
      }),
    ],
    power: [ownPower({ typicalA: drive.runA, maxA: drive.peakA, minV: 10, fuseA })],
    // Its screw or lever holds the helm until a hand frees it.
    drive: { ...drive, whenPowerIsLost: 'holds', needsRudderSensor: false },
    // It carries a fluxgate and a motor of its own.
    compassSafe: safeFromCompass(0.76),
  });

/** Pilots that are one unit with their drive. */
export const smallPilots: readonly Sheet[] = [
  smallPilot({
    id: 'tiller-pilot-0183',
    name: 'Tiller pilot with its own compass and an NMEA 0183 input, typical',
    drive: { type: 'tiller', motorV: 12, runA: 1, peakA: 3.5, boatKg: 5500 },
    fuseA: 7.5,
  }),
  smallPilot({
    id: 'wheel-pilot-0183',
    name: 'Wheel pilot with its own compass and an NMEA 0183 input, typical',
    drive: { type: 'wheel', motorV: 12, runA: 1.75, peakA: 5, boatKg: 7000 },
    fuseA: 10,
  }),
];
