import type { Boat, Cable, LineKind, Way } from '../boat/boat-schema.ts';
import { everyId } from '../boat/every-id.ts';
import type { EditCall } from '../boat/history.ts';

const freeIds = (boat: Boat, name: string, count: number): string[] => {
  const taken = new Set(everyId(boat).map(({ id }) => id));
  const ids: string[] = [];
  for (let at = 1; ids.length < count; at += 1) {
    const id = at === 1 ? name : `${name}-${at}`;
    if (!taken.has(id)) ids.push(id);
  }
  return ids;
};

/**
 * Cables that were found in a way, as the edits that put them into the boat: until more is known each goes from one of its ends to
 * the other, stays, and is untested.
 *
 * @example cablesInWay(boat, way, { kind: 'coax', diameterMm: 6, count: 2 }) // two calls of add-cable
 */
export const cablesInWay = (
  boat: Boat,
  way: Way,
  {
    kind,
    diameterMm,
    count,
    name,
  }: { readonly kind: LineKind; readonly diameterMm: number; readonly count: number; readonly name?: string },
): readonly EditCall[] =>
  freeIds(boat, `found-${kind}`, count).map((id): EditCall => {
    const cable: Cable = {
      id,
      ...(name === undefined ? {} : { name }),
      kind,
      from: { place: way.ends[0] },
      to: { place: way.ends[1] },
      ways: [way.id],
      length: way.length,
      diameterMm,
      condition: 'untested',
      fate: 'stays',
    };
    return { edit: 'add-cable', params: cable };
  });
