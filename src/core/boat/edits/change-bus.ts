import * as z from 'zod';
import { dottedIdSchema, idSchema, splitDotted } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { joinBus } from './join-bus.ts';

/** Takes a port of a unit off the bus it is on and puts it on another. */
export const changeBus = defineEdit({
  id: 'change-bus',
  params: z.strictObject({ port: dottedIdSchema, bus: idSchema }),
  title: ({ port, bus }) => `Move ${port} to ${bus}.`,
  change: (boat, { port: dotted, bus }) => {
    const { kit, part: port } = splitDotted(dotted);
    for (const join of boat.joins) {
      if (join.hold !== 'fixed' || join.bus === undefined) continue;
      join.members = join.members.filter((member) => member.kit !== kit || member.port !== port);
    }
    joinBus.ready({ port: dotted, bus }).change(boat);
  },
});
