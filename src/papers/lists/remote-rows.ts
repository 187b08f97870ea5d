import type { BoatIndex } from '../../core/boat/boat-index.ts';
import type { KitRemote } from '../../core/boat/remote.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { RemoteCommand, RemoteEntry } from '../../core/remote-shape.ts';
import { printCount } from './print-figure.ts';

/** One way in, as a list shows it: in one line, and point by point. */
export interface RemoteRow {
  readonly key: string;
  readonly what: string;
  readonly fact: string;
  readonly points: readonly { readonly what: string; readonly fact: string }[];
  /** ids it lights on the drawing */
  readonly lights: readonly string[];
}

type Names = Pick<BoatIndex, 'kit' | 'buses'>;

/** Units that are named one by one; of more, only how many. */
const namedUnits = 4;

const unitName = ({ kit }: Names, port: string): string => {
  const id = port.split('.')[0] ?? port;
  return kit.get(id)?.name ?? id;
};

const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;

const wayName = (names: Names, { kit, by }: RemoteEntry): string => {
  const name = unitName(names, kit);
  if (by === 'phone') return `Carried about: ${name}`;
  return by === 'wifi' ? `Wifi of ${name}` : `Link ashore of ${name}`;
};

const networkWords = (names: Names, { network }: RemoteEntry): string => {
  if (network.length === 0) return 'no other unit by the network';
  return network.length > namedUnits
    ? `${printCount(network.length, 'unit')} by the network`
    : listed(network.map((id) => unitName(names, id)));
};

const gateWords = (names: Names, { gates }: RemoteEntry): string[] =>
  gates.map(({ port, onto, writes }) => {
    const busNames = onto.map((id) => names.buses.get(id)?.name ?? 'a line');
    const how = { 'listen-only': 'listens only', 'may-write': 'may write', unknown: 'not known whether it writes' };
    return `${unitName(names, port)} on ${listed([...new Set(busNames)])}: ${how[writes]}`;
  });

const whatWords = { pilot: 'the pilot', engine: 'the engine', switching: 'switches' } as const;
const knownWords = {
  said: 'can be given orders',
  taken: 'perhaps, nobody has looked',
  perhaps: 'perhaps, by working a screen from afar',
};

const commandWords = (names: Names, { what, at, through, known }: RemoteCommand): string =>
  `${whatWords[what]}, ${unitName(names, at)}, through ${unitName(names, through)}: ${knownWords[known]}`;

const writesWords = {
  'may-write': 'may write',
  unknown: 'not known whether it may write',
  'listen-only': 'listens only',
  nothing: 'nothing to write to in reach',
} as const;

const passwordWords = {
  changed: 'changed from the one it came with',
  default: 'the one it came with: change it',
  none: 'none: set one',
  unknown: 'not known: ask, and change it',
} as const;

const holderWords = {
  'charter-guest': 'charter guests',
  crew: 'the crew',
  fitter: 'the fitter',
  owner: 'the owner',
  skipper: 'the skipper',
  yard: 'the yard',
} as const;

/** How a password stands and who holds it; never the password, which nothing in the boat file has room for. */
const passwordFact = (remote: KitRemote | undefined): string => {
  const { password = 'unknown', heldBy = [] } = remote ?? {};
  const held =
    heldBy.length === 0 ? 'nobody has said who holds it' : `held by ${listed(heldBy.map((role) => holderWords[role]))}`;
  return password === 'none' ? passwordWords.none : `${passwordWords[password]}; ${held}`;
};

const rowOf = (names: Names, entry: RemoteEntry): RemoteRow => {
  const { kit, port = '', guests, commands, gates, network } = entry;
  const orders = commands.map((command) => commandWords(names, command));
  const said = [
    `reaches ${networkWords(names, entry)}`,
    writesWords[entry.writes],
    ...(guests ? ['guests are let on'] : []),
    ...orders,
  ];
  return {
    key: `${kit} ${port}`,
    what: guests ? `${wayName(names, entry)}, for guests` : wayName(names, entry),
    fact: said.filter((words) => words !== 'guests are let on').join('; '),
    points: [
      { what: 'Reaches', fact: networkWords(names, entry) },
      { what: 'Writes', fact: [writesWords[entry.writes], ...gateWords(names, entry)].join('; ') },
      ...orders.map((fact) => ({ what: 'Orders', fact })),
      ...(entry.by === 'phone' ? [] : [{ what: 'Password', fact: passwordFact(names.kit.get(kit)?.remote) }]),
    ],
    lights: [...new Set([kit, ...network, ...gates.map((gate) => gate.port.split('.')[0] ?? gate.port)])],
  };
};

/** Every way in by wifi, from ashore or by a phone, with what it reaches and who holds its password. */
export const remoteRows = (names: Names, { remote }: Pick<Plan, 'remote'>): RemoteRow[] =>
  remote.map((entry) => rowOf(names, entry));

/** What to do when the boat changes hands, or a fitter or a crew has gone; nothing where she has no way in. */
export const handOverSteps = (names: Names, { remote }: Pick<Plan, 'remote'>): string[] => {
  if (remote.length === 0) return [];
  const locked = [...new Set(remote.flatMap(({ by, kit }) => (by === 'phone' ? [] : [unitName(names, kit)])))];
  const carried = [...new Set(remote.flatMap(({ by, kit }) => (by === 'phone' ? [unitName(names, kit)] : [])))];
  const ashore = [
    ...new Set(
      remote.flatMap(({ by, kit }) => (by === 'cellular' || by === 'satellite' ? [unitName(names, kit)] : [])),
    ),
  ];
  return [
    ...(locked.length === 0
      ? []
      : [`Change the password of ${listed(locked)}, the one of its settings too, and write down which roles hold it.`]),
    `Let every unit forget the phones and tablets it knows${carried.length === 0 ? '' : `, and take ${listed(carried)} off the boat’s wifi`}.`,
    ...(ashore.length === 0
      ? []
      : [`Move the account and the card of ${listed(ashore)} to the new owner, and sign everybody else out.`]),
    'Sign out of chart and service accounts on every screen, and take off routes and places that are private.',
    'Look again in the settings of whatever listens only: a reset sets it back to writing. Then try it: no phone may change a course.',
  ];
};
