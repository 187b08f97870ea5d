import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { canonicalJson } from '../../backbone/canonical-json.ts';
import type { WorkProblem } from './problem.ts';

/** A problem with the hash by which its answers know it: of its canonical text without this field. */
export const hashed = (body: Omit<WorkProblem, 'hash'>): WorkProblem => ({
  ...body,
  hash: bytesToHex(sha256(utf8ToBytes(canonicalJson(body)))),
});
