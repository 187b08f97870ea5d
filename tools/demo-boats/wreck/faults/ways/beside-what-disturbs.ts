import type { Fault } from '../../fault.ts';

/** The drop to the roof shares its hole with the lead of an HF set. */
export const waysBesideWhatDisturbs: Fault = {
  rule: 'ways/beside-what-disturbs',
  about: ['w11'],
  plant: (boat) => ({
    ...boat,
    ways: boat.ways.map((way) => (way.id === 'w11' ? { ...way, near: ['hf-coax'] } : way)),
  }),
};
