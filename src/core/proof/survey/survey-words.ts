import { isMakersOwn, pgnInfo } from '../../facts/pgns.ts';
import type { ReadingId } from '../../facts/reading-ids.ts';
import { readingWords } from '../../facts/reading-words.ts';
import { kindWord, type PartKey, readingsSeen } from '../decode/message-part.ts';
import { valueWords } from '../decode/told-values.ts';
import { instanceOf, isAlwaysEmpty, isProtocol, paceMs } from './draft-sends.ts';
import type { SentMessage, SentPart, SurveySender } from './survey-report.ts';

const heartbeat = 126_993;
/** Messages without a reading that are named; of more only the count is told. */
const mostNamed = 4;

/** A reading with its instance in words: `battery 1`. */
export const givenWords = ({ reading, instance }: Omit<GivenReading, 'ms'>): string =>
  instance === undefined ? readingWords[reading] : `${readingWords[reading]} ${instance}`;

/** What one part of a message is about, in words: its readings, else what its kind means, else its name. */
export const partWords = (pgn: number, { kind }: PartKey): string => {
  const readings = readingsSeen({ pgn, kind }).map((reading) => readingWords[reading]);
  if (readings.length > 0) return readings.join(', ');
  return kindWord({ pgn, kind })?.toLowerCase() ?? pgnInfo(pgn)?.name ?? `message ${pgn}`;
};

/** The last value a sender gave of each thing it tells: `battery 1: 12.78 V, -12.5 A`. One thing said twice is told once. */
export const lastWords = ({ sends }: SurveySender): string[] => {
  const told = sends.flatMap(({ pgn, parts }) =>
    parts.flatMap((part) => {
      const value = part.last === undefined ? undefined : valueWords(pgn, part.last);
      if (value === undefined) return [];
      const instance = instanceOf(pgn, part);
      return [`${partWords(pgn, part)}${instance === undefined ? '' : ` ${instance}:`} ${value}`];
    }),
  );
  return [...new Set(told)];
};

/** An interval in words: `every 100 ms`, `every 2.5 s`, number and unit held together by a hard space. */
const everyWords = (ms: number): string => {
  if (ms < 1000) return `every ${ms}\u00a0ms`;
  return `every ${ms < 10_000 ? Number((ms / 1000).toFixed(1)) : Math.round(ms / 1000)}\u00a0s`;
};

interface Told {
  readonly what: string;
  readonly ms: number | undefined;
}

/** One reading of one instance that a sender gives with data. */
export interface GivenReading {
  readonly reading: ReadingId;
  readonly instance: number | undefined;
  readonly ms: number | undefined;
}

const hasData = ({ empty, messages }: SentPart): boolean => empty < messages;

const fasterOf = (a: number | undefined, b: number | undefined): number | undefined =>
  a === undefined || b === undefined ? (a ?? b) : Math.min(a, b);

/** The readings a sender gives with data, each with the faster interval where several messages give it. */
export const readingsGiven = ({ sends }: SurveySender): GivenReading[] => {
  const given = new Map<string, GivenReading>();
  for (const { pgn, parts } of sends) {
    for (const part of parts.filter(hasData)) {
      for (const reading of readingsSeen({ pgn, kind: part.kind })) {
        const instance = instanceOf(pgn, part);
        const key = `${reading} ${instance ?? ''}`;
        given.set(key, { reading, instance, ms: fasterOf(given.get(key)?.ms, paceMs(part)) });
      }
    }
  }
  return [...given.values()];
};

const givesReading = ({ pgn, parts }: SentMessage): boolean =>
  parts.some(({ kind }) => readingsSeen({ pgn, kind }).length > 0);

const toldWords = ({ what, ms }: Told): string => (ms === undefined ? what : `${what} ${everyWords(ms)}`);

const emptyWords = (sends: readonly SentMessage[], given: readonly GivenReading[]): string[] => {
  const readings = sends
    .filter((sent) => isAlwaysEmpty(sent))
    .flatMap(({ pgn, parts }) => parts.flatMap(({ kind }) => readingsSeen({ pgn, kind })));
  const withData = new Set(given.map(({ reading }) => reading));
  return [...new Set(readings)]
    .filter((reading) => !withData.has(reading))
    .map((reading) => `${readingWords[reading]} without data`);
};

const otherWords = (sends: readonly SentMessage[]): string[] => {
  const others = sends.filter((sent) => !givesReading(sent) && !isMakersOwn(sent.pgn));
  const named = others
    .slice(0, mostNamed)
    .map((sent) => toldWords({ what: pgnInfo(sent.pgn)?.name ?? `message ${sent.pgn}`, ms: paceMs(sent) }));
  const more = others.length - named.length;
  return more > 0 ? [...named, `${more} more`] : named;
};

/** What a sender sends, in words, readings first: `heading every 100 ms; rate of turn every 100 ms`. */
export const sendsWords = (sender: SurveySender): string => {
  const sends = sender.sends.filter(({ pgn }) => !isProtocol(pgn) && pgn !== heartbeat);
  const given = readingsGiven(sender);
  const own = sends.filter(({ pgn }) => isMakersOwn(pgn)).length;
  const items = [
    ...given.map((one) => toldWords({ what: givenWords(one), ms: one.ms })),
    ...otherWords(sends),
    ...emptyWords(sends, given),
    ...(own === 0 ? [] : [own === 1 ? "1 maker's own message" : `${own} maker's own messages`]),
  ];
  return items.length === 0 ? 'nothing but what keeps the bus going' : items.join('; ');
};

/** Numbers as a list: `3, 5 and 9`. */
export const listWords = (numbers: readonly number[]): string => {
  if (numbers.length < 2) return numbers.join('');
  return `${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`;
};
