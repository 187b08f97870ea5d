import { useSyncExternalStore } from 'react';
import type { Sheet } from '../../../../core/boat/sheet.ts';
import { writeSheet } from '../../../../core/boat/write-sheet.ts';

/** What is known of the sheets kept for the next boat, and why the last one was not kept. */
interface OwnSheets {
  readonly sheets: readonly Sheet[];
  readonly trouble?: string;
}

const at = '/api/sheets';

let now: OwnSheets = { sheets: [] };
let isAsked = false;
const listeners = new Set<() => void>();

const set = (next: OwnSheets): void => {
  now = next;
  for (const listener of listeners) listener();
};

const fetchAll = async (): Promise<void> => {
  const response = await fetch(at);
  // the server and this page are built together
  if (response.ok) set({ sheets: (await response.json()) as Sheet[] });
};

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  if (!isAsked) {
    isAsked = true;
    // without them the typical ones are offered all the same
    fetchAll().catch(() => undefined);
  }
  return () => listeners.delete(listener);
};

const troubleIn = async (response: Response): Promise<string> => {
  const { says = '', whatToDo = '' }: { says?: string; whatToDo?: string } = await response.json();
  return `${says} ${whatToDo}`.trim();
};

/** Sends a change of what is kept, and reads anew what is; what the server has against it is told. */
const send = async (address: string, request: RequestInit): Promise<void> => {
  const response = await fetch(address, { ...request, headers: { 'content-type': 'application/json' } });
  if (response.ok) await fetchAll();
  else set({ ...now, trouble: await troubleIn(response) });
};

/** Keeps the sheet that a file holds; the server reads the file and says what is wrong with it. */
export const keepSheetFile = (text: string): Promise<void> => send(at, { method: 'POST', body: text });

/** Keeps a sheet for the next boat. */
export const keepSheet = (sheet: Sheet): Promise<void> => keepSheetFile(writeSheet(sheet));

/** Forgets a sheet that was kept. */
export const forgetSheet = (id: string): Promise<void> => send(`${at}/${id}`, { method: 'DELETE' });

/** The sheets kept for the next boat. */
export const useOwnSheets = (): OwnSheets => useSyncExternalStore(subscribe, () => now);
