import type { Kit } from '../../boat/boat-schema.ts';
import type { PhaseFrame } from './job-frame.ts';

/** Kinds that may sit in a hole below the waterline. */
const wetKinds: ReadonlySet<string> = new Set(['depth-sensor', 'speed-sensor', 'transducer']);

/**
 * Units whose housing goes through the hull below the waterline: a hole was measured for it, its housing is spoken of, or it goes
 * from where a hole through the hull was measured.
 */
export const isUnderwater = ({ index }: Pick<PhaseFrame, 'index'>, { id, place, site, fate }: Kit): boolean => {
  if (!wetKinds.has(index.sheetOf.get(id)?.kind ?? '')) return false;
  const hole =
    index.boat.openings?.some(
      (opening) => opening.throughHull === true && (opening.for === id || (fate === 'goes' && opening.place === place)),
    ) === true;
  const isBelow = (index.places.get(place)?.zM ?? 0) < 0;
  return isBelow && (hole || site?.housing !== undefined);
};
