import { withRadio, withSpot } from '../../aloft-units.ts';
import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';

/** An old receiver keeps the old coax to the stern post, and nobody read its jacket. */
export const antennasCoaxKindUnknown: Fault = {
  rule: 'antennas/coax-kind-unknown',
  about: ['old-thick-coax'],
  plant: (boat) => {
    const spot = withSpot(boat, { id: 'stern-post', name: 'stern post', at: [0, -1.5, 1], from: 'stern-locker' });
    const withSet = withRadio(spot, {
      id: 'old-ear',
      name: 'old receiver',
      place: 'stern-locker',
      whipAt: 'stern-post',
      hears: 'audio',
    });
    return {
      ...withSet,
      cables: [
        ...withSet.cables,
        {
          id: 'old-thick-coax',
          name: 'old thick coax',
          kind: 'coax',
          from: { place: 'stern-locker', at: 'old-ear.coax' },
          to: { place: 'stern-post', at: 'old-ear-whip.coax' },
          serves: 'coax-old-ear',
          ways: ['to-stern-post'],
          length: taped(2.8),
          diameterMm: 10.3,
          condition: 'good',
          fate: 'stays',
        },
      ],
    };
  },
};
