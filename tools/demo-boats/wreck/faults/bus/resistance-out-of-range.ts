import type { Fault } from '../../fault.ts';

/** Somebody copied the resistance of mid cable out of a handbook that lost a decimal. */
export const busResistanceOutOfRange: Fault = {
  rule: 'bus/resistance-out-of-range',
  about: [],
  plant: (boat) => ({
    ...boat,
    limits: { ...boat.limits, 'nmea2000-ohm-mid': { value: 0.00142, reason: 'Copied from a handbook.' } },
  }),
};
