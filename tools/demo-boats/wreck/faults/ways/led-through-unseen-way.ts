import type { Fault } from '../../fault.ts';

/** The way up to the roof, which the position antenna hangs on, is only assumed. */
export const waysLedThroughUnseenWay: Fault = {
  rule: 'ways/led-through-unseen-way',
  about: ['w11'],
  plant: (boat) => ({
    ...boat,
    ways: boat.ways.map((way) => (way.id === 'w11' ? { ...way, known: 'assumed' } : way)),
  }),
};
