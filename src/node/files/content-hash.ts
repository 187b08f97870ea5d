import { createHash } from 'node:crypto';

/** The SHA-256 of a file's bytes, in hexadecimal; a text counts as UTF-8. */
export const contentHash = (content: string | Uint8Array): string => createHash('sha256').update(content).digest('hex');
