import { lineKinds } from '../../../../../src/core/boat/line-kinds.ts';
import type { Fault } from '../../fault.ts';

/** The hole to the pulpit is kept for data and power, so the coax of the radio has no road to its whip. */
export const waysNoRouteForLine: Fault = {
  rule: 'ways/no-route-for-line',
  about: ['coax-radio'],
  plant: (boat) => ({
    ...boat,
    ways: boat.ways.map((way) =>
      way.id === 'w15' ? { ...way, allows: lineKinds.filter((kind) => kind !== 'coax') } : way,
    ),
  }),
};
