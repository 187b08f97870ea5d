import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** The SHA-256 of bytes, in hexadecimal, also where a page over plain http is lent none by its browser. */
export const bytesHash = (bytes: Uint8Array): string => bytesToHex(sha256(bytes));

/** The SHA-256 of a text as UTF-8, in hexadecimal: the tag of a file that holds it, without the quotes. */
export const textHash = (text: string): string => bytesHash(utf8ToBytes(text));
