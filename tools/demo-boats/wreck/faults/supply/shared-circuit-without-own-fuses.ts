import type { Fault } from '../../fault.ts';
import { circuit, wiredSheet, wiredUnit, withMore } from '../../supply-parts.ts';

/** Two lamps on one fuse. */
export const supplySharedCircuitWithoutOwnFuses: Fault = {
  rule: 'supply/shared-circuit-without-own-fuses',
  about: ['c-pair', 'pair-one', 'pair-two'],
  plant: (boat) =>
    withMore(boat, {
      sheets: [wiredSheet('pair-one-kind'), wiredSheet('pair-two-kind')],
      kit: [wiredUnit('pair-one', 'lamp to port'), wiredUnit('pair-two', 'lamp to starboard')],
      switches: [circuit('c-pair', ['pair-one.dc', 'pair-two.dc'])],
    }),
};
