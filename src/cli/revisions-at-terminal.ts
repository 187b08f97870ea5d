import { boatOfRevision } from '../core/as-fitted/boat-of-revision.ts';
import { nextMark } from '../core/as-fitted/next-mark.ts';
import { standingOf } from '../core/as-fitted/standing.ts';
import type { Boat } from '../core/boat/boat-schema.ts';
import type { EditCall } from '../core/boat/history.ts';
import { UserError } from '../core/boat/user-error.ts';
import { type GivenOut, givenOutThen } from '../papers/binder/given-out.ts';

/** Giving out a revision, as it was typed: what it is for, whose, of what day. */
interface Issue {
  readonly says: string;
  readonly by?: string | undefined;
  readonly on: string;
}

/**
 * The edit by which the next revision of a boat is given out.
 *
 * @throws UserError where all marks were given out
 */
export const issueEdit = (boat: Boat, { says, by, on }: Issue): EditCall => {
  const mark = nextMark((boat.revisions ?? []).map((revision) => revision.mark));
  if (mark === undefined)
    throw new UserError({ says: 'All marks have been given out.', whatToDo: 'Start a new boat file.' });
  return {
    edit: 'issue-revision',
    params: { mark, standing: standingOf(boat), on, says, ...(by === undefined ? {} : { by }) },
  };
};

/**
 * The boat of an old revision with what its papers say of themselves.
 *
 * @throws UserError for a mark that was not given out, or a kept boat that cannot be read
 */
export const oldRevision = (
  { revisions = [] }: Pick<Boat, 'revisions'>,
  mark: string,
): { readonly boat: Boat; readonly given: GivenOut } => {
  const revision = revisions.find((entry) => entry.mark === mark);
  if (revision === undefined) {
    const marks = revisions.map((entry) => entry.mark);
    throw new UserError({
      says: `No revision “${mark}” was given out.`,
      whatToDo: marks.length === 0 ? 'Give one out with --issue.' : `Those given out: ${marks.join(', ')}.`,
    });
  }
  const upTo = revisions.slice(0, revisions.indexOf(revision) + 1);
  return { boat: boatOfRevision(revision, upTo), given: givenOutThen(revision) };
};
