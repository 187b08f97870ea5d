import type { Protocol } from '../../core/boat/sheet.ts';
import { pgnInfo } from '../../core/facts/pgns.ts';
import { usualEveryMs } from '../../core/facts/sentence-rates.ts';
import { sentenceInfo } from '../../core/facts/sentences.ts';
import type { Form } from '../../core/plan-shape.ts';

/** A message by its number or letters; nothing for a bare reading. */
type Message = Pick<Form, 'pgn' | 'sentence'>;

/** The code of a message, as makers print it: "PGN 128267", "DPT"; undefined for a bare reading. */
export const messageCode = ({ pgn, sentence }: Message): string | undefined =>
  pgn === undefined ? sentence : `PGN ${pgn}`;

/** What a message is called, as far as the tables know: "Water Depth", "depth below transducer". */
export const messageName = ({ pgn, sentence }: Message): string | undefined => {
  if (pgn !== undefined) return pgnInfo(pgn)?.name;
  return sentence === undefined ? undefined : sentenceInfo(sentence)?.meaning;
};

/** How often a message usually comes where its sheet does not say, ms. */
export const usualRateMs = ({ pgn, sentence }: Message): number | undefined => {
  if (pgn !== undefined) return pgnInfo(pgn)?.everyMs;
  return sentence === undefined ? undefined : usualEveryMs(sentence);
};

/**
 * An interval in words.
 *
 * @example everyWords(2500) // 'every 2.5 s'
 */
export const everyWords = (everyMs: number): string =>
  everyMs < 1000 ? `every ${everyMs} ms` : `every ${Number((everyMs / 1000).toFixed(2))} s`;

/** What goes over a line that carries no public message. */
const bareWords: Readonly<Record<Protocol, string>> = {
  nmea2000: 'in a message its sheet does not name',
  nmea0183: 'in a sentence its sheet does not name',
  ethernet: 'in the maker’s own messages',
  'single-wire': 'in the maker’s own language',
  analog: 'as a bare signal',
  'engine-can': 'in the engine maker’s own messages',
  modbus: 'as an answer when asked',
  coax: 'as a radio signal',
  video: 'as a picture signal',
  audio: 'as sound',
  usb: 'in the maker’s own messages',
  wifi: 'in the maker’s own messages',
  dc: 'as volts',
};

/**
 * How a reading is written on one stretch of its way, on a line of some language.
 *
 * @example formWords({ pgn: 128267, everyMs: 1000 }, 'nmea2000') // 'PGN 128267 (Water Depth), every 1 s'
 */
export const formWords = (form: Form, protocol: Protocol): string => {
  const code = messageCode(form);
  const name = messageName(form);
  return [
    code === undefined ? bareWords[protocol] : name === undefined ? code : `${code} (${name})`,
    ...(form.instance === undefined ? [] : [`instance ${form.instance}`]),
    ...(form.reference === undefined ? [] : [form.reference]),
    ...(form.everyMs === undefined ? [] : [everyWords(form.everyMs)]),
  ].join(', ');
};
