/** What a phone keeps between two visits of the page, by key; all tabs of the phone share it. */
export interface Shelf {
  readonly keys: () => readonly string[];
  readonly get: (key: string) => string | undefined;
  /** false where it is full, or barred: then nothing was kept */
  readonly set: (key: string, text: string) => boolean;
  readonly remove: (key: string) => void;
}

/** Where photos wait until the laptop has them, by the hash of their bytes. */
export interface PictureShelf {
  /** false where there is no room, or where the browser bars it */
  readonly put: (hash: string, picture: Blob) => Promise<boolean>;
  readonly get: (hash: string) => Promise<Blob | undefined>;
  readonly remove: (hash: string) => Promise<void>;
}

const mark = 'fairlead-phone';

/** The keys of one boat. Each waiting entry has one of its own, so that two tabs never write over each other’s. */
export const keysOf = (boat: string) => {
  const own = encodeURIComponent(boat);
  return {
    waiting: `${mark}/waiting/${own}/`,
    aside: `${mark}/aside/${own}/`,
    log: `${mark}/seen/log/${own}`,
    sheet: `${mark}/seen/sheet/${own}`,
    heard: `${mark}/heard/${own}`,
  } as const;
};

export const pairedKey = `${mark}/paired`;
export const boatsKey = `${mark}/boats`;
export const openKey = `${mark}/open`;
export const nameKey = `${mark}/name`;

/** What was only read from the laptop and can be read again: given up first where there is no room. */
const readAgain = `${mark}/seen/`;

/** Keeps what must not be lost, at the price of what can be fetched again; false where there is no room even so. */
export const setAtAnyPrice = (shelf: Shelf, key: string, text: string): boolean => {
  if (shelf.set(key, text)) return true;
  for (const other of shelf.keys()) if (other.startsWith(readAgain)) shelf.remove(other);
  return shelf.set(key, text);
};
