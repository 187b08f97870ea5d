import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { joinsOf } from '../joins/joins-of.ts';
import type { PlanDraft } from '../plan-shape.ts';
import type { Reaches } from '../readings/reaches.ts';
import { refitOf } from '../readings/refit.ts';
import { planSources } from './plan-sources.ts';

/** Where the readings of a boat get to in a phase, by the joins of her file. */
export const reachesOn = (boat: Boat, phase = 1): Reaches => {
  const index = indexBoat(boat);
  return refitOf(index, (at) => joinsOf(index, at)).reachesIn(phase);
};

/** The source plan of a boat by the joins of her file, her lines left out. */
export const sourcesOn = (boat: Boat, phase = 1): Pick<PlanDraft, 'sources' | 'numbers' | 'settings' | 'pairs'> =>
  planSources({ reaches: reachesOn(boat, phase), joins: joinsOf(indexBoat(boat), phase), lines: [], shields: [] });
