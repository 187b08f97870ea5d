import { aisBits } from './ais-bits.ts';
import type { AisReport } from './ais-report.ts';
import { decodeAisBits } from './decode-ais-bits.ts';

/** How the AIS messages of some sentences came through. */
export interface AisCounts {
  readonly sentences: number;
  readonly messages: number;
  /** messages of several sentences of which one was missing or out of order */
  readonly incomplete: number;
  readonly openAtEnd: number;
  /** whole messages that are none */
  readonly notDecodable: number;
}

/** Joins the parts of AIS messages and reads them. */
export interface AisSentences {
  /** The report once its last part is in; undefined for a part before it, or for what is no AIS. Checksums are not looked at. */
  take(text: string): AisReport | undefined;
  counts(): AisCounts;
}

interface OpenMessage {
  readonly parts: number;
  nextPart: number;
  payload: string;
}

/** A message has at most five slots, and nine parts say so; more open ones than talkers have numbers for is damage. */
const mostParts = 9;
const mostOpen = 64;

const startPattern = /^!([A-Z]{2})(VDM|VDO),([1-9]),([1-9]),(\d?),([A-Z0-9]?),([0-W`-w]*),([0-5])(?:,[^*]*)?(?:\*|$)/;

interface Part {
  readonly key: string;
  readonly own: boolean;
  readonly parts: number;
  readonly part: number;
  readonly payload: string;
  readonly padBits: number;
}

const partOf = (text: string): Part | undefined => {
  const [, talker, formatter, parts, part, group, channel, payload, pad] = startPattern.exec(text) ?? [];
  if (parts === undefined || part === undefined || payload === undefined || pad === undefined) return undefined;
  const numbers = { parts: Number(parts), part: Number(part), padBits: Number(pad) };
  if (numbers.part > numbers.parts || numbers.parts > mostParts) return undefined;
  return { key: `${talker}${formatter}${parts}${group}${channel}`, own: formatter === 'VDO', payload, ...numbers };
};

/** Starts joining AIS messages. Parts belong together by talker, number of parts, group and channel, and come in order. */
export const startAisSentences = (): AisSentences => {
  const tally = { sentences: 0, messages: 0, incomplete: 0, notDecodable: 0 };
  const open = new Map<string, OpenMessage>();

  const opened = ({ key, parts }: Part): OpenMessage => {
    if (open.delete(key)) tally.incomplete += 1;
    const [oldest] = open.keys();
    if (open.size >= mostOpen && oldest !== undefined) {
      open.delete(oldest);
      tally.incomplete += 1;
    }
    const message = { parts, nextPart: 1, payload: '' };
    open.set(key, message);
    return message;
  };

  /** The payload of a whole message, joined. */
  const joined = (part: Part): string | undefined => {
    const message = part.part === 1 ? opened(part) : open.get(part.key);
    if (message === undefined || message.nextPart !== part.part) {
      tally.incomplete += 1;
      open.delete(part.key);
      return undefined;
    }
    message.payload += part.payload;
    message.nextPart += 1;
    if (message.nextPart <= message.parts) return undefined;
    open.delete(part.key);
    return message.payload;
  };

  return {
    take(text) {
      const part = partOf(text);
      if (part === undefined) return undefined;
      tally.sentences += 1;
      const payload = part.parts === 1 ? part.payload : joined(part);
      if (payload === undefined) return undefined;
      const bits = aisBits(payload, part.padBits);
      const report = bits === undefined ? undefined : decodeAisBits(bits, part.own);
      if (report === undefined) tally.notDecodable += 1;
      else tally.messages += 1;
      return report;
    },
    counts: () => ({ ...tally, openAtEnd: open.size }),
  };
};
