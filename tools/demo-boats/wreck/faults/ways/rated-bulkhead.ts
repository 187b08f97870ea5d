import type { Fault } from '../../fault.ts';

/** The drop to the roof goes through a bulkhead that must hold water back. */
export const waysRatedBulkhead: Fault = {
  rule: 'ways/rated-bulkhead',
  about: ['w11'],
  plant: (boat) => ({
    ...boat,
    ways: boat.ways.map((way) => (way.id === 'w11' ? { ...way, through: 'watertight' } : way)),
  }),
};
