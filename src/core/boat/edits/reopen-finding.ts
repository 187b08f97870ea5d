import { acceptedSchema } from '../boat-schema.ts';
import { UserError } from '../user-error.ts';
import { defineEdit } from './define-edit.ts';

/** Takes back that a finding was accepted. */
export const reopenFinding = defineEdit({
  id: 'reopen-finding',
  params: acceptedSchema.pick({ finding: true }),
  title: ({ finding }) => `No longer accept "${finding}".`,
  change: (boat, { finding }) => {
    const left = boat.accepted?.filter((entry) => entry.finding !== finding) ?? [];
    if (left.length === (boat.accepted?.length ?? 0)) {
      throw new UserError({
        says: `The finding "${finding}" has not been accepted.`,
        whatToDo: 'Choose one of the accepted findings.',
      });
    }
    if (left.length === 0) delete boat.accepted;
    else boat.accepted = left;
  },
});
