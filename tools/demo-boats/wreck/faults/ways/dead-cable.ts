import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';

/** The lead of a lamp that was taken down years ago still lies between the cabins. */
export const waysDeadCable: Fault = {
  rule: 'ways/dead-cable',
  about: ['lamp-lead'],
  plant: (boat) => ({
    ...boat,
    cables: [
      ...boat.cables,
      {
        id: 'lamp-lead',
        kind: 'feed',
        from: { place: 'panel-locker' },
        to: { place: 'aft-cabin' },
        ways: ['w8'],
        length: taped(3.2),
        diameterMm: 6,
        condition: 'bad',
        fate: 'goes',
      },
    ],
  }),
};
