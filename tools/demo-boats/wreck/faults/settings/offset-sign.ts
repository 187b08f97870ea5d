import type { Fault } from '../../fault.ts';
import { withKeelDepth, withTyped } from '../../measured-parts.ts';

/** The offset to the keel was typed with a plus. */
export const settingsOffsetSign: Fault = {
  rule: 'settings/offset-sign',
  about: ['sounder-sign'],
  plant: (boat) =>
    withTyped(withKeelDepth(boat, 'sign'), { unit: 'sounder-sign', what: 'depth-offset', figure: 0.6, in: 'm' }),
};
