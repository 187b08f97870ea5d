import type { BoatIndex } from '../../boat/boat-index.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import type { Port, Sends } from '../../boat/sheet.ts';
import { readingsOf } from '../../facts/message-readings.ts';
import type { ReadingId } from '../../facts/reading-ids.ts';
import { isOfShips } from '../../facts/waters.ts';
import type { Plan } from '../../plan-shape.ts';
import { carriesInstance } from '../decode/message-part.ts';
import { comesIn } from './comes-in.ts';

/** One tank, engine or battery by its number. */
export interface PlannedNumber {
  readonly reading: ReadingId;
  readonly instance: number;
}

/** One message that a port is planned to put on a wire. */
export interface PlannedSend {
  readonly port: string;
  readonly unit: string;
  /** id of the bus, or the talker of the line */
  readonly on: string;
  readonly message: number | string;
  /** which reading under which number, as far as the plan says */
  readonly numbers: readonly PlannedNumber[];
  /** numbers of the tanks, engines or batteries it is for, as far as the plan says */
  readonly instances: readonly number[];
  /** of one like message; absent where an event, or another ship, sends it */
  readonly everyMs?: number;
  /** of all like messages together */
  readonly togetherMs?: number;
}

/** What a watched boat is held against. */
export interface Planned {
  readonly index: BoatIndex;
  readonly plan: Plan;
}

const splitPort = (port: string): [kit: string, port: string] => {
  const [kit = '', id = ''] = port.split('.');
  return [kit, id];
};

/** The unit of `kit.port`. */
export const unitOfPort = (port: string): string => splitPort(port)[0];

const portAt = ({ index }: Planned, port: string): Port | undefined => {
  const [kit, id] = splitPort(port);
  return index.sheetOf.get(kit)?.ports.find((one) => one.id === id);
};

/** The number of a reading at a port: the unit’s own before what a turn gives it. */
const numbersAt = ({ index }: Planned, port: string): PlannedNumber[] => {
  const [kit, id] = splitPort(port);
  const own = (index.kit.get(kit)?.instances ?? []).filter((one) => one.port === id);
  const turned = (index.sheetOf.get(kit)?.turns ?? [])
    .filter(({ toPort }) => toPort === id)
    .flatMap(({ carries }) => carries)
    .filter(({ reading }) => !own.some((one) => one.reading === reading));
  return [
    ...own.map(({ reading, instance }) => ({ reading, instance })),
    ...turned.flatMap(({ reading, asInstance }) =>
      asInstance === undefined ? [] : [{ reading, instance: asInstance }],
    ),
  ];
};

/** The numbers a message leaves a port with: the entry’s own, else those of the readings it gives there. */
const numbersOf = (planned: Planned, port: string, sent: Sends): PlannedNumber[] => {
  if (sent.pgn === undefined || !carriesInstance(sent.pgn)) return [];
  const given = readingsOf(sent).map(({ reading }) => reading);
  const { instance } = sent;
  if (instance !== undefined) return given.slice(0, 1).map((reading) => ({ reading, instance }));
  return numbersAt(planned, port).filter(({ reading }) => given.includes(reading));
};

const sorted = (numbers: Iterable<number>): number[] => [...new Set(numbers)].sort((a, b) => a - b);

interface Often {
  readonly message: number | string;
  readonly everyMs: number;
  readonly count: number;
}

/** Like messages of one number put together: their frequencies add. */
const together = (all: readonly Often[]): Pick<PlannedSend, 'everyMs' | 'togetherMs'> => {
  const perMs = all.map(({ everyMs, count }) => count / everyMs).sort((a, b) => a - b);
  const sum = perMs.reduce((total, one) => total + one, 0);
  if (sum === 0) return {};
  return { everyMs: Math.min(...all.map(({ everyMs }) => everyMs)), togetherMs: 1 / sum };
};

const entryOf = (
  planned: Planned,
  { port, on, message, often }: { port: string; on: string; message: number | string; often: readonly Often[] },
): PlannedSend => {
  const entries = (portAt(planned, port)?.sends ?? []).filter((sent) => (sent.pgn ?? sent.sentence) === message);
  const numbers = entries.flatMap((sent) => numbersOf(planned, port, sent));
  return {
    port,
    unit: unitOfPort(port),
    on,
    message,
    numbers,
    instances: sorted(numbers.map(({ instance }) => instance)),
    ...(typeof message === 'number' && isOfShips(message) ? {} : together(often)),
  };
};

/** Whether a port can say a message: its own, or something that comes in carries what the message is for. */
const isExpected = (planned: Planned, port: string, message: number | string): boolean => {
  const [kit] = splitPort(port);
  const sheet = planned.index.sheetOf.get(kit);
  const to = portAt(planned, port);
  return sheet === undefined || to === undefined || comesIn(planned, { kit, sheet, to, message });
};

const sendsOf = (planned: Planned, at: { port: string; on: string }, often: readonly Often[]): PlannedSend[] => {
  const listed = (portAt(planned, at.port)?.sends ?? []).flatMap(({ pgn, sentence }) => pgn ?? sentence ?? []);
  const messages = new Set<number | string>([...listed, ...often.map(({ message }) => message)]);
  return [...messages]
    .filter((message) => isExpected(planned, at.port, message))
    .map((message) => entryOf(planned, { ...at, message, often: often.filter((one) => one.message === message) }));
};

const busPorts = ({ plan }: Planned, bus: string): string[] => {
  const members = plan.joins.filter((join) => join.bus === bus).flatMap(({ members: all }) => all);
  return [...new Set(members.map(({ kit, port }) => `${kit}.${port}`))].sort(byCodeUnit);
};

/** Ports on a bus, of two in line at one unit only the first: they are one place on it. */
export const portsOnBus = (planned: Planned, bus: string): string[] => {
  const ports = busPorts(planned, bus);
  return ports.filter((port) => {
    const [kit, id] = splitPort(port);
    const inLine = planned.index.sheetOf.get(kit)?.inLine;
    return inLine?.[1] !== id || !ports.includes(`${kit}.${inLine[0]}`);
  });
};

const onBus = (planned: Planned, bus: string): PlannedSend[] => {
  const traffic = planned.plan.traffic.buses.find((one) => one.bus === bus);
  return portsOnBus(planned, bus).flatMap((port) => {
    const messages = traffic?.senders.find((sender) => sender.port === port)?.messages ?? [];
    const often = messages.map(({ pgn, everyMs, count }) => ({ message: pgn, everyMs, count }));
    return sendsOf(planned, { port, on: bus }, often);
  });
};

const onLine = (planned: Planned, talker: string): PlannedSend[] => {
  const line = planned.plan.traffic.lines.find((one) => one.talker === talker);
  const often = (line?.sentences ?? []).filter(({ rate }) => rate !== 'waters');
  return sendsOf(
    planned,
    { port: talker, on: talker },
    often.map(({ sentence, everyMs }) => ({ message: sentence, everyMs, count: 1 })),
  );
};

/** Every message planned on one wire: the ports of a bus, or the talker of a line. */
export const plannedSends = (planned: Planned, wire: { kind: 'bus' | 'line'; id: string }): PlannedSend[] =>
  wire.kind === 'bus' ? onBus(planned, wire.id) : onLine(planned, wire.id);
