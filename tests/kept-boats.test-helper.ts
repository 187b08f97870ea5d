import { aBoat } from '../src/core/boat/a-boat.test-helper.ts';
import { writeBoat } from '../src/core/boat/write-boat.ts';
import type { BoatStore } from '../src/core/boat-store-shape.ts';
import type { LogEntry } from '../src/core/log/log-entry.ts';

/** The text of a small boat of this name. */
export const named = (name: string): string => writeBoat(aBoat().with({ name }).boat);
export const tern = named('Tern');
export const skua = named('Skua');
export const aSentence = /^[A-Z“].*[.!]$/s;

/** Keeps a boat and reads her as a page does that opens her. */
export const kept = async (store: BoatStore, text: string) => {
  const added = await store.add(text);
  if ('refusal' in added) throw new Error(added.refusal.says);
  const read = await store.read('boats', added.id);
  if ('refusal' in read) throw new Error(read.refusal.says);
  return { id: added.id, ...read };
};

export const textNow = async (store: BoatStore, id: string): Promise<string> => {
  const found = await store.read('boats', id);
  return 'text' in found ? found.text : found.refusal.says;
};

export const note = (id: string): LogEntry => ({
  kind: 'note',
  id,
  at: '2027-03-31T09:30:00Z',
  about: [],
  text: `Note ${id}.`,
});
export const jpeg = Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 9);
export const png = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 7);
