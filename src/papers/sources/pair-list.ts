import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { cardBoat } from '../cards/card-boat.ts';
import type { ListTable } from '../table/list-table.ts';
import { pairRows } from './pair-rows.ts';

const open = 'left open, insulated';

/** Every pair wire by wire, by the marks of both makers; what stays open is a row of its own. */
export const pairList = (boat: Boat, plan: Plan): ListTable => ({
  id: 'pairs',
  title: 'Pairs, wire by wire',
  says: 'Switch both units off first. One talker on a pair; what is open is cut back and insulated, each wire by itself.',
  columns: [
    { id: 'label', head: 'label', kind: 'label', share: 0.7, once: true },
    { id: 'talker', head: 'talker', share: 1.8, once: true },
    { id: 'from', head: 'its wire', share: 1.2 },
    { id: 'to', head: 'to' },
    { id: 'listener', head: 'listener', share: 1.8 },
    { id: 'wire', head: 'its wire', share: 1.2 },
    { id: 'speed', head: 'speed' },
    { id: 'shield', head: 'shield', share: 1.8 },
    { id: 'done', head: 'done', kind: 'tick', share: 0.5 },
  ],
  rows: pairRows(cardBoat(boat), plan).flatMap(({ label, talker, listener, speed, wires, open: left, shield }) => [
    ...wires.map(({ from, to }) =>
      to === undefined
        ? [label, talker, from, open, undefined, undefined, speed, shield, undefined]
        : [label, talker, from, 'joined to', listener, to, speed, shield, undefined],
    ),
    ...left.map((wire) => [label, talker, wire, open, listener, undefined, speed, shield, undefined]),
  ]),
  empty: 'No pair and no maker’s own wire is planned.',
});
