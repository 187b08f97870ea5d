import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';

/** A way of 3.1 m joins places 3.8 m apart. */
export const waysShorterThanStraight: Fault = {
  rule: 'ways/shorter-than-straight',
  about: ['w14'],
  plant: (boat) => ({
    ...boat,
    ways: boat.ways.map((way) => (way.id === 'w14' ? { ...way, length: taped(3.1) } : way)),
  }),
};
