import type { Boat } from '../../../../../src/core/boat/boat-schema.ts';
import type { Fault } from '../../fault.ts';
import { withSounder } from '../../sited-units.ts';

const withFishFinder = (boat: Boat, side: 'port' | 'starboard'): Boat =>
  withSounder(boat, {
    kit: { id: `fish-element-${side}`, name: `element of the fish finder, ${side}`, fate: 'stays' },
    frequenciesKHz: [83],
  });

/** Two fish finders of one make, both at 83 kHz. */
export const sensorsOneFrequencyTwice: Fault = {
  rule: 'sensors/one-frequency-twice',
  about: ['fish-element-port', 'fish-element-starboard'],
  plant: (boat) => withFishFinder(withFishFinder(boat, 'port'), 'starboard'),
};
