import { acceptedSchema } from '../boat-schema.ts';
import { defineEdit } from './define-edit.ts';

/** Accepts a finding with a reason; a finding accepted before gets the new reason. */
export const acceptFinding = defineEdit({
  id: 'accept-finding',
  params: acceptedSchema,
  title: ({ finding, reason }) => `Accept "${finding}": ${reason}`,
  change: (boat, { finding, reason }) => {
    boat.accepted ??= [];
    const before = boat.accepted.find((entry) => entry.finding === finding);
    if (before === undefined) boat.accepted.push({ finding, reason });
    else before.reason = reason;
  },
});
