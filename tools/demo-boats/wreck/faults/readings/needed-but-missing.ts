import type { Fault } from '../../fault.ts';

/** The air pressure is wanted at the helm, and nothing aboard measures it. */
export const readingsNeededButMissing: Fault = {
  rule: 'readings/needed-but-missing',
  about: ['display'],
  plant: (boat) => ({ ...boat, needs: [...boat.needs, { reading: 'pressure', at: 'display', must: true }] }),
};
