import type { Fault } from '../../fault.ts';
import { withKeelDepth, withTyped } from '../../measured-parts.ts';

/** The offset to the keel stands in the sounder and again in its screen. */
export const settingsOffsetInTwo: Fault = {
  rule: 'settings/offset-in-two',
  about: ['sounder-twice', 'screen-twice'],
  plant: (boat) =>
    withTyped(
      withKeelDepth(boat, 'twice'),
      { unit: 'sounder-twice', what: 'depth-offset', figure: -0.6, in: 'm' },
      { unit: 'screen-twice', what: 'depth-offset', figure: -0.6, in: 'm' },
    ),
};
