import * as z from 'zod';
import { packText } from '../packed-text.ts';
import { revisionSchema } from '../revision.ts';
import { UserError } from '../user-error.ts';
import { writeBoat } from '../write-boat.ts';
import { defineEdit } from './define-edit.ts';

const { boat: _, ...given } = revisionSchema.shape;

/** Gives out a revision: keeps the boat as she stands under a mark, so that the same papers can be made again. */
export const issueRevision = defineEdit({
  id: 'issue-revision',
  params: z.strictObject(given),
  title: ({ mark, standing }) => `Give out revision ${mark}, as ${standing}.`,
  change: (boat, revision) => {
    const before = boat.revisions ?? [];
    if (before.some(({ mark }) => mark === revision.mark)) {
      throw new UserError({
        says: `Revision ${revision.mark} was given out already.`,
        whatToDo: 'Give it the next mark: a mark stands for one set of papers only.',
      });
    }
    const { revisions: __, ...now } = boat;
    boat.revisions = [...before, { ...revision, boat: packText(writeBoat(now)) }];
  },
});
