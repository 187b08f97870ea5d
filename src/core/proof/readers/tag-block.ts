import { byteOf } from './line-bytes.ts';

/** What a tag block in front of a sentence says that is of use here. */
export interface TagBlock {
  readonly timeUs?: number;
  readonly from?: string;
}

const pattern = /^\\([^\\*]*)\*([0-9A-Fa-f]{2})\\/;
const timePattern = /^\d{1,13}$/;
const mostFromChars = 15;
const largestSeconds = 1e10;

const sumOf = (text: string): number => {
  let sum = 0;
  for (let at = 0; at < text.length; at += 1) sum ^= text.charCodeAt(at);
  return sum;
};

const timeUsOf = (text: string): number => {
  const value = Number(text);
  return value > largestSeconds ? value * 1000 : value * 1_000_000;
};

/**
 * Reads `\s:source,c:seconds*hh\`; other tags are passed over. Undefined when its checksum is wrong or it is none, so
 * that nothing is believed of a damaged one. The time is in seconds or milliseconds since 1970, told by its size.
 */
export const readTagBlock = (bytes: Uint8Array): TagBlock | undefined => {
  if (bytes[0] !== byteOf.backslash || bytes.length > 512) return undefined;
  const text = String.fromCharCode(...bytes);
  const [, body, given] = pattern.exec(text) ?? [];
  if (body === undefined || given === undefined || Number.parseInt(given, 16) !== sumOf(body)) return undefined;
  const tags = new Map(body.split(',').map((tag) => [tag.slice(0, 1), tag.slice(2)] as const));
  const time = tags.get('c');
  const from = tags.get('s');
  return {
    ...(time !== undefined && timePattern.test(time) ? { timeUs: timeUsOf(time) } : {}),
    ...(from === undefined || from === '' ? {} : { from: from.slice(0, mostFromChars) }),
  };
};
