import type { Refusal } from '../../workers/protocol.ts';
import { copyPictures } from '../pictures/copy-pictures.ts';
import type { SaveOutcome } from '../saving/boat-saver.ts';
import { words } from './boat-words.ts';

/** One boat as the server lists it. */
export interface BoatOnList {
  readonly id: string;
  readonly name: string;
  readonly says: string;
}

/** Which boats: those of the folder, or the demo boats that come with the program. */
export type Shelf = 'boats' | 'demos';

const noServer: Refusal = {
  says: words.noServer,
  whatToDo: words.startServer,
};

const addressOf = (shelf: Shelf, id: string): string => `/api/${shelf}/${encodeURIComponent(id)}`;

/** Why the server turned a request away, in its own words where it gave any. */
const refusalIn = async (response: Response): Promise<Refusal> => {
  try {
    const { says, whatToDo }: Partial<Refusal> = await response.json();
    return { says: says ?? noServer.says, whatToDo: whatToDo ?? '' };
  } catch {
    return noServer;
  }
};

/** Asks the server; gives what `take` makes of a good answer, or why there is none. */
const ask = async <Found>(
  address: string,
  request: RequestInit,
  take: (response: Response) => Promise<Found>,
): Promise<Found | { refusal: Refusal }> => {
  try {
    const response = await fetch(address, request);
    return response.ok ? await take(response) : { refusal: await refusalIn(response) };
  } catch {
    return { refusal: noServer };
  }
};

const tagOf = (response: Response): string => response.headers.get('etag') ?? '';

const sent = (text: string): RequestInit => ({ body: text, headers: { 'content-type': 'application/json' } });

/** The boats of a shelf, or why they cannot be read. */
export const fetchBoats = (shelf: Shelf): Promise<{ boats: readonly BoatOnList[] } | { refusal: Refusal }> =>
  // the server and this page are built together
  ask(`/api/${shelf}`, {}, async (response) => ({ boats: (await response.json()) as BoatOnList[] }));

/** One boat file: its text, the tag of what it holds, and what tells its folder from any other on this machine. */
export interface BoatText {
  readonly text: string;
  readonly tag: string;
  readonly folder: string;
}

const boatTextOf = async (response: Response): Promise<BoatText> => ({
  text: await response.text(),
  tag: tagOf(response),
  folder: response.headers.get('fairlead-folder') ?? '',
});

/** The text of one boat file with the tag of what it held, or why it cannot be read. */
export const fetchBoatText = (shelf: Shelf, id: string): Promise<BoatText | { refusal: Refusal }> =>
  ask(addressOf(shelf, id), {}, boatTextOf);

/** How a boat file stands to what this page has of it. */
export type FileNow =
  | { readonly kind: 'same' }
  | { readonly kind: 'changed'; readonly text: string; readonly tag: string }
  /** there is no such file, or it cannot be read */
  | { readonly kind: 'gone' }
  /** the server does not answer */
  | { readonly kind: 'away' };

/** Looks whether a boat file still holds what its tag says. */
export const lookAtBoat = async ({ id, tag }: { id: string; tag: string }): Promise<FileNow> => {
  try {
    const response = await fetch(addressOf('boats', id), { headers: { 'if-none-match': tag } });
    if (response.status === 304) return { kind: 'same' };
    return response.ok ? { kind: 'changed', ...(await boatTextOf(response)) } : { kind: 'gone' };
  } catch {
    return { kind: 'away' };
  }
};

/** A state of a boat that was saved over: by what name it is asked for, and when. */
export interface SavedState {
  readonly id: string;
  readonly untilMs: number;
}

/** What a boat was before each save that is still kept, the newest first. */
export const fetchStates = (id: string): Promise<{ states: readonly SavedState[] } | { refusal: Refusal }> =>
  // the server and this page are built together
  ask(`${addressOf('boats', id)}/states`, {}, async (response) => ({
    states: (await response.json()) as SavedState[],
  }));

/** The text of one such state. */
export const fetchState = (id: string, state: string): Promise<{ text: string } | { refusal: Refusal }> =>
  ask(`${addressOf('boats', id)}/states/${state}`, {}, async (response) => ({ text: await response.text() }));

/** Adds a boat to the folder, or says why not; the server finds a free name for it. */
export const addBoat = (text: string): Promise<{ id: string } | { refusal: Refusal }> =>
  ask('/api/boats', { method: 'POST', ...sent(text) }, async (response) => (await response.json()) as { id: string });

/** Saves over a boat that still holds what its tag says. */
export const putBoat = async (file: { id: string; tag: string }, text: string): Promise<SaveOutcome> => {
  const { body, headers } = sent(text);
  const request = { method: 'PUT', body: body ?? null, headers: { ...headers, 'if-match': file.tag } };
  try {
    const response = await fetch(addressOf('boats', file.id), request);
    if (response.ok) return { kind: 'saved', tag: tagOf(response) };
    const { says } = await refusalIn(response);
    return { kind: response.status === 412 || response.status === 404 ? 'changed' : 'failed', says };
  } catch {
    return { kind: 'failed', says: noServer.says };
  }
};

/** Adds to the folder a copy of one of its boats, or of a demo boat; `name` is what the copy is called. */
export const copyBoat = async (
  shelf: Shelf,
  { id, name }: { id: string; name: string },
): Promise<{ id: string } | { refusal: Refusal }> => {
  const found = await fetchBoatText(shelf, id);
  if ('refusal' in found) return found;
  try {
    const made = await addBoat(`${JSON.stringify({ ...JSON.parse(found.text), name }, null, 2)}\n`);
    if ('id' in made) await copyPictures(found.text, addressOf(shelf, id), addressOf('boats', made.id));
    return made;
  } catch {
    return { refusal: { says: words.noCopy, whatToDo: words.chooseAnother } };
  }
};
