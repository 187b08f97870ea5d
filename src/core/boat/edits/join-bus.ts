import * as z from 'zod';
import { freeId } from '../every-id.ts';
import { dottedIdSchema, idSchema, splitDotted } from '../ids.ts';
import { defineEdit } from './define-edit.ts';

/** Puts a port of a unit on a backbone. */
export const joinBus = defineEdit({
  id: 'join-bus',
  params: z.strictObject({ port: dottedIdSchema, bus: idSchema }),
  title: ({ port, bus }) => `Put ${port} on ${bus}.`,
  change: (boat, { port: dotted, bus }) => {
    const { kit, part: port } = splitDotted(dotted);
    const member = { kit, port, as: 'both' as const };
    const joined = boat.joins.find((join) => join.hold === 'fixed' && join.bus === bus);
    if (joined === undefined) {
      boat.joins.push({ id: freeId(boat, `${bus}-join`), kind: 'nmea2000', bus, members: [member], hold: 'fixed' });
    } else joined.members.push(member);
  },
});
