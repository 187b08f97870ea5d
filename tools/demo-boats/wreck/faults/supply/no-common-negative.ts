import type { Fault } from '../../fault.ts';

/** Nobody has written where her negatives meet. */
export const supplyNoCommonNegative: Fault = {
  rule: 'supply/no-common-negative',
  about: ['bare-bank'],
  plant: ({ supply: { negativeAt: _, ...supply }, ...boat }) => ({ ...boat, supply }),
};
