import type { Figure } from './figure.ts';
import type { SourceKey } from './sources.ts';

export interface DockTest {
  readonly n: number;
  readonly power: 'off' | 'on';
  readonly measure: string;
  readonly unit: string;
  readonly expect?: number;
  readonly least?: number;
  readonly most?: number;
  /** below this it is a fault, between the two a doubt */
  readonly faultBelow?: number;
  /** how far the reading elsewhere may lie under the one at the feed, V */
  readonly belowFeedMostV?: number;
  readonly source: SourceKey;
}

/** The tests of a bus at the dock, in their order, with the window that passes. Doubt outside 55 to 65 ohm up to 30 nodes. */
export const dockTests: readonly DockTest[] = [
  {
    n: 1,
    power: 'off',
    measure: 'CAN high to CAN low at both ends and the middle',
    unit: 'ohm',
    expect: 60,
    least: 50,
    most: 70,
    source: 'esd-can',
  },
  {
    n: 2,
    power: 'off',
    measure: 'each data wire to 0 V, +12 V and shield',
    unit: 'ohm',
    least: 1_000_000,
    faultBelow: 1000,
    source: 'practice-dock-tests',
  },
  {
    n: 3,
    power: 'off',
    measure: 'shield to ground with its one earth lead lifted',
    unit: 'ohm',
    least: 1_000_000,
    source: 'esd-can',
  },
  {
    n: 4,
    power: 'on',
    measure: 'red to black at the feed, both ends and the farthest drop, engine off, cranking, charging',
    unit: 'V',
    least: 9,
    most: 16,
    belowFeedMostV: 1.5,
    source: 'practice-dock-tests',
  },
  {
    n: 5,
    power: 'on',
    measure: 'CAN high and CAN low to black, idle',
    unit: 'V',
    expect: 2.5,
    least: 2,
    most: 4,
    source: 'esd-can',
  },
  {
    n: 6,
    power: 'on',
    measure: 'devices counted against the plan, errors watched for 10 minutes',
    unit: 'devices',
    source: 'practice-dock-tests',
  },
  {
    n: 7,
    power: 'off',
    measure: 'CAN high to CAN low with each terminator lifted in turn',
    unit: 'ohm',
    expect: 120,
    source: 'practice-dock-tests',
  },
];

/** Resistances that make up the reading of test 1: one terminator, and one node, from careful to bare. */
export const busOhm = {
  terminator: { value: 120, unit: 'ohm', source: 'practice-terminators' },
  nodeLeast: { value: 20_000, unit: 'ohm', source: 'computed-bus-ohm' },
  nodeUsual: { value: 30_000, unit: 'ohm', source: 'computed-bus-ohm' },
  nodeMost: { value: 50_000, unit: 'ohm', source: 'computed-bus-ohm' },
} as const satisfies Record<string, Figure>;

interface FaultSignature {
  readonly id: string;
  readonly fault: string;
  /** power off, between the data wires, few nodes; or what it reads in words */
  readonly ohm?: number;
  readonly reads?: string;
  readonly sign: string;
  readonly source: SourceKey;
}

/** What a fault looks like at the dock. A wrong one may read right: then only the drawing or the other sign shows it. */
export const faultSignatures: readonly FaultSignature[] = [
  { id: 'ok', fault: 'right', ohm: 60, sign: '', source: 'esd-can' },
  {
    id: 'term-1',
    fault: 'one terminator missing',
    ohm: 120,
    sign: 'short networks often still work; errors grow with length',
    source: 'wago-canopen',
  },
  { id: 'term-0', fault: 'no terminator', reads: 'kohm or open', sign: '', source: 'practice-dock-tests' },
  {
    id: 'term-3',
    fault: 'three terminators',
    ohm: 40,
    sign: 'hidden one in masthead unit, power lead, blanking plug or display',
    source: 'computed-bus-ohm',
  },
  {
    id: 'term-drop',
    fault: 'terminator on a drop',
    ohm: 60,
    sign: 'reads right; only the drawing shows it',
    source: 'practice-dock-tests',
  },
  {
    id: 'open-trunk',
    fault: 'one data wire open in the trunk',
    ohm: 120,
    sign: '120 from either side; devices fall into two groups',
    source: 'computed-bus-ohm',
  },
  {
    id: 'open-drop',
    fault: 'one data wire open in a drop',
    reads: '60 on trunk, open at device',
    sign: 'one device missing',
    source: 'computed-bus-ohm',
  },
  {
    id: 'short',
    fault: 'data wires shorted',
    reads: 'near 0',
    sign: 'distance = R/(2r); no traffic',
    source: 'computed-bus-ohm',
  },
  {
    id: 'swap-data',
    fault: 'H and L swapped at one device',
    ohm: 60,
    sign: 'bus stuck dominant when it joins',
    source: 'practice-dock-tests',
  },
  {
    id: 'data-to-supply',
    fault: 'data wire to 0 V or +12 V',
    ohm: 60,
    sign: 'low ohm to supply; idle below 2.0 or above 4.0 V',
    source: 'esd-can',
  },
  {
    id: 'swap-power',
    fault: 'red and black swapped at feed',
    ohm: 60,
    sign: 'negative volts; nothing powers',
    source: 'practice-dock-tests',
  },
  {
    id: 'bad-negative',
    fault: 'resistance in the negative',
    ohm: 60,
    sign: 'far end low; recessive level shifted',
    source: 'practice-dock-tests',
  },
  {
    id: 'two-feeds',
    fault: 'two feeds, positive not cut',
    ohm: 60,
    sign: 'batteries joined; breaker no longer isolates',
    source: 'practice-dock-tests',
  },
  {
    id: 'shield-twice',
    fault: 'shield earthed twice',
    ohm: 60,
    sign: 'shield to ground below 1 Mohm with lead lifted',
    source: 'esd-can',
  },
  {
    id: 'water',
    fault: 'water in a tee',
    reads: '50-60 drifting',
    sign: 'kohm red to white; green pins; comes and goes',
    source: 'practice-dock-tests',
  },
];
