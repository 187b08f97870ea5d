import type { Boat } from '../../core/boat/boat-schema.ts';
import { shortName } from '../../core/boat/short-name.ts';
import { readingWords } from '../../core/facts/reading-words.ts';
import type { Level } from '../../core/plan-shape.ts';
import { messageWords } from '../../core/proof/compare/message-words.ts';
import type {
  MessageState,
  ProofFinding,
  ProofMessage,
  ProofReading,
  ProofReport,
  ProofStranger,
  ProofUnit,
  ProofWire,
  UnitState,
} from '../../core/proof/compare/proof-report.ts';
import { printCount, printPct } from '../lists/print-figure.ts';

/** What each level of a proof’s findings is called above them. */
export const proofHeadings: Readonly<Record<Level, string>> = {
  danger: 'Danger',
  fault: 'Not as planned',
  doubt: 'Doubts',
  advice: 'Advice',
};

/** How a unit stands, in a word or two. */
export const unitStates: Readonly<Record<UnitState, string>> = {
  found: 'found',
  alike: 'found, or its twin',
  doubtful: 'doubtful',
  silent: 'silent',
  'not-due': 'not to be told',
};

/** How a message came. */
export const messageStates: Readonly<Record<MessageState, string>> = {
  right: 'as planned',
  silent: 'silent',
  empty: 'without data',
  'too-seldom': 'too seldom',
  'too-often': 'too often',
  'not-due': 'not to be told',
};

/** Whether a reading was heard. */
export const readingStates: Readonly<Record<ProofReading['state'], string>> = {
  heard: 'heard',
  silent: 'silent',
  'not-due': 'not to be told',
  'not-watched': 'not watched',
};

const known: Readonly<Record<ProofWire['known'], string>> = {
  told: 'as told',
  only: 'the only one',
  fits: 'fits best',
  unsure: 'not sure which',
};

/** A name of a unit, or of a port by its unit. */
export const namesIn =
  ({ kit }: Pick<Boat, 'kit'>) =>
  (id: string): string => {
    const [unit = id] = id.split('.');
    return shortName(kit.find((one) => one.id === unit)?.name ?? id);
  };

const secondsWords = ({ time }: ProofWire): string => (time === undefined ? '' : ` in ${time.durationS.toFixed(1)} s`);

const loadWords = ({ load }: ProofWire): string[] =>
  load === undefined
    ? []
    : [
        `Load ${printPct(load.exactPct)}, planned ${printPct(load.plannedAveragePct)}; at the worst ${printPct(load.worstPct)}, planned ${printPct(load.plannedWorstPct)}; fullest second ${printPct(load.busiest.exactPct)}.`,
      ];

const lineWords = ({ line }: ProofWire): string[] =>
  line?.sharePct === undefined
    ? []
    : [`Fill ${printPct(line.sharePct)} of ${line.baud} baud, planned ${printPct(line.plannedSharePct)}.`];

/** One watched wire in a few sentences. */
export const wireSentences = (wire: ProofWire): string[] => {
  const { id, kind, count } = wire;
  const what = kind === 'bus' ? `Bus ${id || 'of no plan'}` : `Line of ${id || 'no plan'}`;
  const said = printCount(count, kind === 'bus' ? 'frame' : 'sentence');
  return [`${what} (${known[wire.known]}): ${said}${secondsWords(wire)}.`, ...loadWords(wire), ...lineWords(wire)];
};

/** A time as short as it tells: `250 ms`, `2.5 s`. */
const every = (ms: number): string => (ms < 1000 ? `${Math.round(ms)} ms` : `${Number((ms / 1000).toFixed(1))} s`);

/** One unit as a row: state, name, where and by what it was found. */
export const unitRow = (name: (id: string) => string, unit: ProofUnit): [string, string, string] => {
  const { state, addresses, calls, by, orElse } = unit;
  const at = addresses.length === 0 ? [] : [`address ${addresses.join(', then ')}`];
  const known = by === 'identity' ? ['by its NAME'] : [];
  const calling = calls === undefined ? [] : [`calls itself ${calls}`];
  const others = orElse.length === 0 ? [] : [`or ${orElse.map(name).join(', ')}`];
  return [unitStates[state], name(unit.unit), [...at, ...known, ...calling, ...others].join('; ')];
};

/** One message as a row: state, unit, message, rate. */
export const messageRow = (name: (id: string) => string, one: ProofMessage): [string, string, string, string] => {
  const planned = one.plannedMs === undefined ? '' : `planned every ${every(one.plannedMs)}`;
  const seen = one.seenMs === undefined ? '' : `came every ${every(one.seenMs)}`;
  return [
    messageStates[one.state],
    name(one.port),
    messageWords(one.message),
    [planned, seen].filter((part) => part !== '').join(', '),
  ];
};

/** One reading as a row: state, reading, source, last value. */
export const readingRow = (name: (id: string) => string, one: ProofReading): [string, string, string, string] => [
  readingStates[one.state],
  `${readingWords[one.reading]}${one.instance === undefined ? '' : ` ${one.instance}`}`,
  name(one.from),
  one.says ?? '',
];

/** One stranger in a sentence. */
export const strangerSentence = ({ what, address, sends }: ProofStranger): string =>
  `${what}${address === undefined ? '' : ` at address ${address}`}: ${sends}`;

/** When a finding was seen and what the bytes were; empty where neither is known. */
export const evidenceWords = ({ atS, message, bytes }: ProofFinding): string =>
  [
    ...(atS === undefined ? [] : [`${atS.toFixed(2)} s`]),
    ...(message === undefined || (atS === undefined && bytes === undefined) ? [] : [String(message)]),
    ...(bytes === undefined ? [] : [bytes]),
  ].join(', ');

/** How it all came out, in a sentence. */
export const outcomeWords = ({ units, messages, findings }: ProofReport): string => {
  const there = units.filter(({ state }) => state === 'found' || state === 'alike').length;
  const due = messages.filter(({ state }) => state !== 'not-due');
  const right = due.filter(({ state }) => state === 'right').length;
  const wrong = findings.filter(({ level }) => level === 'fault' || level === 'danger').length;
  return `${there} of ${printCount(units.length, 'unit')} found, ${right} of ${printCount(due.length, 'message')} as planned; ${
    findings.length === 0
      ? 'nothing to tell.'
      : `${printCount(findings.length, 'finding')}, of them ${printCount(wrong, 'fault')}.`
  }`;
};
