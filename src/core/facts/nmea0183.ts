import type { Figure } from './figure.ts';

/** What an NMEA 0183 line must keep to. A listener is isolated and stands 15 V either way. */
export const nmea0183 = {
  baud: { value: 4800, unit: 'bit/s', source: 'iec-61162' },
  fastBaud: { value: 38_400, unit: 'bit/s', source: 'iec-61162' },
  bitsPerChar: { value: 10, unit: 'bits', source: 'computed-serial' },
  sentenceMost: { value: 82, unit: 'characters with start and CR LF', source: 'raymond-nmea' },
  /** share of the line that may be planned full */
  planShare: { value: 0.8, unit: 'of the line', source: 'practice-0183-load' },
  /** listeners on one output where its manual is silent */
  fanOut: { value: 3, unit: 'listeners', source: 'choice-fan-out' },
  fanOutMost: { value: 10, unit: 'listeners', source: 'rs422-primers' },
  listenerAtV: { value: 2, unit: 'V', source: 'iec-61162' },
  listenerMa: { value: 2, unit: 'mA at 2 V', source: 'iec-61162' },
  receiverMv: { value: 200, unit: 'mV', source: 'ti-rs422' },
  lineMost: { value: 1200, unit: 'm at up to 100 kbit/s', source: 'rs422-primers' },
  twistedAbove: { value: 50, unit: 'm at 4800 baud', source: 'practice-0183-pairs' },
  twistedAboveFast: { value: 20, unit: 'm at 38400 baud', source: 'practice-0183-pairs' },
  coreLeast: { value: 0.25, unit: 'mm²', source: 'practice-0183-pairs' },
} as const satisfies Record<string, Figure>;

/** How a talker's wires go to a listener's, by what the two are. `open` wires are insulated and joined to nothing. */
export const howPairsJoin = {
  'pair to pair': { joins: ['A to A', 'B to B', 'ground to ground at 38400'], open: [], source: 'practice-0183-pairs' },
  'pair to single wire': {
    joins: ['A to signal', 'talker 0 V to return'],
    // B tied to ground drives current at every bit and joins two grounds
    open: ['B'],
    source: 'practice-0183-pairs',
  },
  'single wire to pair': { joins: ['signal to A', 'talker 0 V to B'], open: [], source: 'practice-0183-pairs' },
} as const;
