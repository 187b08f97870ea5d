import { frozen } from './boat/frozen.test-helper.ts';
import { keptFor } from './boat/kept-for.ts';
import { plan } from './plan.ts';

/** The plan of a boat with quick layouts, made once for all tests of a worker that hand in the very same boat. */
export const quickPlan = keptFor((boat: Parameters<typeof plan>[0]) => frozen(plan(boat, new Map())));
