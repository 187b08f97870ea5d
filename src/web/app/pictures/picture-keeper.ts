import { useEffect, useState } from 'react';
import { routeOf } from '../route.ts';
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

const addressOf = (boat: string, hash: string): string => `/api/boats/${encodeURIComponent(boat)}/files/${hash}`;

/** The boat of the folder that is open; absent where it was opened by hand. */
export const boatOfFolder = (): string | undefined => {
  const route = routeOf(window.location.hash);
  return route.page === 'boat' ? route.id : undefined;
};

/** Puts a picture beside a boat of the folder; gives why not, in a sentence. */
const putBeside = async (boat: string, hash: string, held: OnPage): Promise<string | undefined> => {
  if (held.at.has(boat)) return undefined;
  try {
    const headers = { 'content-type': held.blob.type };
    const response = await fetch(addressOf(boat, hash), { method: 'PUT', body: held.blob, headers });
    if (response.ok) {
      held.at.add(boat);
      return undefined;
    }
    const { says }: { says?: string } = await response.json();
    return says ?? words.noServer;
  } catch {
    return words.noServer;
  }
};

/**
 * Keeps a picture: beside the boat of the folder that is open, or in this page where it was opened by hand, until it is
 * kept in the folder. Gives why it could not be kept, in a sentence.
 */
export const keepPicture = ({ picture: { hash }, blob }: Shrunk): Promise<string | undefined> => {
  const held = hold(hash, blob);
  const boat = boatOfFolder();
  return boat === undefined ? Promise.resolve(undefined) : putBeside(boat, hash, held);
};

/** The address under which the page has a picture; undefined where it is nowhere to be found. */
const bring = async (boat: string | undefined, hash: string): Promise<string | undefined> => {
  const held = onPage.get(hash);
  if (held !== undefined) {
    // a boat that was opened by hand and is kept in the folder now brings its pictures along
    if (boat !== undefined) await putBeside(boat, hash, held);
    return held.url;
  }
  if (boat === undefined) return undefined;
  try {
    const response = await fetch(addressOf(boat, hash));
    if (!response.ok) return undefined;
    const found = hold(hash, await response.blob());
    found.at.add(boat);
    return found.url;
  } catch {
    return undefined;
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
