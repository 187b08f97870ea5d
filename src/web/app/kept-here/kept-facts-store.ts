import { useSyncExternalStore } from 'react';
import type { KeptFacts } from '../store/kept-facts.ts';
import { browserKept } from '../store/the-store.ts';

let facts: ReadonlyMap<string, KeptFacts> = new Map();
const listeners = new Set<() => void>();

/** Reads anew what this browser knows of its boats. */
export const lookAtFacts = async (): Promise<void> => {
  facts = (await browserKept?.facts()) ?? facts;
  for (const listener of listeners) listener();
};

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  void lookAtFacts();
  return () => listeners.delete(listener);
};

/** What this browser knows of one of its boats; undefined until it was looked up. */
export const useFacts = (id: string): KeptFacts | undefined => useSyncExternalStore(subscribe, () => facts.get(id));
