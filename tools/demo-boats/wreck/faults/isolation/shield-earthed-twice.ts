import type { Boat } from '../../../../../src/core/boat/boat-schema.ts';
import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const side = (before: Boat, id: string, name: string): Boat => {
  const boat = withOwnBus(before, {
    id,
    name,
    sheet: fillerSheet(`${id}-keypad`, `Keypad on the ${name}`, 1),
    kit: [{ id: `${id}-key`, name: `keypad on the ${name}`, place: 'aft-cabin', tail: taped(0.3) }],
    walk: [{ place: 'aft-cabin', tees: [`${id}-key.n2k`, 'feed', `shield-bridge.${id}`] }],
  });
  return { ...boat, buses: boat.buses.map((bus) => (bus.id === id ? { ...bus, shieldAt: ['panel-locker'] } : bus)) };
};

/** Two buses, each earthed at its own feed, and a bridge that carries the shield of one on to the other. */
export const isolationShieldEarthedTwice: Fault = {
  rule: 'isolation/shield-earthed-twice',
  about: ['shield-a', 'shield-b'],
  plant: (before) => {
    const one = side(before, 'shield-a', 'bus earthed in the panel locker');
    const two = side(one, 'shield-b', 'bus earthed at the battery');
    const buses = two.buses.map((bus) => (bus.id === 'shield-b' ? { ...bus, shieldAt: ['battery-box'] } : bus));
    const joins = two.joins.map((join) =>
      join.bus === 'shield-a' || join.bus === 'shield-b'
        ? { ...join, members: [...join.members, { kit: 'shield-bridge', port: join.bus, as: 'both' as const }] }
        : join,
    );
    const port = (id: string) =>
      ({ id, onPlug: id, protocol: 'nmea2000', role: 'both', len: 1, hears: [], sends: [{ pgn: 127502 }] }) as const;
    return {
      ...two,
      buses,
      joins,
      sheets: [
        ...two.sheets,
        {
          id: 'shield-bridge-sheet',
          name: 'Bridge with its shields in one, by its manual',
          kind: 'gateway',
          source: 'manual',
          sourceNote: 'Invented for this boat.',
          plugs: [
            { id: 'shield-a', connector: 'n2k-micro', gender: 'male' },
            { id: 'shield-b', connector: 'n2k-micro', gender: 'male' },
          ],
          ports: [port('shield-a'), port('shield-b')].map((entry) => ({
            ...entry,
            hears: [],
            sends: [...entry.sends],
          })),
          earthing: { body: 'plastic', shieldThrough: true },
        },
      ],
      kit: [
        ...two.kit,
        {
          id: 'shield-bridge',
          name: 'bridge between the two',
          sheet: 'shield-bridge-sheet',
          fate: 'stays',
          place: 'aft-cabin',
          tail: taped(0.3),
        },
      ],
    };
  },
};
