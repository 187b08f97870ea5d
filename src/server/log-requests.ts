import type { IncomingMessage } from 'node:http';
import type { LogEntry } from '../core/log/log-entry.ts';
import { checkEntry } from '../core/log/read-log.ts';
import type { LogFile } from '../node/boat-folder.ts';
import { contentHash } from '../node/files/content-hash.ts';
import { type Answer, says } from './answer.ts';
import { bodyOf } from './body-of.ts';
import { refusalOfWriting } from './refusal-of-writing.ts';

const mostBytes = 1_000_000;
const mostAtOnce = 1000;
const tooMuch = says(413, 'This is more than is added to a log at once.', 'Send fewer entries at a time.');

const entriesOf = (bytes: Buffer): readonly LogEntry[] | string => {
  let sent: unknown;
  try {
    sent = JSON.parse(bytes.toString('utf8'));
  } catch {
    return 'The entries were not sent as JSON.';
  }
  if (!Array.isArray(sent)) return 'Entries are sent as a list.';
  if (sent.length > mostAtOnce) return `At most ${mostAtOnce} entries are added at once.`;
  const entries: LogEntry[] = [];
  for (const [at, value] of sent.entries()) {
    const entry = checkEntry(value);
    if (typeof entry === 'string') return `Entry ${at + 1} cannot be added: ${entry}`;
    entries.push(entry);
  }
  return entries;
};

const readLogRequest = async (request: IncomingMessage, log: LogFile): Promise<Answer> => {
  const text = await log.read();
  const hash = contentHash(text);
  if (request.headers['if-none-match'] === `"${hash}"`) return { status: 304, text: '', hash };
  return { status: 200, json: { text }, hash };
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
  const entries = entriesOf(bytes);
  if (typeof entries === 'string') return says(422, entries);
  return { status: 200, json: { added: await log.add(entries) } };
};
