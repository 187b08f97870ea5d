import { busOhm } from '../facts/dock-tests.ts';

/** What a meter reads between the data wires with the power off, ohm. */
export interface ExpectedOhm {
  readonly leastOhm: number;
  readonly usualOhm: number;
  readonly mostOhm: number;
}

/**
 * The reading of a sound bus: R = 1 / (t / 120 + n / Rd), with t terminators and n nodes of Rd each, ohm
 * (source: computed-bus-ohm).
 *
 * @example expectedOhm({ terminators: 2, nodes: 20 }) // { leastOhm: 56.6…, usualOhm: 57.7…, mostOhm: 58.6… }
 */
export const expectedOhm = ({ terminators, nodes }: { terminators: number; nodes: number }): ExpectedOhm => {
  const reads = (nodeOhm: number): number => 1 / (terminators / busOhm.terminator.value + nodes / nodeOhm);
  return {
    leastOhm: reads(busOhm.nodeLeast.value),
    usualOhm: reads(busOhm.nodeUsual.value),
    mostOhm: reads(busOhm.nodeMost.value),
  };
};
