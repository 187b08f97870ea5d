import type { WalkStep } from '../../../../../src/core/boat/boat-schema.ts';
import { withWalk } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const moved = 'depth.n2k';

const teesAt = ({ place, tees }: WalkStep): string[] => {
  const others = tees.filter((tee) => tee !== moved);
  return place === 'bilge-well' ? [...others, moved] : others;
};

/** The tee of the depth sensor lies beside it in the bilge. */
export const busTeeNotAllowedHere: Fault = {
  rule: 'bus/tee-not-allowed-here',
  about: ['nav', 'bilge-well'],
  plant: (boat) => withWalk(boat, 'nav', (walk) => walk.map((step) => ({ ...step, tees: teesAt(step) }))),
};
