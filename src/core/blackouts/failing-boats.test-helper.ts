import fc from 'fast-check';
import type { Boat, Kit } from '../boat/boat-schema.ts';
import { canonicalBoat } from '../boat/canonical-boat.ts';
import type { Power, Sheet } from '../boat/sheet.ts';
import type { Supply } from '../boat/supply.ts';
import { smallBoats } from '../readings/small-boats.test-helper.ts';

/** How one unit is fed, and where it stands. */
const feeding = fc.record({
  feeds: fc.constantFrom('nothing', 'circuit', 'circuit', 'two', 'bus', 'lead', 'battery'),
  panels: fc.tuple(fc.nat(2), fc.nat(2)),
  place: fc.constantFrom('helm', 'locker', 'mast-base', 'stern-rail', 'battery-box'),
});
const source = fc.record({
  /** what the second panel hangs on */
  second: fc.constantFrom('bank', 'panel', 'circuit', 'converter'),
  navFed: fc.nat(3),
  shipFed: fc.nat(3),
});

const draws = (port: string): Power => ({
  port,
  typical: 0.1,
  max: 0.2,
  unit: 'A',
  behaves: 'current',
  minV: 9,
  maxV: 32,
});

const supplyOf = ({ second, navFed, shipFed }: { second: string; navFed: number; shipFed: number }): Supply => ({
  banks: ['house', 'other'].map((id) => ({
    id,
    place: 'battery-box',
    chemistry: 'agm',
    nominalV: 12,
    capacityAh: 100,
    for: 'house',
    ...(id === 'house' ? { main: { kind: 'fuse', ratingA: 100 } } : {}),
  })),
  panels: ['p0', 'p1', 'p2'].map((id, at) => ({
    id,
    place: at === 0 ? 'locker' : 'helm',
    from: at === 2 ? 'other' : at === 0 ? 'house' : ({ bank: 'house', converter: 'dc' }[second] ?? 'p0'),
    mainA: 30,
    circuits: [
      {
        id: `c${at}`,
        ratingA: 10,
        kind: 'fuse',
        feeds: [...(navFed === at ? ['nav'] : []), ...(shipFed === at ? ['ship'] : [])],
      },
      {
        id: `d${at}`,
        ratingA: 10,
        kind: 'fuse',
        feeds: at !== 0 ? [] : second === 'circuit' ? ['p1'] : second === 'converter' ? ['dc'] : [],
      },
    ],
  })),
  dcdc: [{ id: 'dc', place: 'locker', outV: 12, ratedA: 20, efficiencyPct: 90, isolated: false }],
});

const withPower = (
  boat: Boat,
  how: readonly { feeds: string; panels: [number, number]; place: string }[],
  supply: Supply,
): Boat => {
  const panels = structuredClone(supply.panels) as Supply['panels'];
  const sheets: Sheet[] = [];
  const kit: Kit[] = boat.kit.map((unit, at) => {
    const { feeds, panels: fed, place } = how[at % how.length] ?? { feeds: 'nothing', panels: [0, 0], place: 'helm' };
    const own = boat.sheets.find(({ id }) => id === unit.sheet);
    if (own === undefined) return unit;
    const onBus = own.ports.filter(({ protocol }) => protocol === 'nmea2000').map(({ id }) => id);
    const onPair = own.ports.filter(({ protocol }) => protocol === 'nmea0183').map(({ id }) => id);
    const lives = feeds === 'bus' ? onBus : feeds === 'lead' ? onPair.slice(0, 1) : [];
    const isFed = feeds === 'circuit' || feeds === 'two' || feeds === 'battery';
    if (isFed) {
      const named = feeds === 'two' ? new Set(fed) : new Set([fed[0]]);
      for (const one of named) panels[one]?.circuits[0]?.feeds.push(`${unit.id}.dc`);
    }
    sheets.push({
      ...own,
      ...(isFed
        ? {
            plugs: [...own.plugs, { id: 'supply', connector: 'leads', gender: 'none' as const }],
            ports: [...own.ports, { id: 'dc', onPlug: 'supply', protocol: 'dc' as const, role: 'listen' as const }],
            power: [draws('dc'), ...onBus.map(draws)],
          }
        : { power: lives.map(draws) }),
      ...(feeds === 'battery' ? { ownBattery: true } : {}),
    });
    return { ...unit, place };
  });
  return canonicalBoat({ ...boat, sheets, kit, supply: { ...supply, panels } });
};

/** Small boats in which much is joined to much, fed in every way there is, their units all over the boat. */
export const failingBoats: fc.Arbitrary<Boat> = fc
  .tuple(smallBoats, fc.array(feeding, { minLength: 4, maxLength: 7 }), source)
  .map(([boat, how, from]) => withPower(boat, how, supplyOf(from)));
