import type { BoatStore, Refused } from '../../../core/boat-store-shape.ts';
import { readLog } from '../../../core/log/read-log.ts';
import type { WholeBoat } from './whole-boat.ts';
import { words } from './words.ts';

/** As many entries as any store adds at once. */
const atOnce = 500;

const addAll = async (store: BoatStore, id: string, log: string): Promise<boolean> => {
  const { entries } = readLog(log);
  for (let at = 0; at < entries.length; at += atOnce) {
    if ((await store.addToLog(id, entries.slice(at, at + atOnce))) !== true) return false;
  }
  return true;
};

/**
 * Keeps a boat with all that lies beside her under a free id. What of it could not be kept is told in a sentence, and the
 * rest is kept all the same.
 */
export const takeInBoat = async (
  store: BoatStore,
  { text, log, pictures }: WholeBoat,
): Promise<{ readonly id: string; readonly without: readonly string[] } | Refused> => {
  const added = await store.add(text);
  if ('refusal' in added) return added;
  const { id } = added;
  const without: string[] = [];
  if (!(await addAll(store, id, log))) without.push(words.logNotKept);
  let missing = 0;
  for (const [hash, picture] of pictures) {
    if ((await store.keepPicture(id, hash, picture)) !== undefined) missing += 1;
  }
  if (missing > 0) without.push(words.notAll(missing));
  return { id, without };
};
