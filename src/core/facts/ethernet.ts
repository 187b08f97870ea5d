import type { Figure } from './figure.ts';
import type { SourceKey } from './sources.ts';

/** What an Ethernet link and its pictures must keep to. */
export const ethernetLimits = {
  link: { value: 100, unit: 'm with patch leads', source: 'memory-ethernet-length' },
  radarLink: { value: 50, unit: 'm, the longest some radar cables are sold', source: 'practice-ethernet' },
  rj45Bare: { value: 14, unit: 'mm hole', source: 'practice-ethernet' },
  rj45WithBoot: { value: 25, unit: 'mm hole', source: 'practice-ethernet' },
  radarPicture: { value: 8, unit: 'Mbit/s of multicast', source: 'practice-ethernet' },
} as const satisfies Record<string, Figure>;

/** Addresses set aside for ship networks. */
export const shipNetworkAddresses = {
  source: 'iec-61162-450',
  multicastFirst: '239.192.0.1',
  multicastLast: '239.192.0.64',
  hostFirst: '172.16.0.1',
  hostLast: '172.31.255.254',
} as const;

interface PoeClass {
  readonly cls: number;
  /** at the port */
  readonly sourceW: number;
  /** left for the device at the end of the longest cable */
  readonly deviceW: number;
  readonly type: 1 | 2 | 3 | 4;
  readonly pairs: 2 | 4;
  readonly source: SourceKey;
}

/** Classes of power over Ethernet. 12 V is not PoE: a booster is needed. */
export const poeClasses: readonly PoeClass[] = [
  { cls: 0, sourceW: 15.4, deviceW: 12.95, type: 1, pairs: 2, source: 'ieee-poe' },
  { cls: 1, sourceW: 4, deviceW: 3.84, type: 1, pairs: 2, source: 'ieee-poe' },
  { cls: 2, sourceW: 7, deviceW: 6.49, type: 1, pairs: 2, source: 'ieee-poe' },
  { cls: 3, sourceW: 15.4, deviceW: 12.95, type: 1, pairs: 2, source: 'ieee-poe' },
  { cls: 4, sourceW: 30, deviceW: 25.5, type: 2, pairs: 2, source: 'ieee-poe' },
  { cls: 5, sourceW: 45, deviceW: 40, type: 3, pairs: 4, source: 'ieee-poe' },
  { cls: 6, sourceW: 60, deviceW: 51, type: 3, pairs: 4, source: 'ieee-poe' },
  { cls: 7, sourceW: 75, deviceW: 62, type: 4, pairs: 4, source: 'ieee-poe' },
  { cls: 8, sourceW: 90, deviceW: 71.3, type: 4, pairs: 4, source: 'ieee-poe' },
];

interface PoeType {
  readonly type: 1 | 2 | 3 | 4;
  readonly standard: string;
  readonly portLeastV: number;
  readonly portMostV: number;
  /** least volts at the device */
  readonly deviceLeastV: number;
  readonly ma: number;
  readonly perPair: boolean;
  readonly source: SourceKey;
}

/** Types of power over Ethernet, the voltages at both ends and the current. */
export const poeTypes: readonly PoeType[] = [
  {
    type: 1,
    standard: '802.3af',
    portLeastV: 44,
    portMostV: 57,
    deviceLeastV: 37,
    ma: 350,
    perPair: false,
    source: 'ieee-poe',
  },
  {
    type: 2,
    standard: '802.3at',
    portLeastV: 50,
    portMostV: 57,
    deviceLeastV: 42.5,
    ma: 600,
    perPair: false,
    source: 'ieee-poe',
  },
  {
    type: 3,
    standard: '802.3bt',
    portLeastV: 50,
    portMostV: 57,
    deviceLeastV: 42.5,
    ma: 600,
    perPair: true,
    source: 'ieee-poe',
  },
  {
    type: 4,
    standard: '802.3bt',
    portLeastV: 52,
    portMostV: 57,
    deviceLeastV: 41.1,
    ma: 960,
    perPair: true,
    source: 'ieee-poe',
  },
];

/** Loop resistance of the longest cable by type, ohm: type 1 and 2. With the current it gives what the cable eats. */
export const poeLoopOhm = {
  1: { value: 20, unit: 'ohm', source: 'ieee-poe' },
  2: { value: 12.5, unit: 'ohm', source: 'ieee-poe' },
} as const satisfies Record<1 | 2, Figure>;
