import { withCures } from './cures/with-cures.ts';
import { planWith } from './plan-with.ts';
import { orderOf } from './shopping/order-of.ts';

/** The plan of a boat, whole: see `planWith`. */
export const plan = planWith({ cures: withCures, order: orderOf });
