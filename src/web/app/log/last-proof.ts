import { useSyncExternalStore } from 'react';
import type { ProofReport } from '../../../core/proof/compare/proof-report.ts';
import { boatOfFolder } from '../pictures/picture-keeper.ts';

/** By boat, what the last recording held against her plan came to; it stays while the page does, and the recording is hers to keep. */
const last = new Map<string, ProofReport>();
const listeners = new Set<() => void>();

const keyOf = (boatName: string): string => boatOfFolder() ?? `by hand ${boatName}`;

/** Keeps what a recording of the boat that is open came to, for her papers. */
export const keepProof = (boatName: string, report: ProofReport): void => {
  last.set(keyOf(boatName), report);
  for (const listener of listeners) listener();
};

const onChange = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** What the last recording of the boat that is open came to; undefined where none was read since the page was loaded. */
export const useLastProof = (boatName: string): ProofReport | undefined =>
  useSyncExternalStore(onChange, () => last.get(keyOf(boatName)));
