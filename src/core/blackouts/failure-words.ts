import type { Failure, FailureKind } from '../blackouts-shape.ts';
import { splitDotted } from '../boat/ids.ts';
import type { Circuit } from '../boat/supply.ts';

interface Named {
  readonly name: string;
}

/** What naming a failure looks up. */
export interface FailureNames {
  readonly kit: ReadonlyMap<string, Named>;
  readonly buses: ReadonlyMap<string, Named>;
  readonly places: ReadonlyMap<string, Named>;
  readonly ways: ReadonlyMap<string, { readonly ends: readonly [string, string] }>;
  readonly panels: ReadonlyMap<string, { readonly circuits: readonly Circuit[] }>;
}

/** Names as owners give them run on after a comma; one that is long is cut there. */
const longest = 32;

/** A name short enough for a row. */
export const shortName = (name: string): string => (name.length > longest ? (name.split(',')[0] ?? name) : name);

const nameIn = (list: ReadonlyMap<string, Named>, id: string): string => shortName(list.get(id)?.name ?? id);

/** What a tee serves: a unit, the feed, a spare socket, or the bare end of the trunk. */
const servedBy = (names: FailureNames, tee: string): string => {
  if (tee === 'feed') return 'the feed';
  const [kind = '', place = ''] = tee.split('@');
  const at = nameIn(names.places, place.replace(/#\d+$/, ''));
  if (kind === 'spare') return `the spare socket at ${at}`;
  return kind === 'end' ? `the end at ${at}` : nameIn(names.kit, splitDotted(tee).kit);
};

const endOf = (names: FailureNames, end: string): string => {
  const slash = end.indexOf('/');
  if (slash > 0) return servedBy(names, end.slice(slash + 1));
  if (names.panels.has(end)) return `panel ${end}`;
  return end.includes('.') ? nameIn(names.kit, splitDotted(end).kit) : nameIn(names.buses, end);
};

/** The other end of a drop or a feed, which starts at a bus or a panel. */
const farEnd = (names: FailureNames, ends: readonly string[], isNear: (id: string) => boolean): string =>
  endOf(names, ends.find((end) => !isNear(end)) ?? ends[0] ?? '');

const lineKinds: Readonly<Record<string, string>> = {
  ethernet: 'Network cable',
  pair: 'Pair',
  'single-wire': 'Wire',
  analog: 'Sensor lead',
  'engine-can': 'Engine cable',
  modbus: 'Modbus cable',
  coax: 'Coax',
  video: 'Video cable',
  audio: 'Audio cable',
  usb: 'USB cable',
};

const cutWords = (names: FailureNames, line: string): string => {
  const colon = line.indexOf(':');
  const kind = line.slice(0, colon);
  const ends = line
    .slice(colon + 1)
    .replace(/(~[^~]*\.[^~]*|~[^~./]*)#\d+$/, '$1')
    .split('~');
  if (kind === 'trunk')
    return `Trunk cut between ${ends.map((end) => endOf(names, end.replace(/#\d+$/, ''))).join(' and ')}`;
  if (kind === 'drop') return `Drop to ${farEnd(names, ends, (end) => names.buses.has(end))} off`;
  if (kind === 'feed') return `Feed of ${farEnd(names, ends, (end) => names.panels.has(end))} cut`;
  return `${lineKinds[kind] ?? 'Cable'} from ${ends.map((end) => endOf(names, end)).join(' to ')} cut`;
};

const isBreaker: ReadonlySet<Circuit['kind']> = new Set(['breaker', 'slow-breaker']);

const fuseWords = (names: FailureNames, fails: string): string => {
  const { kit: panel, part } = splitDotted(fails);
  const circuit = names.panels.get(panel)?.circuits.find(({ id }) => id === part);
  const what = circuit !== undefined && isBreaker.has(circuit.kind) ? 'Breaker' : 'Fuse';
  return `${what} ${part} of panel ${panel}`;
};

const onBus = (fails: string): { bus: string; tee: string } => {
  const slash = fails.indexOf('/');
  return { bus: fails.slice(0, slash), tee: fails.slice(slash + 1) };
};

const shortWords = (names: FailureNames, fails: string): string =>
  fails.startsWith('drop:')
    ? `Short in the drop to ${farEnd(names, fails.slice('drop:'.length).split('~'), (end) => names.buses.has(end))}`
    : `Short at ${servedBy(names, onBus(fails).tee)}`;

const words: Readonly<Record<FailureKind, (names: FailureNames, fails: string) => string>> = {
  fuse: fuseWords,
  main: (names, fails) => `Main of ${names.panels.has(fails) ? 'panel' : 'bank'} ${fails}`,
  feeder: (_, fails) => `Feeder of panel ${fails}`,
  panel: (_, fails) => `Panel ${fails}`,
  bank: (_, fails) => `Bank ${fails}`,
  converter: (_, fails) => `DC converter ${fails}`,
  unit: (names, fails) => nameIn(names.kit, fails),
  line: cutWords,
  tee: (names, fails) =>
    `Tee of ${servedBy(names, onBus(fails).tee)} out of the trunk of ${nameIn(names.buses, onBus(fails).bus)}`,
  terminator: (names, fails) => {
    const { bus, tee } = onBus(fails);
    const place = tee.replace(/^end@/, '').replace(/#\d+$/, '');
    return `Terminator of ${nameIn(names.buses, bus)} at ${nameIn(names.places, place)}`;
  },
  short: shortWords,
  way: (names, fails) => {
    const ends = names.ways.get(fails)?.ends.map((place) => nameIn(names.places, place));
    return ends === undefined ? `Way ${fails} cut` : `Everything between ${ends.join(' and ')} cut`;
  },
  mast: (names, fails) => `Mast at ${nameIn(names.places, fails)} down`,
};

/**
 * A failure in words, as a row of a table has it.
 *
 * @example failureWords(index, { fails: 'main.m4', how: 'fuse' }) // 'Fuse m4 of panel main'
 */
export const failureWords = (names: FailureNames, { fails, how }: Failure): string => words[how](names, fails);
