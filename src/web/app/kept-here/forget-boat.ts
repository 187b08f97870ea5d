import type { Refused } from '../../../core/boat-store-shape.ts';
import { forgetKept } from '../../workers/boat-keeper.ts';
import { forgetWaiting } from '../log/use-boat-log.ts';
import type { BrowserStore } from '../store/browser-store.ts';
import { inBrowser } from '../store/kept-boats.ts';

/** Deletes a boat with all that lies beside her, her steps and what of her log was on its way; gives why not. */
export const forgetBoat = async (store: BrowserStore, id: string): Promise<Refused | undefined> => {
  const done = await store.remove(id);
  if ('refusal' in done) return done;
  forgetWaiting(id);
  // her id is never used again, so what stays of her steps is in nobody’s way
  await forgetKept(`${inBrowser}/${id}`).catch(() => undefined);
  return undefined;
};
