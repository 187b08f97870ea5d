import { depthFigures } from '../../facts/depth-figures.ts';
import type { DepthReference } from './depth-below.ts';

/**
 * What a depth is counted from once an offset is added to it, by the sign of the offset alone: positive the surface,
 * negative the keel, none the transducer itself. Less than one step of the message is none.
 *
 * @example offsetReference(-1.35) // 'keel'
 */
export const offsetReference = (offsetM: number): DepthReference => {
  const steps = Math.round(offsetM / depthFigures.offsetStep.value);
  return steps > 0 ? 'surface' : steps < 0 ? 'keel' : 'transducer';
};
