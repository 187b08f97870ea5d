import * as z from 'zod';
import { joinSchema } from '../boat-schema.ts';
import { freeId } from '../every-id.ts';
import { defineEdit } from './define-edit.ts';

/** Says that some ports are never to be joined, so that no plan proposes it. */
export const forbidJoin = defineEdit({
  id: 'forbid-join',
  params: z.strictObject(joinSchema.pick({ kind: true, bus: true, members: true }).shape),
  title: ({ members }) => `Never join ${members.map(({ kit, port }) => `${kit}.${port}`).join(' and ')}.`,
  change: (boat, { kind, bus, members }) => {
    const id = freeId(boat, `never-${members.map(({ kit }) => kit).join('-')}`.slice(0, 60));
    boat.joins.push({ id, kind, ...(bus === undefined ? {} : { bus }), members, hold: 'never' });
  },
});
