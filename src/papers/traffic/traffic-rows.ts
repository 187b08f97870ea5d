import type { Boat } from '../../core/boat/boat-schema.ts';
import { limitOf } from '../../core/boat/limit-of.ts';
import { limitValue } from '../../core/boat/limit-value.ts';
import type { Waters } from '../../core/facts/waters.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { BusTraffic, LineTraffic, SenderEntry, SentEntry } from '../../core/traffic-shape.ts';
import { everyWords, messageCode, messageName, usualRateMs } from '../cards/form-words.ts';
import { keepUnits, printMs, printPct } from '../lists/print-figure.ts';

/** How often a message comes, and how that is changed for its unit. */
export interface RateRow {
  /** `kit.port`, and the number or letters of the message there */
  readonly port: string;
  readonly message: number | string;
  readonly everyMs: number;
  /** changed for this one unit */
  readonly isChanged: boolean;
  /** whether its unit sends it of itself: what is passed on and what other ships bring is set elsewhere */
  readonly isOwn: boolean;
  /** "every 100 ms, changed for this unit; usually every 1 s" */
  readonly says: string;
}

/** One message of a sender in words. */
export interface MessageRow {
  readonly key: string;
  readonly what: string;
  readonly code: string;
  readonly rate: RateRow;
  readonly load: string;
  /** absent on a 0183 line, where nothing waits for anything */
  readonly wait?: string;
}

/** One port with its share of a bus; `share` is 0 to 1 of the largest. */
export interface SenderRow {
  readonly port: string;
  readonly kit: string;
  readonly name: string;
  readonly share: number;
  readonly load: string;
  readonly isChanged: boolean;
  readonly messages: readonly MessageRow[];
}

/** One bus: how full, what to say of it, its senders from the fullest on. */
export interface BusRows {
  readonly bus: string;
  readonly name: string;
  readonly averagePct: number;
  readonly worstPct: number;
  readonly marksPct: readonly number[];
  readonly isOver: boolean;
  readonly fact: string;
  readonly says: readonly string[];
  readonly senders: readonly SenderRow[];
}

/** One 0183 talker and how full its line is. */
export interface LineRows {
  readonly talker: string;
  readonly kit: string;
  readonly name: string;
  readonly sharePct: number;
  readonly markPct: number;
  readonly isOver: boolean;
  readonly fact: string;
  readonly messages: readonly MessageRow[];
}

export interface TrafficRows {
  readonly waters: Waters;
  readonly buses: readonly BusRows[];
  readonly lines: readonly LineRows[];
}

/** What the waters a boat is planned for are called. */
export const watersWords: Readonly<Record<Waters, string>> = {
  quiet: 'quiet waters',
  coast: 'a coast',
  harbour: 'a busy harbour',
};

type Names = ReadonlyMap<string, string>;

const namesOf = (boat: Boat): Names => new Map(boat.kit.map(({ id, name }) => [id, name]));
const kitOf = (port: string): string => port.split('.')[0] ?? port;
const nameOf = (names: Names, port: string): string => names.get(kitOf(port)) ?? kitOf(port);

/** How often in words: other ships’ reports are counted a second, or a minute where they are few. */
const oftenWords = ({ count, everyMs, rate }: Pick<SentEntry, 'count' | 'everyMs' | 'rate'>): string => {
  if (rate !== 'waters') return count === 1 ? everyWords(everyMs) : `${count} of them ${everyWords(everyMs)}`;
  const perS = (1000 * count) / everyMs;
  return perS >= 1 ? `${perS.toFixed(1)} a second` : `${(60 * perS).toFixed(1)} a minute`;
};

interface Said {
  readonly port: string;
  readonly message: number | string;
  readonly often: string;
  readonly entry: Pick<SentEntry, 'everyMs' | 'rate'>;
  readonly usualMs: number | undefined;
  /** name of the unit it is passed on from */
  readonly from: string | undefined;
}

const rateRow = ({ port, message, often, entry: { everyMs, rate }, usualMs, from }: Said): RateRow => {
  const notes = {
    usual: '',
    sheet: '',
    changed: ', changed for this unit',
    waters: ', of other ships',
    passed: `, passed on from ${from ?? 'another'}`,
  };
  const isOwn = rate !== 'waters' && rate !== 'passed';
  const usually = isOwn && usualMs !== undefined && usualMs !== everyMs ? `; usually ${everyWords(usualMs)}` : '';
  return { port, message, everyMs, isChanged: rate === 'changed', isOwn, says: `${often}${notes[rate]}${usually}` };
};

/** Both ends where they differ: how a sender queues the frames of a long message, no manual states. */
const waitWords = ({ waitMs, waitFedSinglyMs }: SentEntry): string => {
  if (waitMs === undefined) return 'no bound';
  if (waitFedSinglyMs === undefined) return `${printMs(waitMs)} or more`;
  return printMs(waitMs) === printMs(waitFedSinglyMs)
    ? printMs(waitMs)
    : `${waitMs.toFixed(1)} to ${printMs(waitFedSinglyMs)}`;
};

const loadWords = (pct: number): string => keepUnits(pct < 0.005 ? 'under 0.01 %' : `${pct.toFixed(2)} %`);

const busMessage = (names: Names, port: string, entry: SentEntry): MessageRow => {
  const { pgn, from, usualMs } = entry;
  return {
    key: [pgn, from, entry.everyMs, entry.count].join(' '),
    what: messageName({ pgn }) ?? 'a message not in the tables',
    code: messageCode({ pgn }) ?? '',
    rate: rateRow({
      port,
      message: pgn,
      often: oftenWords(entry),
      entry,
      usualMs,
      from: from === undefined ? undefined : nameOf(names, from),
    }),
    load: loadWords(entry.worstPct),
    wait: waitWords(entry),
  };
};

const senderRow = (names: Names, mostPct: number, { port, worstPct, messages }: SenderEntry): SenderRow => ({
  port,
  kit: kitOf(port),
  name: nameOf(names, port),
  share: worstPct / mostPct,
  load: loadWords(worstPct),
  isChanged: messages.some(({ rate }) => rate === 'changed'),
  messages: messages.map((entry) => busMessage(names, port, entry)),
});

const burstWords = ({ bursts, units }: BusTraffic): string[] => {
  const of = (kind: BusTraffic['bursts'][number]['of']) => bursts.find((burst) => burst.of === kind)?.busMs ?? 0;
  if (bursts.length === 0) return [];
  return [
    `Switched on together, its ${units} units take ${printMs(of('claims'))} of bus time to say who they are, up to ${printMs(of('claims-asked'))} where each asks all others; asked what they are, ${printMs(of('product-information'))}. Less urgent messages wait that long.`,
  ];
};

const busRows = (boat: Boat, names: Names, traffic: BusTraffic, waters: Waters): BusRows => {
  const { bus, averagePct, worstPct, shipsPct, senders } = traffic;
  const marks = (['nmea2000-load-note', 'nmea2000-load-warn', 'nmea2000-load-stop'] as const).map((id) =>
    limitOf(boat, id),
  );
  const marksPct = marks.map(({ value }) => value);
  const mostPct = Math.max(...senders.map((sender) => sender.worstPct));
  const ships =
    shipsPct === 0
      ? []
      : [`Reports of other ships take ${loadWords(shipsPct)} of the bus, as in ${watersWords[waters]}.`];
  return {
    bus,
    name: boat.buses.find(({ id }) => id === bus)?.name ?? bus,
    averagePct,
    worstPct,
    marksPct,
    isOver: worstPct > (marksPct[0] ?? 100),
    fact: `${printPct(averagePct)} expected, ${printPct(worstPct)} at the worst`,
    says: [
      ...ships,
      `Marks at ${marksPct.join(', ')} %: note, doubt, fault. They are our choice; no figure of the standard was found.`,
      ...burstWords(traffic),
    ],
    senders: [...senders]
      .sort((one, other) => other.worstPct - one.worstPct)
      .map((sender) => senderRow(names, mostPct, sender)),
  };
};

const lineRows = (boat: Boat, names: Names, line: LineTraffic): LineRows => {
  const { talker, baud, inputs, charsPerS, sharePct, sentences } = line;
  const markPct = limitValue(boat, 'nmea0183-load');
  const passes = inputs < 2 ? '' : `, ${inputs} inputs together`;
  return {
    talker,
    kit: kitOf(talker),
    name: nameOf(names, talker),
    sharePct,
    markPct,
    isOver: sharePct > markPct,
    fact: `${sharePct.toFixed(0)} % of ${baud} baud, ${charsPerS.toFixed(0)} characters a second${passes}; plan ${markPct} % at most`,
    messages: sentences.map((entry) => ({
      key: [entry.sentence, entry.from, entry.everyMs].join(' '),
      what: messageName(entry) ?? 'a sentence not in the tables',
      code: entry.sentence,
      rate: rateRow({
        port: talker,
        message: entry.sentence,
        often: oftenWords({ ...entry, count: 1 }),
        entry,
        usualMs: usualRateMs(entry),
        from: nameOf(names, entry.from),
      }),
      load: `${entry.charsPerS.toFixed(0)} characters a second`,
    })),
  };
};

/** Why a wait that is printed may not be one. */
export const waitCaution =
  'Waits hold where each unit sends its own most urgent frame first. One that sends in the order in which its frames came to it (a first-in, first-out buffer) has no such bound.';

/** What is sent on every bus and 0183 line, in words: the fullest first. */
export const trafficRows = (boat: Boat, { traffic }: Pick<Plan, 'traffic'>): TrafficRows => {
  const names = namesOf(boat);
  return {
    waters: traffic.waters,
    buses: traffic.buses
      .filter(({ senders }) => senders.length > 0)
      .map((bus) => busRows(boat, names, bus, traffic.waters)),
    lines: [...traffic.lines]
      .sort((one, other) => other.sharePct - one.sharePct)
      .map((line) => lineRows(boat, names, line)),
  };
};
