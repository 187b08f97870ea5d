import { ethernetLimits } from './ethernet.ts';
import type { Figure } from './figure.ts';
import { nmea0183 } from './nmea0183.ts';

/** Limits of 0183 lines and of numbers on the bus that an owner may set otherwise; the ids are keys of `limits` in a boat file. */
export const lineLimits = {
  'nmea0183-listeners': nmea0183.fanOut,
  'nmea0183-load': { value: 80, unit: '%', source: 'practice-0183-load' },
  'ethernet-link': { ...ethernetLimits.link, unit: 'm' },
  'tank-number-most': { value: 5, unit: 'number', source: 'practice-tank-numbers' },
} as const satisfies Record<string, Figure>;
