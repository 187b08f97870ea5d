import * as z from 'zod';
import { isSameProof, provedSchema } from '../proved.ts';
import { sortedBy } from '../sorted-by.ts';
import { defineEdit } from './define-edit.ts';

/** Notes which readings a recording proved, each where it leaves its source; an older note of the same gives way. */
export const noteProved = defineEdit({
  id: 'note-proved',
  params: z.strictObject({ proved: z.array(provedSchema).min(1).max(1000) }),
  title: ({ proved }) => `Note as proved: ${proved.length} ${proved.length === 1 ? 'reading' : 'readings'}.`,
  change: (boat, { proved }) => {
    const before = (boat.proof?.proved ?? []).filter((old) => !proved.some((entry) => isSameProof(entry, old)));
    const once = proved.filter((entry, at) => proved.findIndex((other) => isSameProof(other, entry)) === at);
    boat.proof = {
      proved: sortedBy([...before, ...once], ({ reading, instance, from }) => [reading, instance, from]),
    };
  },
});
