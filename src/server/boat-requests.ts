import type { IncomingMessage } from 'node:http';
import { largestFileBytes, readBoat } from '../core/boat/read-boat.ts';
import { UserError } from '../core/boat/user-error.ts';
import type { BoatFolder } from '../node/boat-folder.ts';
import { FileChanged } from '../node/files/file-changed.ts';

/** The folder that was opened, and the demo boats, which may only be read. */
export interface Folders {
  readonly boats: BoatFolder;
  readonly demos: BoatFolder;
}

/** What the server answers: a status and either JSON to be written out or a text that is JSON already. */
export interface Answer {
  readonly status: number;
  readonly json?: unknown;
  readonly text?: string;
  /** hash of the boat file that the answer leaves, sent as its ETag */
  readonly hash?: string;
}

const says = (status: number, sentence: string, whatToDo?: string): Answer => ({
  status,
  json: { says: sentence, ...(whatToDo === undefined ? {} : { whatToDo }) },
});

const noSuchBoat = (id: string): Answer =>
  says(404, `There is no boat "${id}" in the folder.`, 'Go back to all boats and choose one from the list.');

const tooLarge = says(413, 'This is more than 16 MB; a boat file is at most that.', 'Save less.');

/** What is wrong with a request that wants to write, before its body is read; undefined where it may go on. */
const refusalOfWriting = (request: IncomingMessage): Answer | undefined => {
  const { host, origin, 'content-type': type, 'content-length': length, 'sec-fetch-site': site } = request.headers;
  // a browser names the page that asks in every request that writes; a page elsewhere cannot leave it out or change it
  if (origin !== `http://${host}` || (site !== undefined && site !== 'same-origin')) {
    return says(403, 'Only the app itself may write here.');
  }
  if (!/^application\/json(;|$)/i.test(type ?? '')) return says(415, 'A boat is sent as application/json.');
  return Number(length ?? 0) > largestFileBytes ? tooLarge : undefined;
};

/** The body of a request as text; undefined where it is over 16 MB, of which no more is then read. */
const bodyOf = async (request: IncomingMessage): Promise<string | undefined> => {
  const chunks: Buffer[] = [];
  let length = 0;
  for await (const chunk of request) {
    // reason: a request that has no encoding set gives buffers
    const bytes = chunk as Buffer;
    length += bytes.length;
    if (length > largestFileBytes) return undefined;
    chunks.push(bytes);
  }
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(chunks));
  } catch {
    throw new UserError({ says: 'The boat was not sent as UTF-8.', whatToDo: 'Load the page anew and try again.' });
  }
};

const quoted = /^"([0-9a-f]{64})"$/;

const refusalOf = (error: unknown): Answer => {
  if (!(error instanceof UserError)) throw error;
  return says(error instanceof FileChanged ? 412 : 422, error.says, error.whatToDo);
};

const save = async (request: IncomingMessage, folder: BoatFolder, id: string): Promise<Answer> => {
  const readHash = quoted.exec(request.headers['if-match'] ?? '')?.[1];
  if (readHash === undefined) return says(428, 'A save must say what the file held when it was read.');
  const text = await bodyOf(request);
  if (text === undefined) return tooLarge;
  readBoat(text);
  const saved = await folder.save(id, { text, readHash });
  return saved === undefined ? noSuchBoat(id) : { status: 200, json: {}, hash: saved.hash };
};

const add = async (request: IncomingMessage, folder: BoatFolder): Promise<Answer> => {
  const text = await bodyOf(request);
  if (text === undefined) return tooLarge;
  const { id, hash } = await folder.add({ name: readBoat(text).name, text });
  return { status: 201, json: { id }, hash };
};

const read = async (folder: BoatFolder, id: string): Promise<Answer> => {
  const found = await folder.read(id);
  return found === undefined ? noSuchBoat(id) : { status: 200, ...found };
};

/** Which folder an address means, and the id in it as that folder lists it; an id that is badly written is none. */
const partsOf = (address: string): { shelf: 'boats' | 'demos'; id?: string } | undefined => {
  const [, shelf, written] = /^\/api\/(boats|demos)(?:\/([^/]+))?$/.exec(address) ?? [];
  if (shelf !== 'boats' && shelf !== 'demos') return undefined;
  try {
    return { shelf, ...(written === undefined ? {} : { id: decodeURIComponent(written) }) };
  } catch {
    return undefined;
  }
};

const answerTo = async (request: IncomingMessage, address: string, folders: Folders): Promise<Answer | undefined> => {
  const parts = partsOf(address);
  if (parts === undefined) return undefined;
  const { shelf, id } = parts;
  const folder = folders[shelf];
  if (request.method === 'GET') {
    return id === undefined ? { status: 200, json: await folder.list() } : read(folder, id);
  }
  const isSave = request.method === 'PUT' && id !== undefined;
  const isAdd = request.method === 'POST' && id === undefined;
  if (shelf === 'demos' || (!isSave && !isAdd)) return says(405, 'Only reading is possible here.');
  const refused = refusalOfWriting(request);
  if (refused !== undefined) return refused;
  return isSave ? save(request, folder, id) : add(request, folder);
};

/**
 * Answers what concerns boats: `GET /api/boats` lists them, `GET /api/boats/ID` reads one, `PUT /api/boats/ID` saves
 * over one that still holds what `If-Match` says, `POST /api/boats` adds one; `/api/demos` may be read in the same way.
 * Only pages of this very server may write, as JSON, at most 16 MB, and only a boat that can be read again. Undefined
 * for any other address.
 */
export const boatRequest = async (
  request: IncomingMessage,
  address: string,
  folders: Folders,
): Promise<Answer | undefined> => {
  try {
    return await answerTo(request, address, folders);
  } catch (error) {
    return refusalOf(error);
  }
};
