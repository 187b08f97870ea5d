import { byCodeUnit } from '../../boat/ids.ts';
import { readingsOf } from '../../facts/message-readings.ts';
import type { ReadingId } from '../../facts/reading-ids.ts';
import type { ReadingEntry } from '../../plan-shape.ts';
import { readingsSeen } from '../decode/message-part.ts';
import { valueWords } from '../decode/told-values.ts';
import { instanceOf } from '../survey/draft-sends.ts';
import type { SentPart } from '../survey/survey-report.ts';
import { sendersOf } from './find-messages.ts';
import { unitOfPort } from './planned-sends.ts';
import type { ProofMessage, ProofReading } from './proof-report.ts';
import type { Seen, SeenBus } from './seen.ts';

type Watchable = Pick<Seen, 'planned' | 'buses' | 'lines' | 'messages'>;

/** One place on a reading’s way where it can be heard. */
interface Hop {
  readonly port: string;
  readonly on: string;
  readonly message: number | string;
}

/** The bus a port is on, or the port itself where it is the talker of a line. */
const wireOf = ({ planned }: Watchable, port: string, message: number | string): string | undefined => {
  if (typeof message === 'string') return planned.plan.traffic.lines.find(({ talker }) => talker === port)?.talker;
  return planned.plan.joins.find(
    ({ bus, members }) => bus !== undefined && members.some((one) => `${one.kit}.${one.port}` === port),
  )?.bus;
};

/** Where on its way a reading leaves one unit for another on a wire that can be watched. */
const hopsOf = (seen: Watchable, { by, forms = [] }: ReadingEntry): Hop[] =>
  by.flatMap((port, at) => {
    const next = by[at + 1];
    const message = forms[at]?.pgn ?? forms[at]?.sentence;
    if (next === undefined || message === undefined || unitOfPort(next) === unitOfPort(port)) return [];
    const on = wireOf(seen, port, message);
    return on === undefined ? [] : [{ port, on, message }];
  });

const isWatched = ({ buses, lines }: Watchable, { on }: Hop): boolean =>
  [...buses, ...lines].some(({ id }) => id === on);

const carries = (message: number | string, reading: ReadingId): boolean =>
  readingsOf(typeof message === 'number' ? { pgn: message } : { sentence: message }).some(
    (one) => one.reading === reading,
  );

/** The parts of a message of a unit that give a reading, with data, under its number. */
const partsGiving = (bus: SeenBus, unit: string, pgn: number, entry: ReadingEntry): SentPart[] =>
  sendersOf(bus, unit)
    .flatMap(({ sends }) => sends.filter((sent) => sent.pgn === pgn))
    .flatMap(({ parts }) => parts)
    .filter((part) => part.empty < part.messages && readingsSeen({ pgn, kind: part.kind }).includes(entry.reading))
    .filter((part) => {
      const instance = instanceOf(pgn, part);
      return entry.instance === undefined || instance === undefined || instance === entry.instance;
    });

const isHeardState = ({ state }: ProofMessage): boolean =>
  state === 'right' || state === 'too-seldom' || state === 'too-often';

const stateAt = (seen: Watchable, hop: Hop, entry: ReadingEntry): Pick<ProofReading, 'state' | 'says' | 'message'> => {
  const own = seen.messages.filter(
    (one) => one.port === hop.port && one.on === hop.on && carries(one.message, entry.reading),
  );
  const bus = seen.buses.find(({ id }) => id === hop.on);
  for (const { message } of [...own].sort(
    (a, b) => Number(b.message === hop.message) - Number(a.message === hop.message),
  )) {
    const came = own.find((one) => one.message === message && one.count > one.empty);
    if (came === undefined) continue;
    if (typeof message === 'string' || bus === undefined) return { state: 'heard', message };
    const part = partsGiving(bus, unitOfPort(hop.port), message, entry)[0];
    if (part === undefined) continue;
    const says = part.last === undefined ? undefined : valueWords(message, part.last);
    return { state: 'heard', message, ...(says === undefined ? {} : { says }) };
  }
  const due = own.some((one) => one.state === 'silent' || one.state === 'empty' || isHeardState(one));
  return { state: due ? 'silent' : 'not-due', message: hop.message };
};

const readingOf = (seen: Watchable, entry: ReadingEntry): ProofReading[] => {
  const hops = hopsOf(seen, entry);
  const hop = hops.find((one) => isWatched(seen, one)) ?? hops[0];
  const from = hop?.port ?? entry.by[0];
  if (!entry.arrives || from === undefined) return [];
  const named = {
    reading: entry.reading,
    ...(entry.instance === undefined ? {} : { instance: entry.instance }),
    from,
    at: [entry.at],
    must: entry.must,
  };
  if (hop === undefined) return [{ ...named, state: 'not-watched' }];
  const where = { ...named, on: hop.on };
  return [isWatched(seen, hop) ? { ...where, ...stateAt(seen, hop, entry) } : { ...where, state: 'not-watched' }];
};

const keyOf = ({ reading, instance, from }: ProofReading): string => `${reading} ${instance ?? ''} ${from}`;

/** Whether each reading the plan brings to a screen was heard where it leaves its source; of one source once for all screens. */
export const readingsHeard = (seen: Watchable): ProofReading[] => {
  const found = new Map<string, ProofReading>();
  for (const one of seen.planned.plan.readings.flatMap((entry) => readingOf(seen, entry))) {
    const before = found.get(keyOf(one));
    if (before === undefined) found.set(keyOf(one), one);
    else
      found.set(keyOf(one), {
        ...before,
        at: [...before.at, ...one.at].sort(byCodeUnit),
        must: before.must || one.must,
      });
  }
  return [...found.values()];
};
