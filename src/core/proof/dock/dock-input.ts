import type { BoatIndex } from '../../boat/boat-index.ts';
import { splitDotted } from '../../boat/ids.ts';
import type { Plan } from '../../plan-shape.ts';

/** The parts of a plan that tests at the dock are drawn from. */
export interface DockInput {
  readonly index: BoatIndex;
  readonly plan: Pick<
    Plan,
    | 'banks'
    | 'buses'
    | 'converters'
    | 'feeds'
    | 'isolation'
    | 'loads'
    | 'pairs'
    | 'panels'
    | 'readings'
    | 'sources'
    | 'supplies'
    | 'vitals'
  >;
}

/** The place of a unit, or of the unit of a port, as the part of a test that says where. */
export const placeOf = (index: BoatIndex, dotted: string): { readonly place?: string } => {
  const place = (index.kit.get(dotted) ?? index.kit.get(splitDotted(dotted).kit))?.place;
  return place === undefined ? {} : { place };
};
