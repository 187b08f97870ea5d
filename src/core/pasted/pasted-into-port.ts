import type { Hears, Port, Sends } from '../boat/sheet.ts';
import type { PastedMessage, PastedWay } from './pasted-shape.ts';

/** What a port takes of pasted messages, and what it cannot take with the reason. */
export interface PastedPort {
  readonly port: Port;
  readonly taken: number;
  readonly whyNot: readonly string[];
}

const nameOf = ({ pgn, sentence }: PastedMessage): string => (pgn === undefined ? (sentence ?? '') : `PGN ${pgn}`);

const isSame = (one: Sends | Hears, message: PastedMessage): boolean =>
  message.pgn === undefined ? one.sentence === message.sentence : one.pgn === message.pgn;

const formOf = ({ pgn, sentence }: PastedMessage): Pick<Sends, 'pgn' | 'sentence'> => ({
  ...(pgn === undefined ? {} : { pgn }),
  ...(sentence === undefined ? {} : { sentence }),
});

/** Ports on which either kind of message can stand. */
const speaks = { pgn: ['nmea2000', 'ethernet', 'usb', 'wifi'], sentence: ['nmea0183', 'ethernet', 'usb', 'wifi'] };

const withSent = (list: readonly Sends[], message: PastedMessage): Sends[] => {
  const { everyMs } = message;
  const own: Sends = { ...formOf(message), ...(everyMs === undefined ? {} : { everyMs }) };
  const at = list.findIndex((one) => isSame(one, message));
  if (at < 0) return [...list, own];
  return everyMs === undefined ? [...list] : list.map((one, index) => (index === at ? { ...one, everyMs } : one));
};

const withHeard = (list: readonly Hears[], message: PastedMessage): Hears[] =>
  list.some((one) => isSame(one, message)) ? [...list] : [...list, formOf(message)];

/** Which way a message goes at a port: as the text says, else as the port can, else as the person says. */
const wayAt = (port: Port, message: PastedMessage, unsaid: PastedWay): PastedWay => {
  if (message.way !== undefined) return message.way;
  if (port.role === 'both') return unsaid;
  return port.role === 'talk' ? 'sends' : 'hears';
};

/**
 * A port with pasted messages in its lists: each once, an interval that the text gives in place of the one before. A way
 * that the port cannot go, and a message it does not speak, stay out with the reason. Pure.
 *
 * `unsaid`: what is taken where neither the text nor the port says which way a message goes.
 */
export const pastedIntoPort = (port: Port, messages: readonly PastedMessage[], unsaid: PastedWay): PastedPort => {
  let [sends, hears] = [port.sends ?? [], port.hears ?? []];
  let taken = 0;
  const whyNot: string[] = [];
  for (const message of messages) {
    const kind = message.pgn === undefined ? 'sentence' : 'pgn';
    if (!speaks[kind].includes(port.protocol)) {
      whyNot.push(`${nameOf(message)} is no message of the port ${port.id}.`);
      continue;
    }
    const way = wayAt(port, message, unsaid);
    const [isSent, isHeard] = [way !== 'hears' && port.role !== 'listen', way !== 'sends' && port.role !== 'talk'];
    if (isSent) sends = withSent(sends, message);
    if (isHeard) hears = withHeard(hears, message);
    if (isSent || isHeard) taken += 1;
    else
      whyNot.push(
        `${nameOf(message)} is ${way === 'sends' ? 'sent' : 'heard'}, and the port ${port.id} only ${port.role === 'talk' ? 'sends' : 'hears'}.`,
      );
  }
  return {
    port: { ...port, ...(sends.length === 0 ? {} : { sends }), ...(hears.length === 0 ? {} : { hears }) },
    taken,
    whyNot,
  };
};
