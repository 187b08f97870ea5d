import type { IncomingMessage } from 'node:http';
import { UserError } from '../core/boat/user-error.ts';
import { checkEntries } from '../core/log/check-entries.ts';
import type { LogEntry } from '../core/log/log-entry.ts';
import type { LogFile } from '../node/boat-folder.ts';
import { contentHash } from '../node/files/content-hash.ts';
import { type Answer, says } from './answer.ts';
import { bodyOf } from './body-of.ts';
import { jsonIn } from './json-in.ts';
import { refusalOfWriting } from './refusal-of-writing.ts';

const mostBytes = 1_000_000;
const mostAtOnce = 1000;
const tooMuch = says(413, 'This is more than is added to a log at once.', 'Send fewer entries at a time.');

/** The lines of a log, or 304 where they are still what `If-None-Match` says. */
export const readLogRequest = async (request: IncomingMessage, log: LogFile): Promise<Answer> => {
  const text = await log.read();
  const hash = contentHash(text);
  if (request.headers['if-none-match'] === `"${hash}"`) return { status: 304, text: '', hash };
  return { status: 200, json: { text }, hash };
};

/** Adds entries; where the disk refuses them, whoever sent them is to keep them and send them again. */
const addOrLater = async (entries: readonly LogEntry[], log: LogFile): Promise<Answer> => {
  try {
    return { status: 200, json: { added: await log.add(entries) } };
  } catch (error) {
    if (!(error instanceof UserError)) throw error;
    return { ...says(503, error.says, error.whatToDo), retryAfterS: 30 };
  }
};

/**
 * Answers what concerns the log beside a boat: `GET` reads its lines (304 where they are still what `If-None-Match` says),
 * `POST` adds entries, all or none of them; one that is there already is left as it is, so that sending twice does nothing.
 */
export const logRequest = async (request: IncomingMessage, log: LogFile, mayWrite: boolean): Promise<Answer> => {
  if (request.method === 'GET') return readLogRequest(request, log);
  if (request.method !== 'POST' || !mayWrite) return says(405, 'Only reading is possible here.');
  const refused = refusalOfWriting(request, {
    type: /^application\/json(;|$)/i,
    as: 'Entries are sent as application/json.',
  });
  if (refused !== undefined) return refused;
  if (Number(request.headers['content-length'] ?? 0) > mostBytes) return tooMuch;
  const bytes = await bodyOf(request, mostBytes);
  if (bytes === undefined) return tooMuch;
  const sent = jsonIn(bytes);
  const entries = sent === undefined ? 'The entries were not sent as JSON.' : checkEntries(sent.value, mostAtOnce);
  if (typeof entries === 'string') return says(422, entries);
  return addOrLater(entries, log);
};
