import { taped } from '../../base.ts';
import { withUnit } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

/** A drop of 8.4 m to the instrument in the cockpit: 1.8 m of way and the rest coiled behind it. */
export const busDropTooLong: Fault = {
  rule: 'bus/drop-too-long',
  about: ['nav', 'instr-aft.n2k'],
  plant: (boat) => withUnit(boat, 'instr-aft', (unit) => ({ ...unit, tail: taped(6.6) })),
};
