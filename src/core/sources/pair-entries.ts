import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { Plug, Port } from '../boat/sheet.ts';
import { nmea0183 } from '../facts/nmea0183.ts';
import type { ShieldEntry } from '../isolation-shape.ts';
import type { LineEntry, StandingJoin, WireEntry } from '../plan-shape.ts';
import type { PairEntry, PairWire } from '../sources-shape.ts';

type Member = StandingJoin['members'][number];

interface End {
  readonly id: string;
  readonly kit: string;
  readonly port: Port;
  readonly plug: Plug;
}

const endOf = (index: BoatIndex, { kit, port: id }: Member): End | undefined => {
  const sheet = index.sheetOf.get(kit);
  const port = sheet?.ports.find((entry) => entry.id === id);
  const plug = sheet?.plugs.find((entry) => entry.id === port?.onPlug);
  return port === undefined || plug === undefined ? undefined : { id: `${kit}.${id}`, kit, port, plug };
};

const plugId = ({ kit, plug }: End): string => `${kit}.${plug.id}`;

const wireOf = ({ role, label, colour }: WireEntry['from']): PairWire => ({
  role,
  ...(label === undefined ? {} : { label }),
  ...(colour === undefined ? {} : { colour }),
});

/** Wires that carry data or nothing; power and shield are told of elsewhere. */
const dataRoles: ReadonlySet<string> = new Set(['A', 'B', 'signal', 'common', 'spare']);

/** What the wires of all lines have taken: a wire is named by its plug, its port and its role. */
const wireKey = (end: string, port: string, role: string): string => `${end} ${port} ${role}`;

const takenIn = (lines: readonly LineEntry[]): ReadonlySet<string> =>
  new Set(
    lines.flatMap(({ wires = [] }) =>
      wires.flatMap(({ from, to }) =>
        [from, ...(to === undefined ? [] : [to])].map(({ end, port, role }) => wireKey(end, port, role)),
      ),
    ),
  );

interface InUse {
  readonly ports: ReadonlySet<string>;
  readonly wires: ReadonlySet<string>;
}

/** Wires of a plug that no line takes: each is left open and insulated. Of a port whose wires the plan does not know none is said. */
const openOf = (end: End, { ports: busy, wires }: InUse): PairEntry['open'] => {
  const plug = plugId(end);
  const isKnown = (port: string): boolean => [...dataRoles].some((role) => wires.has(wireKey(plug, port, role)));
  return (end.plug.conductors ?? [])
    .filter(({ role }) => dataRoles.has(role))
    .filter(({ ports, role }) => !ports.some((port) => wires.has(wireKey(plug, port, role))))
    .filter(({ ports }) => ports.every((port) => !busy.has(`${end.kit}.${port}`) || isKnown(port)))
    .map(({ label, colour, role }) => ({ plug, role, label, colour }));
};

const isHere = (line: LineEntry, talker: End, listener: End): boolean =>
  [talker, listener].every((end) => line.from === plugId(end) || line.to === plugId(end));

const wiresOf = (line: LineEntry | undefined, talker: End, listener: End): PairEntry['wires'] =>
  (line?.wires ?? [])
    .filter(
      ({ from, to }) =>
        from.end === plugId(talker) &&
        from.port === talker.port.id &&
        (to === undefined || (to.end === plugId(listener) && to.port === listener.port.id)),
    )
    .map(({ from, to }) => ({ from: wireOf(from), ...(to === undefined ? {} : { to: wireOf(to) }) }));

/** The wire labels of a pair are told from its talker to one listener; where two listeners hang on one plug a wire left open stands once. */
const withoutDoubles = (wires: PairEntry['wires']): PairEntry['wires'] => [
  ...new Map(wires.map((wire) => [JSON.stringify(wire), wire])).values(),
];

/** Where the shield of a cable is earthed: as the file or a unit has it, else at the talker; with two talkers, the first. */
const shieldOf = (index: BoatIndex, join: string, shields: readonly ShieldEntry[]): string | undefined => {
  const own = shields.find(({ of }) => of.includes(join));
  return own?.earths.map(({ at }) => at).find((at) => index.kit.has(at));
};

interface Asked {
  readonly index: BoatIndex;
  readonly joins: readonly StandingJoin[];
  readonly lines: readonly LineEntry[];
  /** where shields meet earth already */
  readonly shields: readonly ShieldEntry[];
}

type PairJoin = StandingJoin & { readonly kind: PairEntry['kind'] };

const pairsOf = ({ index, lines, shields }: Asked, inUse: InUse, { id, kind, members }: PairJoin): PairEntry[] => {
  const ends = (as: Member['as']): End[] =>
    members.filter((member) => member.as === as).flatMap((member) => endOf(index, member) ?? []);
  return ends('talk').flatMap((talker) =>
    ends('listen').flatMap((listener): PairEntry[] => {
      const line = lines.find((entry) => entry.kind !== 'feed' && isHere(entry, talker, listener));
      if (line === undefined) return [];
      return [
        {
          line: line.id,
          kind,
          talker: { port: talker.id, plug: plugId(talker) },
          listener: { port: listener.id, plug: plugId(listener) },
          ...(kind === 'nmea0183' ? { baud: talker.port.baud ?? nmea0183.baud.value } : {}),
          wires: withoutDoubles(wiresOf(line, talker, listener)),
          open: [talker, listener].flatMap((end) => openOf(end, inUse)),
          shieldAt: shieldOf(index, id, shields) ?? talker.kit,
        },
      ];
    }),
  );
};

/** One cable has one shield: where two talk over it, that of the first is earthed for both. */
const oneShieldALine = (pairs: readonly PairEntry[]): PairEntry[] => {
  const at = new Map<string, string>();
  for (const { line, shieldAt } of pairs) if (!at.has(line)) at.set(line, shieldAt);
  return pairs.map((pair) => ({ ...pair, shieldAt: at.get(pair.line) ?? pair.shieldAt }));
};

/**
 * Every pair and every maker’s own wire, from a talker to each of its listeners: which wire goes to which by the marks of both
 * makers, which wires of the two plugs stay open and insulated, and where the shield is earthed: where the file or a unit earths
 * it already, else at the talker only (source: practice-0183-pairs). Pure; sorted by talker, then listener.
 */
export const pairEntries = (asked: Asked): PairEntry[] => {
  const { joins, lines } = asked;
  const inUse = {
    ports: new Set(joins.flatMap(({ members }) => members.map(({ kit, port }) => `${kit}.${port}`))),
    wires: takenIn(lines),
  };
  const pairs = joins
    .flatMap((join) => (join.kind === 'nmea0183' || join.kind === 'single-wire' ? [{ ...join, kind: join.kind }] : []))
    .flatMap((join) => pairsOf(asked, inUse, join))
    .sort(
      (a, b) =>
        byCodeUnit(a.talker.port, b.talker.port) ||
        byCodeUnit(a.listener.port, b.listener.port) ||
        byCodeUnit(a.line, b.line),
    );
  return oneShieldALine(pairs);
};
