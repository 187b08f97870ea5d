import type { Boat, Kit } from '../../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../../core/plan-shape.ts';

/** What every calculator is made from. */
export interface SeaProps {
  readonly boat: Boat;
  readonly plan: Plan;
  /** the units of some kinds that are aboard when the work is done, in the order of the kinds */
  readonly unitsOf: (...kinds: readonly string[]) => readonly Kit[];
  /** those that feel the speed through the water */
  readonly logs: readonly Kit[];
}
