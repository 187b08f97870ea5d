import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const filler = fillerSheet('two-port-display', 'Old display with two bus sockets', 1);
const kit = [
  { id: 'through-display', name: 'old display the bus runs through', place: 'helm-locker', tail: taped(0.3), phase: 2 },
  { id: 'through-key', name: 'keypad behind it', place: 'helm-locker', tail: taped(0.3) },
];

/** The bus runs through an old display that goes in phase 2. */
export const busInLineUnitLeaves: Fault = {
  rule: 'bus/in-line-unit-leaves',
  about: ['through', 'through-display'],
  plant: (before) => {
    const boat = withOwnBus(before, {
      id: 'through',
      name: 'Bus through a display',
      sheet: {
        ...filler,
        ports: filler.ports.flatMap((port) => [port, { ...port, id: 'n2k-b' }]),
        inLine: ['n2k', 'n2k-b'],
      },
      kit,
      walk: [{ place: 'helm-locker', tees: ['through-key.n2k', 'feed'] }],
    });
    return {
      ...boat,
      kit: boat.kit.map((unit) => (unit.id === 'through-display' ? { ...unit, fate: 'goes' } : unit)),
      joins: boat.joins.map((join) =>
        join.id === 'on-through'
          ? { ...join, members: [...join.members, { kit: 'through-display', port: 'n2k-b', as: 'both' }] }
          : join,
      ),
    };
  },
};
