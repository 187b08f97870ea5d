import type { SourceKey } from './sources.ts';

interface DisplayLoad {
  readonly inches: number;
  /** least and most of the typical currents printed, A at 12 V */
  readonly typicalA: readonly [number, number];
  readonly mostA: readonly [number, number];
  readonly mostWAt10V?: number;
  readonly source: SourceKey;
}

/** Currents of displays by size, A at 12 V, for planning: the plate of the unit wins. */
export const displayLoads: readonly DisplayLoad[] = [
  { inches: 4.3, typicalA: [0.4, 0.5], mostA: [1.5, 2], mostWAt10V: 5, source: 'maker-loads' },
  { inches: 5, typicalA: [0.4, 0.4], mostA: [1.5, 1.5], source: 'maker-loads' },
  { inches: 6.2, typicalA: [0.7, 0.7], mostA: [1.25, 1.25], mostWAt10V: 12, source: 'maker-loads' },
  { inches: 7, typicalA: [0.55, 1.5], mostA: [1.25, 2], mostWAt10V: 24, source: 'maker-loads' },
  { inches: 9, typicalA: [0.75, 1], mostA: [1.5, 1.5], mostWAt10V: 18, source: 'maker-loads' },
  { inches: 10.1, typicalA: [1.5, 1.9], mostA: [2.7, 2.7], mostWAt10V: 41, source: 'maker-loads' },
  { inches: 11.6, typicalA: [1.3, 1.3], mostA: [6, 6], mostWAt10V: 45, source: 'maker-loads' },
  { inches: 12.1, typicalA: [2.2, 2.4], mostA: [2.9, 3], mostWAt10V: 37, source: 'maker-loads' },
  { inches: 15.6, typicalA: [1.3, 1.3], mostA: [6, 6], mostWAt10V: 52, source: 'maker-loads' },
  { inches: 17, typicalA: [2.8, 2.8], mostA: [3.5, 3.5], mostWAt10V: 40, source: 'maker-loads' },
  { inches: 21.5, typicalA: [3.9, 3.9], mostA: [4.9, 4.9], mostWAt10V: 59, source: 'maker-loads' },
  { inches: 24, typicalA: [6.1, 6.1], mostA: [7.6, 7.6], mostWAt10V: 88, source: 'maker-loads' },
];

interface DeviceLoad {
  readonly kind: string;
  readonly leastA: number;
  readonly mostA: number;
  readonly note?: string;
  readonly source: SourceKey;
}

/** Currents of other units by kind and state, A at 12 V, for planning. */
export const deviceLoads: readonly DeviceLoad[] = [
  { kind: 'solid-state radar dome 24 in, standby', leastA: 0.25, mostA: 0.25, source: 'maker-loads' },
  { kind: 'solid-state radar dome 24 in, transmit', leastA: 2.1, mostA: 2.1, source: 'maker-loads' },
  { kind: 'magnetron dome, standby', leastA: 0.5, mostA: 1.5, source: 'memory-loads' },
  { kind: 'magnetron dome, transmit', leastA: 2.5, mostA: 4, source: 'memory-loads' },
  { kind: 'open-array magnetron 4-12 kW, transmit', leastA: 6, mostA: 12, source: 'memory-loads' },
  { kind: 'AIS class B 5 W, mean', leastA: 0.25, mostA: 0.25, source: 'maker-loads' },
  { kind: 'AIS class B 5 W, peak', leastA: 2.5, mostA: 2.5, source: 'maker-loads' },
  { kind: 'AIS receiver only', leastA: 0.05, mostA: 0.1, source: 'practice-loads' },
  { kind: 'VHF 25 W, standby', leastA: 0.35, mostA: 0.35, source: 'maker-loads' },
  { kind: 'VHF 25 W, receive', leastA: 0.6, mostA: 0.6, source: 'maker-loads' },
  { kind: 'VHF 25 W, transmit low power', leastA: 2, mostA: 2, source: 'maker-loads' },
  { kind: 'VHF 25 W, transmit full power', leastA: 6, mostA: 6, source: 'maker-loads' },
  { kind: 'colour instrument or pilot head', leastA: 0.25, mostA: 0.35, source: 'maker-loads' },
  { kind: 'monochrome instrument', leastA: 0.03, mostA: 0.04, source: 'maker-loads' },
  { kind: 'wired wind transducer', leastA: 0.028, mostA: 0.028, source: 'maker-loads' },
  { kind: 'position antenna', leastA: 0.04, mostA: 0.15, source: 'maker-loads' },
  { kind: 'satellite compass', leastA: 0.18, mostA: 0.18, source: 'maker-loads' },
  { kind: 'sounder module, small', leastA: 0.9, mostA: 2, source: 'maker-loads' },
  { kind: 'sounder module, large (100 W)', leastA: 4.8, mostA: 8.3, source: 'maker-loads' },
  { kind: 'hydraulic pilot pump and electronics, standby', leastA: 0, mostA: 1, source: 'maker-loads' },
  { kind: 'hydraulic pilot pump and electronics, engaged', leastA: 5, mostA: 10, source: 'maker-loads' },
  { kind: 'hydraulic pilot pump, peak', leastA: 34, mostA: 34, source: 'maker-loads' },
  { kind: 'linear drive, mean in chop', leastA: 4, mostA: 5, source: 'practice-loads' },
  { kind: 'linear drive, peak', leastA: 10, mostA: 15, source: 'practice-loads' },
  { kind: 'wheel pilot, mean', leastA: 1, mostA: 2.5, source: 'memory-loads' },
  { kind: 'tiller pilot, mean', leastA: 0.5, mostA: 1.5, source: 'memory-loads' },
  { kind: 'PoE camera or remote keypad', leastA: 0.4, mostA: 0.4, source: 'maker-loads' },
  { kind: '8-port PoE switch, all ports loaded', leastA: 13.3, mostA: 13.3, source: 'maker-loads' },
  { kind: '8-port PoE switch, alone', leastA: 0.4, mostA: 0.8, source: 'memory-switch-loads' },
  { kind: 'cellular monitoring hub, max', leastA: 1.7, mostA: 2, source: 'maker-loads' },
  { kind: 'bus to wifi gateway', leastA: 0.06, mostA: 0.06, source: 'maker-loads' },
  { kind: 'LED tricolour', leastA: 0.1, mostA: 0.25, source: 'memory-switch-loads' },
  { kind: 'LED anchor light', leastA: 0.05, mostA: 0.15, source: 'memory-switch-loads' },
  {
    kind: 'satellite internet terminal, while on',
    leastA: 3.3,
    mostA: 9.2,
    note: 'Not fed by a standard PoE port: its own supply or a converter the maker approves, and its own fuse.',
    source: 'practice-loads',
  },
];
