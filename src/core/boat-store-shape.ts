import type { PictureType } from './boat/picture.ts';
import type { Sheet } from './boat/sheet.ts';
import type { LogEntry } from './log/log-entry.ts';

/** Why something could not be kept or read, in a sentence, with what to do about it. */
export interface Refused {
  readonly refusal: { readonly says: string; readonly place?: string; readonly whatToDo: string };
}

/** Which boats: a person’s own, or the demo boats that come with the program and may only be read. */
export type Shelf = 'boats' | 'demos';

/** One boat of a list: what it is, or why it cannot be read. */
export interface BoatOnList {
  readonly id: string;
  readonly name: string;
  readonly says: string;
}

/** One boat as it is kept: its text, the tag of what it holds, and what tells where it is kept from anywhere else. */
export interface StoredBoat {
  readonly text: string;
  readonly tag: string;
  readonly folder: string;
}

/** How a boat stands to what a page has of it. */
export type BoatNow =
  | { readonly kind: 'same' }
  | { readonly kind: 'changed'; readonly text: string; readonly tag: string }
  /** there is no such boat, or it cannot be read */
  | { readonly kind: 'gone' }
  /** where it is kept cannot be reached now */
  | { readonly kind: 'away' };

/** What became of one attempt to save. */
export type SaveOutcome =
  | { readonly kind: 'saved'; readonly tag: string }
  /** the boat is no longer what was read, or no longer there */
  | { readonly kind: 'changed'; readonly says: string }
  | { readonly kind: 'failed'; readonly says: string };

/** A state of a boat that was saved over: by what name it is asked for, and until when she was so. */
export interface SavedState {
  readonly id: string;
  readonly untilMs: number;
}

/** A boat that cannot be read as she is kept: the tag of what is there, and the newest earlier state that can be. */
export interface DamagedBoat {
  readonly tag: string;
  /** tells where she is kept from anywhere else */
  readonly folder: string;
  readonly good?: { readonly text: string; readonly untilMs: number };
}

/** A picture beside a boat. */
export interface StoredPicture {
  readonly type: PictureType;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/**
 * Where boats are kept, with all that lies beside them: files of a folder, which a server reads and writes, or a browser’s
 * own storage. Nothing here throws: what cannot be done is said in a sentence. A text is kept to the byte, and saved only
 * over what was read; what is no boat is not kept.
 */
export interface BoatStore {
  readonly kind: 'folder' | 'browser';
  readonly list: (shelf: Shelf) => Promise<{ readonly boats: readonly BoatOnList[] } | Refused>;
  readonly read: (shelf: Shelf, id: string) => Promise<StoredBoat | Refused>;
  /** looks whether a boat still holds what its tag says */
  readonly look: (boat: { id: string; tag: string }) => Promise<BoatNow>;
  /** keeps a new boat under a free id made from her name */
  readonly add: (text: string) => Promise<{ readonly id: string } | Refused>;
  /** saves over a boat that still holds what its tag says; what it held before becomes an earlier state */
  readonly save: (boat: { id: string; tag: string }, text: string) => Promise<SaveOutcome>;
  /** what a boat was before each save that is still kept, the newest first */
  readonly states: (id: string) => Promise<{ readonly states: readonly SavedState[] } | Refused>;
  readonly state: (id: string, state: string) => Promise<{ readonly text: string } | Refused>;
  /** what can take the place of a boat that cannot be read */
  readonly damaged: (id: string) => Promise<DamagedBoat | Refused>;
  /** puts a good text in the place of one that cannot be read and still is what its tag says, which is set aside for good; gives why not */
  readonly putInPlace: (boat: { id: string; tag: string }, text: string) => Promise<Refused | undefined>;
  /** takes a boat with all that lies beside her off the list; a folder sets her files `aside` and says where, a browser deletes them */
  readonly remove: (id: string) => Promise<{ readonly aside?: string } | Refused>;
  /** the lines of a boat’s log; undefined where it could not be reached */
  readonly readLog: (id: string) => Promise<string | undefined>;
  /** true once the entries are safe, or why they are refused for good, in a sentence; undefined where they are to be sent again */
  readonly addToLog: (id: string, entries: readonly LogEntry[]) => Promise<true | string | undefined>;
  /** hashes of the pictures beside a boat; undefined where that could not be found out */
  readonly pictures: (id: string) => Promise<readonly string[] | undefined>;
  /** undefined where there is none of that hash, or where it could not be reached */
  readonly picture: (shelf: Shelf, id: string, hash: string) => Promise<StoredPicture | undefined>;
  /** keeps a picture, if its bytes are those the hash names; gives why not, in a sentence */
  readonly keepPicture: (id: string, hash: string, picture: StoredPicture) => Promise<string | undefined>;
  /** the sheets kept for the next boat; undefined where that could not be found out */
  readonly sheets: () => Promise<readonly Sheet[] | undefined>;
  /** keeps the sheet that a text holds; gives why not, in a sentence */
  readonly keepSheet: (text: string) => Promise<string | undefined>;
  /** gives why a sheet could not be forgotten, in a sentence */
  readonly forgetSheet: (id: string) => Promise<string | undefined>;
}
