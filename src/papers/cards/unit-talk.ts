import type { Kit } from '../../core/boat/boat-schema.ts';
import type { Hears, Port, Sends, Sheet } from '../../core/boat/sheet.ts';
import { readingsOf } from '../../core/facts/message-readings.ts';
import { type ReadingId, readingIds } from '../../core/facts/reading-ids.ts';
import { readingWords } from '../../core/facts/reading-words.ts';
import { bareAt, carriedAt, givenAt } from '../../core/readings/port-messages.ts';
import { rateOf } from '../../core/traffic/said-rate.ts';
import { everyWords, messageCode, messageName, usualRateMs } from './form-words.ts';
import { languageWords } from './language-words.ts';

/** One message a port says or hears, in words. */
export interface SaidMessage {
  /** what it tells of, or what it is called where it tells of no reading */
  readonly what: string;
  /** "PGN 128267", "DPT"; absent for a bare reading */
  readonly code?: string;
  /** how often it comes or is wanted, its instance and reference, joined by commas; may be empty */
  readonly how: string;
}

/** What one port says, or what it hears. */
export interface PortTalk {
  readonly port: string;
  readonly language: string;
  readonly messages: readonly SaidMessage[];
}

const wordsOf = (readings: readonly ReadingId[]): string => readings.map((reading) => readingWords[reading]).join(', ');

const codeOf = (message: Sends | Hears): { code?: string } => {
  const code = messageCode(message);
  return code === undefined ? {} : { code };
};

const nameOf = (readings: readonly ReadingId[], message: Sends | Hears): string =>
  readings.length > 0 ? wordsOf(readings) : (messageName(message) ?? 'a message not in the tables');

const rateWords = (unit: Kit, port: Port, sent: Sends): string[] => {
  if (sent.everyMs !== undefined) {
    const isChanged = rateOf({ unit, port: port.id, sent }) === 'changed';
    return [everyWords(sent.everyMs), ...(isChanged ? ['changed for this unit'] : [])];
  }
  const usualMs = usualRateMs(sent);
  return usualMs === undefined ? [] : [`usually ${everyWords(usualMs)}`];
};

/** The unit's own numbers come before the sheet's. */
const instanceWords = (unit: Kit, port: Port, sent: Sends, readings: readonly ReadingId[]): string[] => {
  const own = (unit.instances ?? [])
    .filter((entry) => entry.port === port.id && readings.includes(entry.reading))
    .map((entry) => entry.instance);
  const numbers = own.length > 0 ? [...new Set(own)].sort((a, b) => a - b) : (sent.instance ?? []);
  const list = [numbers].flat();
  return list.length === 0 ? [] : [`instance ${list.join(' and ')}`];
};

/** In the order of the readings; what tells of none comes last. */
const rank = (readings: readonly ReadingId[]): number => {
  const [first] = readings;
  return first === undefined ? readingIds.length : readingIds.indexOf(first);
};

interface Ranked {
  readonly readings: readonly ReadingId[];
  readonly message: SaidMessage;
}

const inReadingOrder = (rows: readonly Ranked[]): SaidMessage[] =>
  [...rows].sort((a, b) => rank(a.readings) - rank(b.readings)).map(({ message }) => message);

const saidAt = (unit: Kit, sheet: Sheet, port: Port): SaidMessage[] => {
  const own = (unit.instances ?? []).filter((entry) => entry.port === port.id).map((entry) => entry.reading);
  const given = givenAt(port, new Set([...bareAt(port), ...carriedAt(sheet, port), ...own]));
  const inMessages = new Set(
    [...given].filter(([, givings]) => givings.some(({ sent }) => sent.reading === undefined)).map(([id]) => id),
  );
  const rows = (port.sends ?? []).flatMap((sent): Ranked[] => {
    // a bare reading beside a message that gives it only says that the message does
    if (sent.reading !== undefined && inMessages.has(sent.reading)) return [];
    const readings = readingIds.filter((id) => given.get(id)?.some((giving) => giving.sent === sent));
    const how = [...instanceWords(unit, port, sent, readings), ...rateWords(unit, port, sent)].join(', ');
    return [{ readings, message: { what: nameOf(readings, sent), ...codeOf(sent), how } }];
  });
  return inReadingOrder(rows);
};

const wantWords = ({ wants, instance }: Hears): string =>
  [
    ...(instance === undefined ? [] : [`instance ${instance}`]),
    ...(wants?.reference === undefined ? [] : [`wanted as ${wants.reference}`]),
    ...(wants?.withOffset === true ? ['wanted with its offset'] : []),
    ...(wants?.everyMs === undefined ? [] : [`wanted ${everyWords(wants.everyMs)}`]),
  ].join(', ');

const heardAt = (port: Port): SaidMessage[] =>
  inReadingOrder(
    (port.hears ?? []).map((heard) => {
      const readings = readingsOf(heard).map(({ reading }) => reading);
      return { readings, message: { what: nameOf(readings, heard), ...codeOf(heard), how: wantWords(heard) } };
    }),
  );

const talkOf = (sheet: Sheet, messagesAt: (port: Port) => SaidMessage[]): PortTalk[] =>
  sheet.ports.flatMap((port) => {
    const messages = messagesAt(port);
    return messages.length === 0 ? [] : [{ port: port.id, language: languageWords[port.protocol], messages }];
  });

/** What a unit says and hears at each of its ports, message by message, in words. */
export const unitTalk = (unit: Kit, sheet: Sheet): { says: readonly PortTalk[]; hears: readonly PortTalk[] } => ({
  says: talkOf(sheet, (port) => saidAt(unit, sheet, port)),
  hears: talkOf(sheet, heardAt),
});
