import type { Sends } from '../../boat/sheet.ts';
import { readingsOfPgn } from '../../facts/message-readings.ts';
import type { ReadingId } from '../../facts/reading-ids.ts';
import { readingsSeen } from '../decode/message-part.ts';
import type { SentMessage, SentPart } from './survey-report.ts';

/** Messages that keep a bus going and carry no reading: answers, requests, claims, lists (source: pgn-database). */
const protocolNumbers: ReadonlySet<number> = new Set([
  59_392, 59_904, 60_160, 60_416, 60_928, 65_240, 126_208, 126_464, 126_996, 126_998,
]);

/** With fewer messages than this a measured interval says little, and the usual one stands. */
const fewestForPace = 4;
/** Largest data instance a boat file takes; of rudders already 252 stands for none. */
const largestInstance = 252;
const rudder = 127_245;
/** Largest message number a boat file takes; above it the reserved bit of the identifier is set. */
const largestPgn = 131_071;
const dayMs = 86_400_000;

interface Paced {
  readonly messages: number;
  readonly medianMs?: number;
  readonly meanMs?: number;
}

/**
 * How often a message comes, in whole ms: its median interval, but the mean where messages come in bunches, because
 * then the median is the gap inside a bunch and would overstate the load. Undefined where it was not measured.
 */
export const paceMs = ({ messages, medianMs, meanMs }: Paced): number | undefined => {
  if (messages < fewestForPace || medianMs === undefined || meanMs === undefined || meanMs <= 0) return undefined;
  const steady = medianMs >= meanMs / 2 && medianMs <= meanMs * 2;
  return Math.min(dayMs, Math.max(1, Math.round(steady ? medianMs : meanMs)));
};

const hasData = (part: SentPart): boolean => part.empty < part.messages;

/** Whether a message came from this sender without data, always. */
export const isAlwaysEmpty = (sent: SentMessage): boolean => !sent.parts.some(hasData);

/** Whether a message is one of those that keep a bus going. */
export const isProtocol = (pgn: number): boolean => protocolNumbers.has(pgn);

/** The data instance of a part as a boat file takes it; undefined where the number stands for none. */
export const instanceOf = (pgn: number, { instance }: { readonly instance?: number }): number | undefined => {
  const largest = pgn === rudder ? largestInstance - 1 : largestInstance;
  return instance === undefined || instance > largest ? undefined : instance;
};

const withPace = <Form extends object>(form: Form, everyMs: number | undefined): Form & { everyMs?: number } =>
  everyMs === undefined ? form : { ...form, everyMs };

/** Interval of all kinds of one instance together: their frequencies add. */
const paceOfAll = (parts: readonly SentPart[]): number | undefined => {
  const paces = parts.map(paceMs);
  const perMs = paces.reduce<number>((sum, pace) => sum + (pace === undefined ? 0 : 1 / pace), 0);
  return perMs === 0 || paces.includes(undefined) ? undefined : Math.max(1, Math.round(1 / perMs));
};

const grouped = <Key, Entry>(entries: readonly Entry[], keyOf: (entry: Entry) => Key): Map<Key, Entry[]> => {
  const groups = new Map<Key, Entry[]>();
  for (const entry of entries) groups.set(keyOf(entry), [...(groups.get(keyOf(entry)) ?? []), entry]);
  return groups;
};

const withInstance = <Form extends object>(form: Form, instance: number | undefined): Form & { instance?: number } =>
  instance === undefined ? form : { ...form, instance };

/** The bare readings that tell which of its kinds a message carries, where these are not the usual ones. */
const saidBeside = (pgn: number, parts: readonly SentPart[]): Sends[] => {
  const choices = readingsOfPgn(pgn).filter(({ oneOf }) => oneOf === true);
  if (choices.length === 0) return [];
  const usual = choices.filter(({ ifSaid }) => ifSaid !== true).map(({ reading }) => reading);
  const seen = new Set<ReadingId>(parts.flatMap(({ kind }) => readingsSeen({ pgn, kind })));
  if (seen.size === usual.length && usual.every((reading) => seen.has(reading))) return [];
  const found = parts.flatMap((part) =>
    readingsSeen({ pgn, kind: part.kind }).map((reading) => ({ reading, instance: instanceOf(pgn, part), part })),
  );
  const groups = grouped(found, ({ reading, instance }) => `${reading} ${instance ?? ''}`);
  return [...groups.values()].flatMap((group) => {
    const [first] = group;
    if (first === undefined) return [];
    return [
      withPace(withInstance({ reading: first.reading }, first.instance), paceOfAll(group.map(({ part }) => part))),
    ];
  });
};

/** Whether a message carries only kinds no reading stands for, such as the temperature of an engine room. */
const isOnlyOtherKinds = (pgn: number, parts: readonly SentPart[]): boolean =>
  readingsOfPgn(pgn).length > 0 && parts.every(({ kind }) => readingsSeen({ pgn, kind }).length === 0);

/** What a sheet says a unit sends, from one message as recorded: each instance at its own interval. */
export const draftSends = (sent: SentMessage): Sends[] => {
  const { pgn } = sent;
  const parts = sent.parts.filter(hasData);
  if (isProtocol(pgn) || pgn > largestPgn || parts.length === 0 || isOnlyOtherKinds(pgn, parts)) return [];
  const groups = grouped(parts, (part) => instanceOf(pgn, part));
  const entries = [...groups].map(([instance, group]): Sends => {
    const pace = groups.size === 1 && parts.length === sent.parts.length ? paceMs(sent) : paceOfAll(group);
    return withPace(withInstance({ pgn }, instance), pace);
  });
  return [...entries, ...saidBeside(pgn, parts)];
};
