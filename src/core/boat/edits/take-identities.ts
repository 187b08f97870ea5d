import * as z from 'zod';
import { kitSchema } from '../boat-schema.ts';
import { idSchema } from '../ids.ts';
import { changeSchema } from '../sheet.ts';
import { UserError } from '../user-error.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';

const takenSchema = z.strictObject({
  unit: idSchema,
  /** the NAME it was heard under */
  identity: z.exactOptional(kitSchema.shape.identity.unwrap()),
  /** what it was heard to send otherwise than its sheet has it */
  changes: z.exactOptional(z.array(changeSchema)),
});

/** Takes over from a recording who each unit is, and what it sends otherwise; whatever the boat file says already stands. */
export const takeIdentities = defineEdit({
  id: 'take-identities',
  params: z.strictObject({ units: z.array(takenSchema).min(1).max(1000) }),
  title: ({ units }) => `Take over from a recording: ${units.length} ${units.length === 1 ? 'unit' : 'units'}.`,
  change: (boat, { units }) => {
    for (const { unit: id, identity, changes = [] } of units) {
      const unit = findInBoat(boat.kit, id, 'unit');
      if (identity !== undefined && unit.identity !== undefined && unit.identity !== identity)
        throw new UserError({
          says: `${unit.name} has another NAME in the boat file than was heard.`,
          whatToDo: 'Take the old one out first, where the unit was changed for another.',
        });
      if (identity !== undefined) unit.identity = identity;
      const said = unit.changes ?? [];
      const fresh = changes.filter(({ path }) => !said.some((change) => change.path === path));
      if (fresh.length > 0) unit.changes = [...said, ...fresh];
    }
  },
});
