import type { Fault } from '../../fault.ts';
import { withSounder } from '../../sited-units.ts';

/** A hole straight through the core, its edge bare. */
export const sensorsHullDoesNotSuit: Fault = {
  rule: 'sensors/hull-does-not-suit',
  about: ['core-element'],
  plant: (boat) =>
    withSounder(boat, {
      kit: { id: 'core-element', name: 'depth element through the core', fate: 'stays', site: { laminate: 'core' } },
    }),
};
