import { withUnit } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

/** The plotter's antenna was set to 38400 baud; the plotter listens at 4800. */
export const wiringBaudDiffers: Fault = {
  rule: 'wiring/baud-differs',
  about: ['pair-plotter', 'gps-spare.out', 'plotter-old.in'],
  plant: (boat) =>
    withUnit(boat, 'gps-spare', (unit) => ({
      ...unit,
      changes: [{ path: 'ports.out.baud', value: 38400, how: 'seen' }],
    })),
};
