import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { Plug, Port } from '../boat/sheet.ts';
import { nmea0183 } from '../facts/nmea0183.ts';
import type { StandingJoin, WireEntry } from '../plan-shape.ts';

type Role = WireEntry['from']['role'];
type Kind = 'pair' | 'single';

/** Which wire of a talker goes to which of a listener; nothing where it stays open (source: practice-0183-pairs). */
const ways: Readonly<Record<Kind, Readonly<Record<Kind, readonly (readonly [Role, Role | undefined])[]>>>> = {
  pair: {
    pair: [
      ['A', 'A'],
      ['B', 'B'],
    ],
    single: [
      ['A', 'signal'],
      // tied to ground it drives current at every bit and joins two grounds
      ['B', undefined],
      ['common', 'common'],
    ],
  },
  single: {
    pair: [
      ['signal', 'A'],
      ['common', 'B'],
    ],
    single: [
      ['signal', 'signal'],
      ['common', 'common'],
    ],
  },
};

/** At this speed the grounds of a pair are joined as well (source: practice-0183-pairs). */
const isFast = ({ baud }: Port): boolean => (baud ?? nmea0183.baud.value) >= nmea0183.fastBaud.value;

interface End {
  readonly kit: string;
  readonly port: Port;
  readonly plug: Plug | undefined;
}

const endOf = (index: BoatIndex, { kit, port: id }: StandingJoin['members'][number]): End | undefined => {
  const sheet = index.sheetOf.get(kit);
  const port = sheet?.ports.find((entry) => entry.id === id);
  return port === undefined ? undefined : { kit, port, plug: sheet?.plugs.find(({ id: own }) => own === port.onPlug) };
};

/** How the wires of a port are named: as a pair or as one wire and its return; RS-232 and a maker’s own wire are one wire. */
const kindOf = ({ port: { protocol, line } }: End): Kind | undefined => {
  if (protocol === 'single-wire') return 'single';
  if (line === undefined) return undefined;
  return line === 'differential' || line === 'rs485' ? 'pair' : 'single';
};

const isSerial = ({ port: { line } }: End): boolean => line === 'rs232';

const wireAt = ({ kit, port, plug }: End, role: Role): WireEntry['from'] => {
  const found = plug?.conductors?.find((one) => one.role === role && one.ports.includes(port.id));
  return {
    end: `${kit}.${plug?.id ?? port.id}`,
    port: port.id,
    role,
    ...(found === undefined ? {} : { label: found.label, colour: found.colour }),
  };
};

const wiresBetween = (talker: End, listener: End): WireEntry[] => {
  const [from, to] = [kindOf(talker), kindOf(listener)];
  if (from === undefined || to === undefined || isSerial(talker) !== isSerial(listener)) return [];
  const grounds = from === 'pair' && to === 'pair' && isFast(talker.port);
  const rows: (readonly [Role, Role | undefined])[] = [
    ...ways[from][to],
    ...(grounds ? [['common', 'common'] as const] : []),
  ];
  return rows.map(([role, other]) => ({
    from: wireAt(talker, role),
    ...(other === undefined ? {} : { to: wireAt(listener, other) }),
  }));
};

/**
 * How the wires of a line of NMEA 0183 or of a maker’s own wire are joined, from each talker to its listener, by the
 * labels and colours both makers give them; a wire without `to` is left open and insulated. Empty where a sheet does not
 * say what kind of line a port has, or the two cannot be joined bare.
 * `joins`: those that run on the line. `ends`: its two plugs.
 */
export const lineWires = (
  index: BoatIndex,
  joins: readonly StandingJoin[],
  ends: readonly [string, string],
): WireEntry[] =>
  joins.flatMap(({ members }) => {
    const talker = members.find(({ as }) => as === 'talk');
    const from = talker === undefined ? undefined : endOf(index, talker);
    if (from === undefined) return [];
    return members
      .filter(({ as }) => as === 'listen')
      .sort((a, b) => byCodeUnit(a.kit, b.kit) || byCodeUnit(a.port, b.port))
      .flatMap((listener) => {
        const to = endOf(index, listener);
        const isHere = to !== undefined && [from, to].every(({ kit, plug }) => ends.includes(`${kit}.${plug?.id}`));
        return isHere ? wiresBetween(from, to) : [];
      });
  });
