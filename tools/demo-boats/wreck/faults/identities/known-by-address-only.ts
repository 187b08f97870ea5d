import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

/** A unit drafted from a recording that began too late. */
export const identitiesKnownByAddressOnly: Fault = {
  rule: 'identities/known-by-address-only',
  about: ['late-comer'],
  plant: (boat) =>
    withOwnBus(boat, {
      id: 'recorded',
      name: 'Recorded bus',
      sheet: { ...fillerSheet('recorded-unit', 'Unit as recorded', 1), source: 'recording' },
      kit: [{ id: 'late-comer', name: 'unit at address 43, no claim seen', place: 'aft-cabin', tail: taped(0.3) }],
      walk: [{ place: 'aft-cabin', tees: ['late-comer.n2k', 'feed'] }],
    }),
};
