import { bytesToHex, hexToBytes } from '@noble/hashes/utils.js';
import { deflateSync, Inflate, strFromU8, strToU8 } from 'fflate';

/** A text packed by DEFLATE (RFC 1951), in hexadecimal digits. Equal texts give equal digits. */
export const packText = (text: string): string => bytesToHex(deflateSync(strToU8(text), { level: 9 }));

/**
 * The text that was packed; undefined where it cannot be unpacked, or would be longer than `mostBytes`: a few digits can hold
 * a text of any length.
 */
export const unpackText = (packed: string, mostBytes: number): string | undefined => {
  const parts: Uint8Array[] = [];
  let bytes = 0;
  let isWhole = false;
  try {
    const inflate = new Inflate((part, isLast) => {
      bytes += part.length;
      if (bytes > mostBytes) throw new RangeError('too long');
      parts.push(part);
      isWhole = isLast;
    });
    inflate.push(hexToBytes(packed), true);
  } catch {
    return undefined;
  }
  if (!isWhole) return undefined;
  const all = new Uint8Array(bytes);
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return strFromU8(all);
};
