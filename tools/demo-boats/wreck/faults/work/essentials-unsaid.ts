import type { Fault } from '../../fault.ts';
import { withWork } from '../../work-parts.ts';

/** Nobody has said what the horn hangs on. */
export const workEssentialsUnsaid: Fault = {
  rule: 'work/essentials-unsaid',
  about: [],
  plant: (boat) =>
    withWork(boat, ({ essentials = [], ...work }) => ({
      ...work,
      essentials: essentials.filter((one) => one.function !== 'horn'),
    })),
};
