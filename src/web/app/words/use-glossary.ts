import { useSyncExternalStore } from 'react';
import type { GlossaryPart } from './glossary-part.ts';

let part: GlossaryPart | undefined;
let isAsked = false;
const listeners = new Set<() => void>();

const ask = async (): Promise<void> => {
  isAsked = true;
  ({ glossaryPart: part } = await import('./glossary-part.ts'));
  for (const listener of listeners) listener();
};

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  if (!isAsked) void ask();
  return () => listeners.delete(listener);
};

/** The glossary; undefined until it has come, which is no part of the way to the first picture. Texts stand plain until then. */
export const useGlossary = (): GlossaryPart | undefined => useSyncExternalStore(subscribe, () => part);
