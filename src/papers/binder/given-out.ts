import { revisionThatStands, standingOf } from '../../core/as-fitted/standing.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Revision } from '../../core/boat/revision.ts';
import type { Standing } from './binder-shape.ts';

/** What every sheet of a set of papers says of itself. */
export interface GivenOut {
  readonly standing: Standing;
  /** mark of the revision; absent where the boat has changed since the last, or none was given out */
  readonly revision?: string;
  readonly dateIso?: string;
}

/** What the papers of a revision said of themselves on the day it was given out. */
export const givenOutThen = ({ mark, on, standing }: Pick<Revision, 'mark' | 'on' | 'standing'>): GivenOut => ({
  standing: `as ${standing}`,
  revision: mark,
  dateIso: on,
});

/** What the papers of a boat as she stands say of themselves: what the revision said that she still is, else the day that is told. */
export const givenOutNow = (boat: Boat, dateIso?: string): GivenOut => {
  const last = revisionThatStands(boat);
  if (last !== undefined) return givenOutThen(last);
  return { standing: `as ${standingOf(boat)}`, ...(dateIso === undefined ? {} : { dateIso }) };
};
