import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const key = { id: 'hidden-end', name: 'old unit with a terminator in it', place: 'panel-locker', tail: taped(0.3) };

/** A unit with a terminator inside hangs in the middle of a trunk that has both its own. */
export const busTerminatorOnADrop: Fault = {
  rule: 'bus/terminator-on-a-drop',
  about: ['ended', 'hidden-end.n2k'],
  plant: (boat) =>
    withOwnBus(boat, {
      id: 'ended',
      name: 'Bus with three ends',
      sheet: { ...fillerSheet('ended-unit', 'Old unit with a terminator in it', 1), terminator: true },
      kit: [key],
      walk: [
        { place: 'helm-locker', tees: [] },
        { place: 'panel-locker', via: 'w5', tees: ['hidden-end.n2k', 'feed'] },
        { place: 'aft-cabin', via: 'w8', tees: [] },
      ],
    }),
};
