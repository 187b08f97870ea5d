import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { UserError } from '../core/boat/user-error.ts';
import { readStaticFiles, type StaticFile } from './static-files.ts';

/** What the app may ask for; the boats come from a folder, never from a path in an address. */
export interface BoatStore {
  readonly list: () => Promise<readonly { readonly id: string; readonly name: string; readonly says: string }[]>;
  readonly text: (id: string) => Promise<string | undefined>;
}

const headers = {
  'content-security-policy':
    "default-src 'none'; script-src 'self'; worker-src 'self'; style-src 'self'; font-src 'self'; img-src 'self' data: blob:; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
} as const;

const send = (
  response: ServerResponse,
  { status, type, body, cache = 'no-store' }: { status: number; type: string; body: string | Buffer; cache?: string },
): void => {
  response.writeHead(status, { ...headers, 'content-type': type, 'cache-control': cache });
  response.end(body);
};

const sendJson = (response: ServerResponse, status: number, value: unknown): void =>
  send(response, { status, type: 'application/json; charset=utf-8', body: JSON.stringify(value) });

const boatAddress = /^\/api\/boats\/([a-z0-9][a-z0-9-]*)$/i;

const answer = async ({
  request,
  response,
  files,
  store,
}: {
  request: IncomingMessage;
  response: ServerResponse;
  files: ReadonlyMap<string, StaticFile>;
  store: BoatStore;
}): Promise<void> => {
  const address = (request.url ?? '/').split('?')[0] ?? '/';
  if (request.method !== 'GET') return sendJson(response, 405, { says: 'Only reading is possible here.' });
  if (address === '/api/boats') return sendJson(response, 200, await store.list());
  const id = boatAddress.exec(address)?.[1];
  if (id !== undefined) {
    const text = await store.text(id);
    if (text === undefined) return sendJson(response, 404, { says: `There is no boat "${id}" in the folder.` });
    return send(response, { status: 200, type: 'application/json; charset=utf-8', body: text });
  }
  const file = files.get(address);
  if (file === undefined) return sendJson(response, 404, { says: 'There is nothing at this address.' });
  const cache = file.lasting ? 'public, max-age=31536000, immutable' : 'no-cache';
  send(response, { status: 200, type: file.type, body: file.body, cache });
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
 * Serves the built app and the boats of one folder on 127.0.0.1, for this machine only; port 0 takes any free one.
 *
 * @throws UserError when the port is taken
 */
export const serve = async ({
  appFolder,
  store,
  port,
}: {
  appFolder: string;
  store: BoatStore;
  port: number;
}): Promise<{ port: number; close: () => void }> => {
  const files = await readStaticFiles(appFolder);
  let own = port;
  const server = createServer((request, response) => {
    if (!isForUs(request, own)) return sendJson(response, 403, { says: 'This server answers to 127.0.0.1 only.' });
    answer({ request, response, files, store }).catch(() =>
      sendJson(response, 500, { says: 'This is a fault in the program; the boats are safe.' }),
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
  return { port: own, close: () => server.close() };
};
