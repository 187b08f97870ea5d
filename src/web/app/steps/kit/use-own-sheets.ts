import { useSyncExternalStore } from 'react';
import type { Sheet } from '../../../../core/boat/sheet.ts';
import { writeSheet } from '../../../../core/boat/write-sheet.ts';
import { store } from '../../store/the-store.ts';

/** What is known of the sheets kept for the next boat, and why the last one was not kept. */
interface OwnSheets {
  readonly sheets: readonly Sheet[];
  readonly trouble?: string;
}

let now: OwnSheets = { sheets: [] };
let isAsked = false;
const listeners = new Set<() => void>();

const set = (next: OwnSheets): void => {
  now = next;
  for (const listener of listeners) listener();
};

const fetchAll = async (): Promise<void> => {
  const sheets = await store.sheets();
  // without them the typical ones are offered all the same
  if (sheets !== undefined) set({ sheets });
};

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  if (!isAsked) {
    isAsked = true;
    void fetchAll();
  }
  return () => listeners.delete(listener);
};

/** Tells why a change of what is kept was not made, or reads anew what is. */
const afterChange = async (trouble: string | undefined): Promise<void> => {
  if (trouble === undefined) await fetchAll();
  else set({ ...now, trouble });
};

/** Keeps the sheet that a file holds, or tells what is wrong with it. */
export const keepSheetFile = async (text: string): Promise<void> => afterChange(await store.keepSheet(text));

/** Keeps a sheet for the next boat. */
export const keepSheet = (sheet: Sheet): Promise<void> => keepSheetFile(writeSheet(sheet));

/** Forgets a sheet that was kept. */
export const forgetSheet = async (id: string): Promise<void> => afterChange(await store.forgetSheet(id));

/** The sheets kept for the next boat. */
export const useOwnSheets = (): OwnSheets => useSyncExternalStore(subscribe, () => now);
