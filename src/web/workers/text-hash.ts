import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** The SHA-256 of a text as UTF-8, in hexadecimal: the server’s tag for a file that holds it, without the quotes. */
export const textHash = (text: string): string => bytesToHex(sha256(utf8ToBytes(text)));
