import type { Photo } from '../../core/boat/photo.ts';
import type { NewEntry } from '../../core/log/new-entry.ts';
import { shrinkPhoto } from './kept/shrink-photo.ts';
import type { PhoneStore } from './store/phone-state.ts';
import { words } from './words.ts';

/** What was written last, and the entry that takes it back. */
export interface LastDone {
  readonly says: string;
  readonly undo?: NewEntry;
}

/** What screens write by: whatever was written can be taken back with the next press. */
export interface PhoneHand {
  /** false where there was no room: then nothing was written, and it was told */
  readonly write: (entry: NewEntry, says: string) => boolean;
  readonly takePhoto: (of: string, shows: Photo['shows'], file: Blob) => Promise<void>;
  readonly takeBack: (entry: string) => void;
}

const undoOf = (entry: NewEntry, id: string): NewEntry =>
  entry.kind === 'tick' ? { ...entry, done: !entry.done } : { kind: 'withdrawn', entry: id };

/** Writes into a store, tells what was done, and asks for it to be sent. */
export const phoneHand = (
  store: PhoneStore,
  { told, send, sendPhotos }: { told: (last: LastDone) => void; send: () => void; sendPhotos: () => void },
): PhoneHand => ({
  write(entry, says) {
    const id = store.write(entry);
    if (id === undefined) {
      told({ says: words.full });
      return false;
    }
    told(entry.kind === 'withdrawn' ? { says } : { says, undo: undoOf(entry, id) });
    send();
    return true;
  },
  async takePhoto(of, shows, file) {
    const shrunk = await shrinkPhoto(file);
    const entry = shrunk === undefined ? undefined : ({ kind: 'photo', of, shows, picture: shrunk.picture } as const);
    const id = shrunk === undefined || entry === undefined ? undefined : await store.writePhoto(entry, shrunk.bytes);
    if (entry === undefined || id === undefined) return told({ says: words.noPhoto });
    told({ says: words.survey.photoTaken(words.survey.photos[shows]), undo: undoOf(entry, id) });
    sendPhotos();
  },
  takeBack(entry) {
    if (store.write({ kind: 'withdrawn', entry }) === undefined) told({ says: words.full });
    else told({ says: words.undone });
    send();
  },
});
