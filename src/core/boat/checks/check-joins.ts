import { type BoatIndex, portOf } from '../boat-index.ts';
import type { BoatProblem } from '../boat-problem.ts';
import type { Join } from '../boat-schema.ts';
import type { FilePath } from '../place-in-file.ts';
import { type Known, linkTo, linkToPort } from './check-links.ts';

type Member = Join['members'][number];

interface Rule {
  readonly holds: (members: readonly Member[]) => boolean;
  readonly inWords: string;
}

const count = (members: readonly Member[], as: Member['as']): number =>
  members.filter((member) => member.as === as).length;

const anyNumberBoth: Rule = {
  holds: (members) => count(members, 'both') === members.length,
  inWords: 'any number of units, each as both',
};
const oneTalksManyListen: Rule = {
  holds: (members) => count(members, 'talk') === 1 && count(members, 'listen') >= 1 && count(members, 'both') === 0,
  inWords: 'one unit as talk and one or more as listen',
};
const oneTalksOneListens: Rule = {
  holds: (members) => members.length === 2 && count(members, 'talk') === 1 && count(members, 'listen') === 1,
  inWords: 'one unit as talk and one as listen',
};
const twoBoth: Rule = {
  holds: (members) => members.length === 2 && count(members, 'both') === 2,
  inWords: 'exactly two units, each as both',
};

const ruleOf: Readonly<Record<Join['kind'], Rule>> = {
  nmea2000: anyNumberBoth,
  nmea0183: oneTalksManyListen,
  'single-wire': oneTalksManyListen,
  modbus: oneTalksManyListen,
  ethernet: twoBoth,
  usb: twoBoth,
  analog: oneTalksOneListens,
  coax: oneTalksOneListens,
  video: oneTalksOneListens,
  audio: oneTalksOneListens,
  'engine-can': oneTalksOneListens,
  wifi: { holds: () => true, inWords: 'any number of units' },
};

/** Whether some members make a join of that kind. */
export const membersHold = (kind: Join['kind'], members: readonly Member[]): boolean => ruleOf[kind].holds(members);

const checkBus = (join: Join, index: BoatIndex, path: FilePath): BoatProblem[] => {
  if (join.kind === 'nmea2000') {
    if (join.bus !== undefined) return linkTo(index.buses, { id: join.bus, what: 'bus', path: [...path, 'bus'] });
    const says = `The join "${join.id}" does not say which bus its units are on.`;
    return [{ path, says, whatToDo: 'Add bus with the id of one of the buses.' }];
  }
  if (join.bus === undefined) return [];
  const says = `Only an nmea2000 join is on a bus, and "${join.id}" is ${join.kind}.`;
  return [{ path: [...path, 'bus'], says, whatToDo: 'Take bus out, or mend the kind.' }];
};

const cannot = (member: Member, role: 'talk' | 'listen' | 'both'): boolean =>
  role !== 'both' && member.as !== 'both' && member.as !== role;

const checkMember = (
  join: Join,
  member: Member,
  { index, path }: { index: BoatIndex; path: FilePath },
): BoatProblem[] => {
  const missing = linkToPort(index, { kit: member.kit, port: member.port, path });
  const dotted = `${member.kit}.${member.port}`;
  const port = portOf(index, dotted);
  if (port === undefined) return missing;
  if (port.protocol !== join.kind) {
    const says = `The join "${join.id}" is ${join.kind}, and the port "${dotted}" is ${port.protocol}.`;
    return [{ path, says, whatToDo: 'Name a port of the same kind, or put a converter between.' }];
  }
  if (!cannot(member, port.role)) return [];
  const says = `The port "${dotted}" can only ${port.role}, and the join "${join.id}" has it ${member.as}.`;
  return [{ path: [...path, 'as'], says, whatToDo: `Write ${port.role}, or name another port of the unit.` }];
};

const twice = (join: Join, path: FilePath): BoatProblem[] => {
  const seen = new Set<string>();
  return join.members.flatMap((member, at) => {
    const dotted = `${member.kit}.${member.port}`;
    if (!seen.has(dotted)) {
      seen.add(dotted);
      return [];
    }
    const says = `The port "${dotted}" is in the join "${join.id}" twice.`;
    return [{ path: [...path, 'members', at], says, whatToDo: 'Take one of the two out.' }];
  });
};

const checkJoin = (join: Join, index: BoatIndex, path: FilePath): BoatProblem[] => {
  const rule = ruleOf[join.kind];
  const members = [...path, 'members'];
  return [
    ...checkBus(join, index, path),
    ...join.members.flatMap((member, at) => checkMember(join, member, { index, path: [...members, at] })),
    ...twice(join, path),
    ...(membersHold(join.kind, join.members)
      ? []
      : [
          {
            path: members,
            says: `A join of kind ${join.kind} has ${rule.inWords}; "${join.id}" does not.`,
            whatToDo: 'Mend the members, or make several joins of it.',
          },
        ]),
  ];
};

/** Joins whose ports are missing, of another protocol or the wrong way round, or whose members do not make that kind of join. */
export const checkJoins = ({ index }: Known): BoatProblem[] =>
  index.boat.joins.flatMap((join, at) => checkJoin(join, index, ['joins', at]));
