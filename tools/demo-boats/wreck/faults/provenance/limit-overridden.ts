import type { Fault } from '../../fault.ts';

/** Somebody allowed more devices on a bus than the handbooks do. */
export const provenanceLimitOverridden: Fault = {
  rule: 'provenance/limit-overridden',
  about: [],
  plant: (boat) => ({
    ...boat,
    limits: { ...boat.limits, 'nmea2000-load-note': { value: 35, reason: 'It has always been fuller.' } },
  }),
};
