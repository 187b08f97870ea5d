import type { Refused } from '../../../core/boat-store-shape.ts';
import { saveFile } from '../saving/save-file.ts';
import type { BrowserStore } from '../store/browser-store.ts';
import { gatherBoat } from '../whole-boat/gather-boat.ts';
import { packBoat } from '../whole-boat/pack-boat.ts';

/** Gives all of a boat to the browser as one file, and takes down that it is in an export; gives the name of the file. */
export const exportBoat = async (store: BrowserStore, id: string): Promise<{ readonly file: string } | Refused> => {
  // a change made while she is gathered counts as one that may be missing
  const held = (await store.facts()).get(id)?.changes ?? 0;
  const whole = await gatherBoat(store, id);
  if ('refusal' in whole) return whole;
  const file = `${id}.zip`;
  saveFile({ name: file, text: packBoat(whole), type: 'zip' });
  await store.noteExported(id, held);
  return { file };
};
