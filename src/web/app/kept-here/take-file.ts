import { UserError } from '../../../core/boat/user-error.ts';
import type { BoatStore, Refused } from '../../../core/boat-store-shape.ts';
import { textHash } from '../../workers/text-hash.ts';
import type { BrowserStore } from '../store/browser-store.ts';
import { takeInBoat } from '../whole-boat/take-in-boat.ts';
import { unpackBoat } from '../whole-boat/unpack-boat.ts';

/** What became of a file that was opened: the boat it is kept as, and what of it could not be kept. */
export interface Taken {
  readonly id: string;
  readonly without: readonly string[];
}

/** Keeps the boat of a zip with all that is in it. */
export const takeZip = async (store: BoatStore, file: Blob): Promise<Taken | Refused> => {
  try {
    return await takeInBoat(store, unpackBoat(new Uint8Array(await file.arrayBuffer())));
  } catch (error) {
    if (!(error instanceof UserError)) throw error;
    return { refusal: { says: error.says, whatToDo: error.whatToDo } };
  }
};

/** Keeps a boat file in this browser; one that is there already, to the byte, is not kept twice. */
export const takeText = async (store: BrowserStore, text: string): Promise<Taken | Refused> => {
  const tag = `"${textHash(text)}"`;
  const known = [...(await store.facts())].find(([, facts]) => facts.tag === tag);
  if (known !== undefined) return { id: known[0], without: [] };
  const added = await store.add(text);
  return 'refusal' in added ? added : { ...added, without: [] };
};
