import type { IncomingMessage } from 'node:http';
import { largestSheetChars, readSheet } from '../core/boat/read-sheet.ts';
import { UserError } from '../core/boat/user-error.ts';
import type { SheetFolder } from '../node/sheet-folder.ts';
import { type Answer, says } from './answer.ts';
import { bodyOf } from './body-of.ts';
import { refusalOfWriting } from './refusal-of-writing.ts';

const tooLarge = says(413, 'This is more than 1 MB; a sheet is far less.', 'Choose a file of one sheet.');

const textOf = (bytes: Buffer): string => {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new UserError({ says: 'The sheet is not written in UTF-8.', whatToDo: 'Save it as UTF-8 and try again.' });
  }
};

const keep = async (request: IncomingMessage, folder: SheetFolder): Promise<Answer> => {
  const bytes = await bodyOf(request, largestSheetChars);
  if (bytes === undefined) return tooLarge;
  return { status: 201, json: await folder.keep(readSheet(textOf(bytes))) };
};

const forget = async (folder: SheetFolder, id: string): Promise<Answer> =>
  (await folder.forget(id))
    ? { status: 200, json: {} }
    : says(404, `No sheet "${id}" is kept.`, 'Load the page anew to see those that are.');

const answerTo = async (
  request: IncomingMessage,
  address: string,
  folder: SheetFolder,
): Promise<Answer | undefined> => {
  const [whole, id] = /^\/api\/sheets(?:\/([a-z0-9-]+))?$/.exec(address) ?? [];
  if (whole === undefined) return undefined;
  if (request.method === 'GET' && id === undefined) return { status: 200, json: await folder.list() };
  const isKeep = request.method === 'POST' && id === undefined;
  const isForget = request.method === 'DELETE' && id !== undefined;
  if (!isKeep && !isForget) return says(405, 'Only reading is possible here.');
  const refused = refusalOfWriting(request, {
    type: /^application\/json(;|$)/i,
    as: 'A sheet is sent as application/json.',
  });
  if (refused !== undefined) return refused;
  return isKeep ? keep(request, folder) : forget(folder, id ?? '');
};

/**
 * Answers what concerns sheets kept for the next boat: `GET /api/sheets` gives them all, `POST /api/sheets` keeps the one in
 * a file, `DELETE /api/sheets/ID` forgets one. Only pages of this very server may write. Undefined for any other address.
 */
export const sheetRequest = async (
  request: IncomingMessage,
  address: string,
  folder: SheetFolder,
): Promise<Answer | undefined> => {
  try {
    return await answerTo(request, address, folder);
  } catch (error) {
    if (!(error instanceof UserError)) throw error;
    return says(422, error.place === undefined ? error.says : `${error.says} (${error.place})`, error.whatToDo);
  }
};
