import type { Sheet } from '../../boat/sheet.ts';
import { listenPort, listens, ownPower, safeFromCompass, supplyPort, typicalSheet } from './parts.ts';

const tillerPilot0183 = typicalSheet(['memory-loads', 'practice-sent-messages', 'practice-sheet-gaps'], {
  id: 'tiller-pilot-0183',
  name: 'Tiller pilot with its own compass and an NMEA 0183 input, typical',
  kind: 'pilot',
  plugs: [
    {
      id: 'socket',
      connector: 'deck-socket-4',
      gender: 'male',
      conductors: [
        { label: 'plus', colour: 'as marked', ports: ['dc'], role: 'plus' },
        { label: 'minus', colour: 'as marked', ports: ['dc'], role: 'minus' },
        { label: 'in A', colour: 'as marked', ports: ['in'], role: 'A' },
        { label: 'in B', colour: 'as marked', ports: ['in'], role: 'B' },
      ],
    },
  ],
  ports: [
    { ...supplyPort, onPlug: 'socket' },
    listenPort('in', {
      onPlug: 'socket',
      hears: listens('APB', 'BWC', 'MWV', 'RMB', 'RMC', 'VTG', 'VWR', 'XTE'),
    }),
  ],
  power: [ownPower({ typicalA: 1, maxA: 3.5, minV: 10, fuseA: 7.5 })],
  drive: { type: 'tiller', motorV: 12, runA: 1, peakA: 3.5 },
  // It carries a fluxgate and a motor of its own.
  compassSafe: safeFromCompass(0.76),
});

/** Pilots that are one unit with their drive. */
export const smallPilots: readonly Sheet[] = [tillerPilot0183];
