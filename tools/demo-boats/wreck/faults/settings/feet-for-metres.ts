import type { Fault } from '../../fault.ts';
import { withKeelDepth, withTyped } from '../../measured-parts.ts';

/** An alarm of 0.8 m under the keel was typed as 2.6, the feet of it. */
export const settingsFeetForMetres: Fault = {
  rule: 'settings/feet-for-metres',
  about: ['screen-feet'],
  plant: (boat) =>
    withTyped(withKeelDepth(boat, 'feet'), { unit: 'screen-feet', what: 'depth-alarm', figure: 2.6, in: 'm' }),
};
