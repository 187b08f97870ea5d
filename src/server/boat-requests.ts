import type { IncomingMessage } from 'node:http';
import { largestFileBytes, readBoat } from '../core/boat/read-boat.ts';
import { UserError } from '../core/boat/user-error.ts';
import type { BoatFolder } from '../node/boat-folder.ts';
import { DiskTrouble } from '../node/files/disk-trouble.ts';
import { FileChanged } from '../node/files/file-changed.ts';
import { type Answer, says } from './answer.ts';
import { bodyOf } from './body-of.ts';
import { logRequest } from './log-requests.ts';
import { pictureRequest } from './picture-requests.ts';
import { refusalOfWriting } from './refusal-of-writing.ts';

/** The folder that was opened, and the demo boats, which may only be read. */
export interface Folders {
  readonly boats: BoatFolder;
  readonly demos: BoatFolder;
}

const noSuchBoat = (id: string): Answer =>
  says(404, `There is no boat "${id}" in the folder.`, 'Go back to all boats and choose one from the list.');

const tooLarge = says(413, 'This is more than 16 MB; a boat file is at most that.', 'Save less.');

/** The body of a request as text; undefined where it is over 16 MB, of which no more is then read. */
const textOf = async (request: IncomingMessage): Promise<string | undefined> => {
  const bytes = await bodyOf(request, largestFileBytes);
  if (bytes === undefined) return undefined;
  try {
    // what stands before the first letter of some files belongs to the file
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new UserError({ says: 'The boat was not sent as UTF-8.', whatToDo: 'Load the page anew and try again.' });
  }
};

const quoted = /^"([0-9a-f]{64})"$/;

const refusalOf = (error: unknown): Answer => {
  if (!(error instanceof UserError)) throw error;
  // whoever sent something is to keep it and send it again
  if (error instanceof DiskTrouble) return { ...says(503, error.says, error.whatToDo), retryAfterS: 30 };
  const answer = says(error instanceof FileChanged ? 412 : 422, error.says, error.whatToDo);
  // a line is told; the path of a file is nothing a page needs to know
  const line = /^line \d+/.exec(error.place ?? '')?.[0];
  return line === undefined ? answer : { ...answer, json: { ...Object(answer.json), place: line } };
};

const save = async (request: IncomingMessage, folder: BoatFolder, id: string): Promise<Answer> => {
  const readHash = quoted.exec(request.headers['if-match'] ?? '')?.[1];
  if (readHash === undefined) return says(428, 'A save must say what the file held when it was read.');
  const text = await textOf(request);
  if (text === undefined) return tooLarge;
  readBoat(text);
  const saved = await folder.save(id, { text, readHash });
  return saved === undefined ? noSuchBoat(id) : { status: 200, json: {}, hash: saved.hash };
};

const add = async (request: IncomingMessage, folder: BoatFolder): Promise<Answer> => {
  const text = await textOf(request);
  if (text === undefined) return tooLarge;
  const { id, hash } = await folder.add({ name: readBoat(text).name, text });
  return { status: 201, json: { id }, hash };
};

const recover = async (request: IncomingMessage, folder: BoatFolder, id: string): Promise<Answer> => {
  const readHash = quoted.exec(request.headers['if-match'] ?? '')?.[1];
  if (readHash === undefined) return says(428, 'This must say what the damaged file held when it was read.');
  const text = await textOf(request);
  if (text === undefined) return tooLarge;
  readBoat(text);
  const saved = await folder.recover(id, { text, readHash });
  return saved === undefined ? noSuchBoat(id) : { status: 200, json: {}, hash: saved.hash };
};

const remove = async (folder: BoatFolder, id: string): Promise<Answer> => {
  const aside = await folder.setAside(id);
  return aside === undefined ? noSuchBoat(id) : { status: 200, json: { aside } };
};

/** What can take the place of a boat file that cannot be read; its tag is that of the file as it is. */
const damagedOne = async (folder: BoatFolder, id: string): Promise<Answer> => {
  const damaged = await folder.damaged(id);
  if (damaged === undefined) return noSuchBoat(id);
  const { hash, good } = damaged;
  return { status: 200, json: good === undefined ? {} : { good }, hash, folder: await folder.mark() };
};

const noSuchState = says(404, 'This saved state is no longer kept.', 'Load the list anew.');

const read = async (request: IncomingMessage, folder: BoatFolder, id: string): Promise<Answer> => {
  const found = await folder.read(id);
  if (found === undefined) return noSuchBoat(id);
  const known = quoted.exec(request.headers['if-none-match'] ?? '')?.[1];
  const mark = await folder.mark();
  if (known === found.hash) return { status: 304, text: '', hash: found.hash, folder: mark };
  return { status: 200, ...found, folder: mark };
};

const readStates = async (folder: BoatFolder, id: string, state: string | undefined): Promise<Answer> => {
  if (state === undefined) {
    const states = await folder.states(id);
    return states === undefined ? noSuchBoat(id) : { status: 200, json: states };
  }
  const found = await folder.state(id, state);
  return found === undefined ? noSuchState : { status: 200, ...found };
};

/** What an address asks for: a folder, a boat of it, what that boat was, the pictures beside it or one of them. */
interface Parts {
  readonly shelf: 'boats' | 'demos';
  readonly id?: string;
  readonly states?: { readonly state?: string };
  /** the pictures beside the boat, or one by its hash */
  readonly files?: { readonly hash?: string };
  /** the log beside the boat */
  readonly log?: true;
  /** the boat file as one that cannot be read */
  readonly damaged?: true;
}

/** The parts of an address, by ids as the folder lists them; an id that is badly written is none. */
const partsOf = (address: string): Parts | undefined => {
  const [, shelf, written, states, state, files, hash, log, damaged] =
    /^\/api\/(boats|demos)(?:\/([^/]+)(?:(\/states(?:\/([0-9-]+))?)|(\/files(?:\/([0-9a-f]{64}))?)|(\/log)|(\/damaged))?)?$/.exec(
      address,
    ) ?? [];
  if (shelf !== 'boats' && shelf !== 'demos') return undefined;
  try {
    return {
      shelf,
      ...(written === undefined ? {} : { id: decodeURIComponent(written) }),
      ...(files === undefined ? {} : { files: hash === undefined ? {} : { hash } }),
      ...(log === undefined ? {} : { log: true as const }),
      ...(damaged === undefined ? {} : { damaged: true as const }),
      ...(states === undefined ? {} : { states: state === undefined ? {} : { state } }),
    };
  } catch {
    return undefined;
  }
};

const answerTo = async (request: IncomingMessage, address: string, folders: Folders): Promise<Answer | undefined> => {
  const parts = partsOf(address);
  if (parts === undefined) return undefined;
  const { shelf, id, states, files, log, damaged } = parts;
  const folder = folders[shelf];
  if (id !== undefined && files !== undefined) {
    const pictures = await folder.pictures(id);
    if (pictures === undefined) return noSuchBoat(id);
    return pictureRequest(request, { pictures, ...files, mayWrite: shelf === 'boats' });
  }
  if (id !== undefined && log !== undefined) {
    const file = await folder.log(id);
    return file === undefined ? noSuchBoat(id) : logRequest(request, file, shelf === 'boats');
  }
  if (request.method === 'GET') {
    if (id === undefined) return { status: 200, json: await folder.list() };
    if (damaged) return damagedOne(folder, id);
    return states === undefined ? read(request, folder, id) : readStates(folder, id, states.state);
  }
  const isPut = request.method === 'PUT' && id !== undefined;
  const isSave = isPut && states === undefined && !damaged;
  const isRecovery = isPut && damaged;
  const isAdd = request.method === 'POST' && id === undefined;
  const gone = request.method === 'DELETE' && states === undefined && !damaged ? id : undefined;
  if (shelf === 'demos' || (!isSave && !isAdd && !isRecovery && gone === undefined))
    return says(405, 'Only reading is possible here.');
  const refused = refusalOfWriting(request, {
    type: /^application\/json(;|$)/i,
    as: 'A boat is sent as application/json.',
  });
  if (refused !== undefined) return refused;
  if (Number(request.headers['content-length'] ?? 0) > largestFileBytes) return tooLarge;
  if (gone !== undefined) return remove(folder, gone);
  if (isRecovery) return recover(request, folder, id);
  return isSave ? save(request, folder, id) : add(request, folder);
};

/**
 * Answers what concerns boats: `GET /api/boats` lists them, `GET /api/boats/ID` reads one (304 where it is still what
 * `If-None-Match` says), `GET /api/boats/ID/states` lists what it was, `GET /api/boats/ID/states/STATE` reads one of
 * those, `PUT /api/boats/ID` saves over one that still holds what `If-Match` says, `GET` and `PUT /api/boats/ID/damaged` tell what can take the place of one that cannot be read, and put it there, `POST /api/boats` adds one, `DELETE /api/boats/ID` sets one aside; `GET /api/boats/ID/files`
 * lists the pictures beside it, `GET` and `PUT /api/boats/ID/files/HASH` read and keep one of them; `GET` and `POST /api/boats/ID/log` read her log and add to it; `/api/demos` may be read in the same way. Only pages
 * of this very server may write, as JSON, at most 16 MB, and only a boat that can be read again; what a disk refuses is answered by 503, and is to be sent again. Undefined
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
