import type { Figure } from './figure.ts';

/** How full a bus may be at its worst before it is noted, warned of and stopped, and how often a message may come beside the usual; the ids are keys of `limits` in a boat file. */
export const trafficLimits = {
  'nmea2000-load-note': { value: 30, unit: '%', source: 'practice-bus-load' },
  'nmea2000-load-warn': { value: 50, unit: '%', source: 'practice-bus-load' },
  'nmea2000-load-stop': { value: 70, unit: '%', source: 'practice-bus-load' },
  'nmea2000-times-usual': { value: 5, unit: 'times as often as usual', source: 'choice-fast-sender' },
} as const satisfies Record<string, Figure>;
