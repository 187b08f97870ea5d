import type { Order } from '../../../src/core/boat/boat-schema.ts';
import type { Work } from '../../../src/core/boat/work.ts';

/** One owner, alone, some hours a day: the screen in spring, the AIS in winter with the mast down. */
export const sandpiperWork: Work = {
  starts: [
    { phase: 1, on: '2027-04-05' },
    { phase: 2, on: '2027-11-01' },
  ],
  hoursADay: 5,
  restDays: ['sat', 'sun'],
  hands: [{ id: 'owner', name: 'the owner', is: 'owner', pace: 1.6, can: ['aloft', 'electrics', 'radio'] }],
  mastDown: [{ from: '2027-11-08', to: '2027-11-19' }],
  light: { fromH: 8, toH: 16 },
  essentials: [
    { function: 'bilge-pump', on: ['switches.n9'] },
    { function: 'engine-start', on: ['start'] },
    { function: 'engine-stop', none: true },
    { function: 'gas-alarm', none: true },
    { function: 'high-water-alarm', none: true },
    { function: 'horn', none: true },
    { function: 'navigation-lights', on: ['switches.n8'] },
    { function: 'shore-charging', none: true },
    { function: 'steering', none: true },
  ],
  own: [
    {
      id: 'look-into-mast',
      name: 'Look into the mast with its foot open: wind cable and coax',
      hoursH: 3,
      phase: 2,
      place: 'mast-foot',
      outside: true,
    },
  ],
  leaving: [{ unit: 'old-plotter', to: 'sell' }],
};

/** What takes its time to come: the screen and the multiplexer for spring, the AIS for winter. */
export const sandpiperOrders: Order[] = [
  { item: 'unit-ais-class-b', state: 'order', leadDays: 28 },
  { item: 'unit-multifunction-display-7', state: 'order', leadDays: 14 },
  { item: 'unit-multiplexer-bus', state: 'order', leadDays: 10 },
];
