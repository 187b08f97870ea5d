import type { Fault } from '../../fault.ts';
import { circuit, wiredSheet, wiredUnit, withMore } from '../../supply-parts.ts';

/** A lamp with a second lead from another fuse. */
export const supplyFedTwice: Fault = {
  rule: 'supply/fed-twice',
  about: ['twice-lamp', 'c-lamp-one', 'c-lamp-two'],
  plant: (boat) =>
    withMore(boat, {
      sheets: [wiredSheet('twice-lamp-kind')],
      kit: [wiredUnit('twice-lamp', 'lamp with two leads')],
      switches: [circuit('c-lamp-one', ['twice-lamp.dc']), circuit('c-lamp-two', ['twice-lamp.dc'])],
    }),
};
