import type { BoatStore, Refused, StoredPicture } from '../../../core/boat-store-shape.ts';
import type { WholeBoat } from './whole-boat.ts';

/** A boat of a store with all that lies beside her, or why she cannot be read. */
export const gatherBoat = async (store: BoatStore, id: string): Promise<WholeBoat | Refused> => {
  const found = await store.read('boats', id);
  if ('refusal' in found) return found;
  const [log, hashes] = [await store.readLog(id), await store.pictures(id)];
  const pictures = new Map<string, StoredPicture>();
  for (const hash of hashes ?? []) {
    const picture = await store.picture('boats', id, hash);
    if (picture !== undefined) pictures.set(hash, picture);
  }
  return { id, text: found.text, log: log ?? '', pictures };
};
