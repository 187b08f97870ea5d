import type { Fault } from '../../fault.ts';
import { withDay } from './with-day.ts';

/** Ten days at anchor on a bank for one. */
export const energyBankTooSmall: Fault = {
  rule: 'energy/bank-too-small',
  about: ['house'],
  plant: (boat) =>
    withDay(boat, {
      id: 'long-weekend',
      name: 'Ten days in the bay',
      like: 'anchor',
      hours: [],
      chargedAfter: 10,
    }),
};
