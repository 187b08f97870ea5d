import { withRadio, withSpot } from '../../aloft-units.ts';
import type { Fault } from '../../fault.ts';

/** 25 m of new 5 mm coax are led round the whole boat to a whip on the quarter. */
export const antennasCoaxLosesTooMuch: Fault = {
  rule: 'antennas/coax-loses-too-much',
  about: ['thin-line', 'thin-line-whip'],
  plant: (boat) => {
    const spot = withSpot(boat, {
      id: 'quarter',
      name: 'starboard quarter',
      at: [0, 1.6, 1],
      from: 'stern-locker',
      lengthM: 24.5,
    });
    return {
      ...withRadio(spot, {
        id: 'thin-line',
        name: 'radio in the stern',
        place: 'stern-locker',
        whipAt: 'quarter',
        hears: 'audio',
        sends: { powerW: 25, mhz: 156.8 },
      }),
      pins: {
        ...boat.pins,
        coax: { ...boat.pins?.coax, 'coax:thin-line-whip.coax~thin-line.coax': { kind: 'rg-58c-u', state: 'fixed' } },
      },
    };
  },
};
