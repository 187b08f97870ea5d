import type { Boat } from '../boat/boat-schema.ts';
import { packText } from '../boat/packed-text.ts';
import type { Revision } from '../boat/revision.ts';
import { writeBoat } from '../boat/write-boat.ts';

/** How a boat stands in her papers: as fitted once a difference was found, or papers were given out so. */
export const standingOf = ({
  fitted = [],
  revisions = [],
}: Pick<Boat, 'fitted' | 'revisions'>): Revision['standing'] =>
  fitted.length > 0 || revisions.at(-1)?.standing === 'fitted' ? 'fitted' : 'planned';

/** The revision last given out, where nothing of the boat has changed since; her papers bear its mark. */
export const revisionThatStands = ({ revisions = [], ...boat }: Boat): Revision | undefined => {
  const last = revisions.at(-1);
  return last !== undefined && last.boat === packText(writeBoat(boat)) ? last : undefined;
};
