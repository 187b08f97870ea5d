import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { UserError } from '../core/boat/user-error.ts';
import { boatRequest, type Folders } from './boat-requests.ts';
import { goesOn, liveRequest } from './live/live-requests.ts';
import { type LiveSessions, liveSessions } from './live/live-sessions.ts';
import { laptopRequest } from './phones/laptop-requests.ts';
import type { PhonesSwitch } from './phones/phones-switch.ts';
import { sendAnswer, sendFile } from './send-answer.ts';
import { servedApp } from './served-app.ts';
import { sheetRequest } from './sheet-requests.ts';
import { readStaticFiles, type StaticFile } from './static-files.ts';

const headers = {
  'content-security-policy':
    "default-src 'none'; script-src 'self'; worker-src 'self'; style-src 'self'; font-src 'self'; img-src 'self' data: blob:; connect-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
} as const;

const sendSentence = (response: ServerResponse, status: number, says: string): void =>
  sendAnswer(response, headers, { status, json: { says } });

const answer = async ({
  request,
  response,
  files,
  folders,
  sessions,
  phones,
}: {
  request: IncomingMessage;
  response: ServerResponse;
  files: ReadonlyMap<string, StaticFile>;
  folders: Folders;
  sessions: LiveSessions;
  phones: PhonesSwitch | undefined;
}): Promise<void> => {
  const address = (request.url ?? '/').split('?')[0] ?? '/';
  const live = await liveRequest(request, response, address, { boats: folders.boats, sessions });
  if (live === goesOn) return;
  const told =
    live ??
    (await boatRequest(request, address, folders)) ??
    (await sheetRequest(request, address, folders.boats.sheets)) ??
    (phones === undefined ? undefined : await laptopRequest(request, address, phones));
  if (told !== undefined) {
    sendAnswer(response, headers, told);
    // what a refused request still sends is not taken in
    if (!request.complete) response.once('finish', () => request.destroy());
    return;
  }
  if (request.method !== 'GET') return sendSentence(response, 405, 'Only reading is possible here.');
  const file = files.get(address);
  if (file === undefined) return sendSentence(response, 404, 'There is nothing at this address.');
  sendFile(response, headers, file);
};

/** True when the request names this very server, so that no page elsewhere can reach it under a name of its own. */
const isForUs = (request: IncomingMessage, port: number): boolean =>
  [`127.0.0.1:${port}`, `localhost:${port}`].includes(request.headers.host ?? '');

const listen = (server: Server, port: number): Promise<number> =>
  new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => {
      const at = server.address();
      resolve(typeof at === 'object' && at !== null ? at.port : port);
    });
  });

const portTaken = (port: number): UserError =>
  new UserError({
    says: `Port ${port} on this machine is taken by another program.`,
    whatToDo: `Stop that program, or choose another port: npm start -- --port ${port + 1}.`,
  });

/**
 * Serves the built app and the boats of one folder on 127.0.0.1, for this machine only; port 0 takes any free one. Phones
 * are let in by a listener of their own, and only where `phones` is turned on.
 *
 * @throws UserError when the port is taken
 */
export const serve = async ({
  appFolder,
  folders,
  port,
  phones,
}: {
  appFolder: string;
  folders: Folders;
  port: number;
  /** what lets phones in; without it nothing can */
  phones?: PhonesSwitch;
}): Promise<{ port: number; close: () => void }> => {
  const files = servedApp(await readStaticFiles(appFolder));
  const sessions = liveSessions(headers);
  let own = port;
  const server = createServer((request, response) => {
    if (!isForUs(request, own)) return sendSentence(response, 403, 'This server answers to 127.0.0.1 only.');
    answer({ request, response, files, folders, sessions, phones }).catch(() =>
      sendSentence(response, 500, 'This is a fault in the program; the boats are safe.'),
    );
  });
  server.headersTimeout = 10_000;
  server.requestTimeout = 20_000;
  try {
    own = await listen(server, port);
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === 'EADDRINUSE') throw portTaken(port);
    throw cause;
  }
  return {
    port: own,
    close: () => {
      server.close();
      void phones?.close();
      // what is still recorded is written to its end first
      void sessions.stopAll().then(() => server.closeAllConnections());
    },
  };
};
