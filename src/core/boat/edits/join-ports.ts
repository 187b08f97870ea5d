import type { Draft } from 'mutative';
import * as z from 'zod';
import { type Join, joinKinds } from '../boat-schema.ts';
import { membersHold } from '../checks/check-joins.ts';
import { freeId } from '../every-id.ts';
import { dottedIdSchema, splitDotted } from '../ids.ts';
import { UserError } from '../user-error.ts';
import { defineEdit } from './define-edit.ts';
import { portOfDraft } from './port-of-draft.ts';

type Member = Join['members'][number];

const twoWay: ReadonlySet<string> = new Set(['ethernet', 'usb', 'wifi']);

const isSame = (a: Member, b: Member): boolean => a.kit === b.kit && a.port === b.port && a.as === b.as;

const memberOf = (dotted: string, as: Member['as']): Member => {
  const { kit, part } = splitDotted(dotted);
  return { kit, port: part, as };
};

/** The standing join that the second port can be added to: one in which the first port talks, of a kind with many members. */
const openJoin = (joins: Draft<Join>[], kind: Join['kind'], [from, to]: readonly [Member, Member]): Join | undefined =>
  joins.find(
    (join) =>
      join.kind === kind &&
      join.hold === 'fixed' &&
      join.members.some((member) => isSame(member, from)) &&
      membersHold(kind, [...join.members, to]),
  );

/** Wires two ports of one kind to each other, the first as the talker where the kind has one; a backbone has `join-bus`. */
export const joinPorts = defineEdit({
  id: 'join-ports',
  params: z.strictObject({ from: dottedIdSchema, to: dottedIdSchema }),
  title: ({ from, to }) => `Join ${from} to ${to}.`,
  change: (boat, { from, to }) => {
    const [a, b] = [portOfDraft(boat, from).protocol, portOfDraft(boat, to).protocol];
    const kind = joinKinds.safeParse(a);
    if (a !== b || !kind.success || kind.data === 'nmea2000')
      throw new UserError({
        says: `${from} is ${a} and ${to} is ${b}; they cannot be wired to each other.`,
        whatToDo: 'Choose two ports of one kind; a backbone is joined by its name.',
      });
    const isTwoWay = twoWay.has(kind.data);
    const talker = memberOf(from, isTwoWay ? 'both' : 'talk');
    const listener = memberOf(to, isTwoWay ? 'both' : 'listen');
    const open = openJoin(boat.joins, kind.data, [talker, listener]);
    if (open !== undefined) open.members.push(listener);
    else {
      const id = freeId(boat, `${talker.kit}-to-${listener.kit}`);
      boat.joins.push({ id, kind: kind.data, members: [talker, listener], hold: 'fixed' });
    }
  },
});
