import { type Zippable, zipSync } from 'fflate';
import { byCodeUnit } from '../../../core/boat/ids.ts';
import type { WholeBoat } from './whole-boat.ts';

/** Equal boats give equal bytes, so no moment stands in the file; the first that the form can tell in any time zone. */
const partTime = new Date(1980, 0, 2);

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

/**
 * A boat with all that lies beside her as one zip: laid out as she lies in a folder of boats, so that unpacking it there
 * is all a server needs. Equal boats give equal bytes.
 */
export const packBoat = ({ id, text, log, pictures }: WholeBoat): Uint8Array<ArrayBuffer> => {
  const parts: Zippable = { [`${id}.boat.json`]: utf8(text) };
  if (log !== '') parts[`${id}.log.jsonl`] = utf8(log);
  const sorted = [...pictures].sort(([one], [other]) => byCodeUnit(one, other));
  // pictures are packed already
  for (const [hash, { type, bytes }] of sorted) parts[`${id}.files/${hash}.${type}`] = [bytes, { level: 0 }];
  return zipSync(parts, { mtime: partTime, level: 6 });
};
