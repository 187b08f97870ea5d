import type { Boat } from '../boat/boat-schema.ts';
import { unpackText } from '../boat/packed-text.ts';
import { readBoat } from '../boat/read-boat.ts';
import type { Revision } from '../boat/revision.ts';
import { UserError } from '../boat/user-error.ts';

/** As much as a boat file may be. */
const mostBytes = 16 * 1024 * 1024;

/**
 * The boat as she stood when a revision was given out, in the shape boat files have now. `upTo`: the revisions given out by
 * then, itself the last, of which her papers told; without them she has none.
 *
 * @throws UserError where what is kept of her cannot be read
 */
export const boatOfRevision = (
  { mark, boat }: Pick<Revision, 'mark' | 'boat'>,
  upTo: readonly Revision[] = [],
): Boat => {
  const text = unpackText(boat, mostBytes);
  if (text === undefined) {
    throw new UserError({
      says: `The boat kept with revision ${mark} cannot be unpacked.`,
      place: `revisions, ${mark}`,
      whatToDo: 'Take that revision from a copy of the file in which it is whole.',
    });
  }
  const then = readBoat(text);
  return upTo.length === 0 ? then : { ...then, revisions: [...upTo] };
};
