import { type BoatSize, ladderBoat } from '../../src/core/backbone/ladder-boat.test-helper.ts';
import type { Boat } from '../../src/core/boat/boat-schema.ts';

const sheets: Boat['sheets'] = [1, 2, 3, 4].map((len) => ({
  id: `len-${len}`,
  name: `Instrument, LEN ${len}`,
  kind: 'instrument',
  source: 'typical',
  plugs: [{ id: 'bus', connector: 'n2k-micro', gender: 'male' }],
  ports: [{ id: 'n2k', onPlug: 'bus', protocol: 'nmea2000', role: 'both', len, sends: [], hears: [] }],
}));

/** A boat nobody built, of two runs with ways across, whose bus takes longer to prove than a person likes to wait. */
export const hardBoat = (seed: number, size: BoatSize): string => {
  const { places, ways, devices, feed } = ladderBoat(seed, size);
  const panelAt = feed.reach.reduce((one, other) => (other.mm < one.mm ? other : one)).place;
  const boat = {
    format: 'fairlead-boat',
    version: 1,
    name: 'Ladder',
    hull: {
      kind: 'ketch',
      material: 'steel',
      lengthM: 30,
      beamM: 7,
      draftM: 3,
      airDraft: { valueM: 25, how: 'papers', lessM: 0.5, moreM: 0.5 },
    },
    // close together, for no way may be shorter than its straight line
    places: places.map(({ id, tees }, order) => ({
      id,
      name: id,
      xM: 10 + (0.3 * order) / places.length,
      yM: 0,
      zM: 1,
      exposure: 'dry',
      reach: 'open',
      tees,
    })),
    ways: ways.map(({ id, a, b, mm, maxMm, trunk, extra }) => ({
      id,
      ends: [a, b],
      length: { valueM: mm / 1000, how: 'taped', lessM: 0, moreM: (maxMm - mm) / 1000 },
      kind: 'tray',
      known: 'seen',
      trunkTimes: trunk === 1 ? 1 : 2,
      ...(extra === 0 ? {} : { hours: extra / 5000 }),
    })),
    cables: [],
    sheets,
    kit: devices.map(({ id, place, tailMm, len }) => ({
      id: id.replace('.n2k', ''),
      name: id.replace('.n2k', ''),
      sheet: `len-${len}`,
      fate: 'comes',
      place,
      tail: { valueM: tailMm / 1000, how: 'taped', lessM: 0, moreM: 0 },
    })),
    needs: [],
    buses: [{ id: 'nav', name: 'Navigation bus', protocol: 'nmea2000' }],
    joins: [
      {
        id: 'join-nav',
        kind: 'nmea2000',
        bus: 'nav',
        hold: 'fixed',
        members: devices.map(({ id }) => ({ kit: id.replace('.n2k', ''), port: 'n2k', as: 'both' })),
      },
    ],
    supply: {
      banks: [
        { id: 'house', place: panelAt, chemistry: 'agm', nominalV: 12, capacityAh: 800, lowestV: 12, for: 'house' },
      ],
      panels: [
        {
          id: 'panel',
          place: panelAt,
          from: 'house',
          circuits: [{ id: 'c-nav', ratingA: 3, kind: 'fuse', feeds: ['nav'] }],
        },
      ],
      dcdc: [],
    },
  };
  return JSON.stringify(boat);
};
