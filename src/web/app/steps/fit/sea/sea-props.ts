import type { Boat, Kit } from '../../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../../core/plan-shape.ts';

/** What every calculator is made from. */
export interface SeaProps {
  readonly boat: Boat;
  readonly plan: Plan;
  /** the units of some kinds that are aboard when the work is done */
  readonly unitsOf: (...kinds: readonly string[]) => readonly Kit[];
}
