import type { Fault } from '../../fault.ts';

/** The handheld radio was left ashore: every radio aboard hangs on the house bank. */
export const blackoutsOneFailureTakesTheLast: Fault = {
  rule: 'blackouts/one-failure-takes-the-last',
  about: ['house'],
  plant: (boat) => ({ ...boat, kit: boat.kit.filter(({ id }) => id !== 'handheld') }),
};
