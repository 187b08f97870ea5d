import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Join } from '../../boat/boat-schema.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import { lastPhase } from '../../boat/phase.ts';
import type { StandingJoin } from '../../plan-shape.ts';
import { portNetworkOf } from '../../readings/port-network.ts';
import type { CandidateJoin } from './candidate-joins.ts';
import { freeAlike, joinedPorts } from './sockets.ts';

type Member = Join['members'][number];

const nameOf = ({ kit, port }: Member): string => `${kit}.${port}`;
const byName = (a: Member, b: Member): number => byCodeUnit(nameOf(a), nameOf(b));

/** Kind and sorted members; no join of a file can be named so. */
const idOf = (kind: Join['kind'], members: readonly Member[]): string =>
  `${kind}:${members.map(nameOf).sort(byCodeUnit).join('~')}`;

/** Gives each join a socket of its own where one stood for all that are alike, as those of a switch do. */
const socketGiver = (index: BoatIndex, standing: readonly StandingJoin[]): ((member: Member) => Member) => {
  const { nodes } = portNetworkOf(index, lastPhase(index.boat), []);
  const taken = new Set(joinedPorts(standing).taken);
  return (member) => {
    const node = nodes.get(nameOf(member));
    const free = node === undefined ? undefined : freeAlike(node, (id) => taken.has(id))[0];
    if (free === undefined || member.as === 'talk') return member;
    taken.add(free.id);
    return { ...member, port: free.port.id };
  };
};

/** Candidates as joins: all ports of a bus in one, all listeners of a talker in one, each other pair on its own. Sorted by id. */
export const joinsMade = (
  index: BoatIndex,
  standing: readonly StandingJoin[],
  chosen: readonly CandidateJoin[],
): Join[] => {
  const giveSocket = socketGiver(index, standing);
  const groups = new Map<string, { kind: Join['kind']; bus: string | undefined; members: Member[] }>();
  for (const { id, kind, bus, members } of chosen) {
    const talker = members.find(({ as }) => as === 'talk');
    const key = bus ?? (talker === undefined ? id : nameOf(talker));
    const group = groups.get(key) ?? { kind, bus, members: talker === undefined ? [] : [talker] };
    groups.set(key, group);
    const others = members.filter((member) => member !== talker);
    group.members.push(...(kind === 'nmea2000' || kind === 'wifi' ? others : others.map(giveSocket)));
  }
  return [...groups.values()]
    .map(
      ({ kind, bus, members }): Join => ({
        id: idOf(kind, members),
        kind,
        ...(bus === undefined ? {} : { bus }),
        members: [...members].sort(byName),
        hold: 'fixed',
      }),
    )
    .sort((a, b) => byCodeUnit(a.id, b.id));
};
