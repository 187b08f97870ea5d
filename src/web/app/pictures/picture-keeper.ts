import { useEffect, useState } from 'react';
import { routeOf } from '../route.ts';
import { asStoredPicture } from '../store/as-stored-picture.ts';
import { store } from '../store/the-store.ts';
import { picturesIn } from './pictures-in.ts';
import type { Shrunk } from './shrink-picture.ts';
import { words } from './words.ts';

interface OnPage {
  readonly blob: Blob;
  readonly url: string;
  /** boats of the folder that have it beside them */
  readonly at: Set<string>;
}

/** Pictures that this page has, by hash. They stay while the page does: taken away, one comes back by undo. */
const onPage = new Map<string, OnPage>();

const hold = (hash: string, blob: Blob): OnPage => {
  const known = onPage.get(hash) ?? { blob, url: URL.createObjectURL(blob), at: new Set<string>() };
  onPage.set(hash, known);
  return known;
};

const keptListeners = new Set<(hash: string) => void>();

/** Hears of each picture as soon as it is kept; gives what ends it. */
export const onPictureKept = (listener: (hash: string) => void): (() => void) => {
  keptListeners.add(listener);
  return () => keptListeners.delete(listener);
};

/** The pictures that this page has, by hash: all that a boat opened by hand can show. */
export const picturesOnPage = (): readonly string[] => [...onPage.keys()];

/** The boat of the folder that is open; absent where it was opened by hand. */
export const boatOfFolder = (): string | undefined => {
  const route = routeOf(window.location.hash);
  return route.page === 'boat' ? route.id : undefined;
};

/** Puts a picture beside a boat of the folder; gives why not, in a sentence. */
const putBeside = async (boat: string, hash: string, held: OnPage): Promise<string | undefined> => {
  if (held.at.has(boat)) return undefined;
  const picture = asStoredPicture(new Uint8Array(await held.blob.arrayBuffer()));
  const whyNot = picture === undefined ? words.unreadable : await store.keepPicture(boat, hash, picture);
  if (whyNot === undefined) held.at.add(boat);
  return whyNot;
};

/**
 * Keeps a picture: beside the boat of the folder that is open, or in this page where it was opened by hand, until it is
 * kept in the folder. Gives why it could not be kept, in a sentence.
 */
export const keepPicture = async ({ picture: { hash }, blob }: Shrunk): Promise<string | undefined> => {
  const held = hold(hash, blob);
  const boat = boatOfFolder();
  const whyNot = boat === undefined ? undefined : await putBeside(boat, hash, held);
  if (whyNot === undefined) for (const listener of keptListeners) listener(hash);
  return whyNot;
};

/** The address under which the page has a picture; undefined where it is nowhere to be found. */
const bring = async (boat: string | undefined, hash: string): Promise<string | undefined> => {
  const held = onPage.get(hash);
  if (held !== undefined) return held.url;
  if (boat === undefined) return undefined;
  const picture = await store.picture('boats', boat, hash);
  if (picture === undefined) return undefined;
  const found = hold(hash, new Blob([picture.bytes], { type: `image/${picture.type}` }));
  found.at.add(boat);
  return found.url;
};

/** Looks for a picture that something else put beside the boat that is open, such as a phone, and tells that it is there. */
export const noticePicture = async (hash: string): Promise<void> => {
  if ((await bring(boatOfFolder(), hash)) === undefined) return;
  for (const listener of keptListeners) listener(hash);
};

/** Puts the pictures of the boat that is open beside a boat of the folder, as which she was just kept; one that is missing stays so. */
export const takePicturesAlong = async (to: string, boatText: string): Promise<void> => {
  const from = boatOfFolder();
  for (const hash of picturesIn(boatText)) {
    await bring(from, hash);
    const held = onPage.get(hash);
    if (held !== undefined) await putBeside(to, hash, held);
  }
};

export type PictureState =
  | { readonly kind: 'coming' }
  | { readonly kind: 'missing' }
  | { readonly kind: 'here'; readonly url: string };

/** A picture of the boat that is open, by its hash. */
export const usePicture = (hash: string | undefined): PictureState => {
  const [found, setFound] = useState<{ hash: string; state: PictureState } | undefined>(undefined);
  useEffect(() => {
    if (hash === undefined) return undefined;
    let isGone = false;
    void bring(boatOfFolder(), hash).then((url) => {
      if (!isGone) setFound({ hash, state: url === undefined ? { kind: 'missing' } : { kind: 'here', url } });
    });
    return () => {
      isGone = true;
    };
  }, [hash]);
  return hash !== undefined && found?.hash === hash ? found.state : { kind: 'coming' };
};
