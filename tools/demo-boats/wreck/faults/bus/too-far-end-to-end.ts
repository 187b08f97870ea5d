import type { Place, Way } from '../../../../../src/core/boat/boat-schema.ts';
import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const berth = (id: string, name: string, yM: number): Place => ({
  id,
  name,
  xM: 7,
  yM,
  zM: 0.4,
  exposure: 'dry',
  reach: 'panel',
  tees: true,
});

const way = (id: string, ends: Way['ends'], length: Way['length']): Way => ({
  id,
  ends,
  length,
  kind: 'open',
  known: 'seen',
});

const keypad = (id: string, name: string, place: string) => ({
  id,
  name,
  place,
  tail: { valueM: 4.9, how: 'taped' as const, lessM: 0.05, moreM: 0.05 },
});

/** 93 m of light trunk stowed in loops between two berths, a drop of 5 m near each end: 103 m from plug to plug. */
export const busTooFarEndToEnd: Fault = {
  rule: 'bus/too-far-end-to-end',
  about: ['berths'],
  plant: (boat) =>
    withOwnBus(
      {
        ...boat,
        places: [
          ...boat.places,
          berth('berth-port', 'locker under the port berth', -0.6),
          berth('berth-stbd', 'locker under the starboard berth', 0.8),
        ],
        ways: [
          ...boat.ways,
          way('berth-port-in', ['berth-port', 'fore-cabin'], taped(1.5)),
          way('berth-stbd-in', ['berth-stbd', 'fore-cabin'], taped(1.2)),
          way('loops', ['berth-port', 'berth-stbd'], { valueM: 93, how: 'taped', lessM: 0.2, moreM: 0.2 }),
        ],
      },
      {
        id: 'berths',
        name: 'Berth bus',
        sheet: fillerSheet('berth-keypad', 'Keypad for a berth', 1),
        kit: [
          keypad('berth-key-port', 'keypad at the port berth', 'berth-port'),
          keypad('berth-key-stbd', 'keypad at the starboard berth', 'berth-stbd'),
        ],
        walk: [
          { place: 'berth-port', tees: ['berth-key-port.n2k', 'feed'] },
          { place: 'berth-stbd', via: 'loops', tees: ['berth-key-stbd.n2k'] },
        ],
      },
    ),
};
