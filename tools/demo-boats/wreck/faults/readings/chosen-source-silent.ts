import type { Fault } from '../../fault.ts';
import { withSource } from '../../pair-units.ts';

/** Air humidity was to come from the display, which does not measure it. */
export const readingsChosenSourceSilent: Fault = {
  rule: 'readings/chosen-source-silent',
  about: ['display.n2k'],
  plant: (boat) => withSource(boat, { reading: 'humidity', primary: 'display.n2k' }),
};
