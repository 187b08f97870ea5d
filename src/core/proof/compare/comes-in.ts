import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Port, Sheet } from '../../boat/sheet.ts';
import { readingsOf } from '../../facts/message-readings.ts';
import type { ReadingId } from '../../facts/reading-ids.ts';
import type { Plan } from '../../plan-shape.ts';

interface Asked {
  readonly index: BoatIndex;
  readonly plan: Plan;
}

interface Message {
  readonly kit: string;
  readonly sheet: Sheet;
  readonly to: Port;
  readonly message: number | string;
}

/** What a message is for; what it may carry but seldom does is not waited for. */
const readingsOfMessage = (message: number | string): ReadingId[] =>
  readingsOf(typeof message === 'number' ? { pgn: message } : { sentence: message })
    .filter(({ ifSaid }) => ifSaid !== true)
    .map(({ reading }) => reading);

/** Ports joined to one, that may talk to it. */
const talkersTo = ({ plan }: Asked, kit: string, port: string): { kit: string; port: string }[] =>
  plan.joins
    .filter(({ members }) => members.some((one) => one.kit === kit && one.port === port))
    .flatMap(({ members }) => members.filter((one) => one.as !== 'listen' && !(one.kit === kit && one.port === port)));

/** Whether a reading leaves a port: its own, or brought to it by a turn from where it arrives. */
const leaves = (asked: Asked, at: { kit: string; port: string }, reading: ReadingId, passed: Set<string>): boolean => {
  const key = `${at.kit}.${at.port}`;
  const sheet = asked.index.sheetOf.get(at.kit);
  const port = sheet?.ports.find(({ id }) => id === at.port);
  if (sheet === undefined || port === undefined || passed.has(key)) return false;
  passed.add(key);
  const says = (port.sends ?? []).some((sent) => readingsOf(sent).some((entry) => entry.reading === reading));
  if (!says) return false;
  const turns = (sheet.turns ?? []).filter(
    ({ toPort, carries }) => toPort === port.id && carries.some((carry) => carry.reading === reading),
  );
  if (turns.length === 0) return true;
  return turns.some(({ fromPort }) =>
    talkersTo(asked, at.kit, fromPort).some((talker) => leaves(asked, talker, reading, passed)),
  );
};

/**
 * Whether a port can say a message at all. A reading that a turn brings to the port leaves only while something joined to
 * the turn’s other end sends it; whatever else a message is for, the unit says by itself.
 */
export const comesIn = (asked: Asked, { kit, sheet, to, message }: Message): boolean => {
  const readings = readingsOfMessage(message);
  const turns = (sheet.turns ?? []).filter(({ toPort }) => toPort === to.id);
  const turned = readings.filter((reading) => turns.some(({ carries }) => carries.some((c) => c.reading === reading)));
  if (readings.length === 0 || turned.length < readings.length) return true;
  return turned.some((reading) => leaves(asked, { kit, port: to.id }, reading, new Set()));
};
