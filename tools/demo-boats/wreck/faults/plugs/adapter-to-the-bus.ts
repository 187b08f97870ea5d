import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const sheet = fillerSheet('push-plug-sheet', 'Keypad with a push plug', 1);

/** A keypad whose maker has a plug of its own for the bus. */
export const plugsAdapterToTheBus: Fault = {
  rule: 'plugs/adapter-to-the-bus',
  about: ['push-plug.n2k', 'push-bus'],
  plant: (boat) =>
    withOwnBus(boat, {
      id: 'push-bus',
      name: 'Keypad bus',
      sheet: { ...sheet, plugs: [{ id: 'bus', connector: 'maker-a-push-5', gender: 'female' }] },
      kit: [{ id: 'push-plug', name: 'keypad with a push plug', place: 'aft-cabin', tail: taped(0.3) }],
      walk: [{ place: 'aft-cabin', tees: ['push-plug.n2k', 'feed'] }],
    }),
};
