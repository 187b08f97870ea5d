import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const built = fileURLToPath(new URL('../../dist/web/', import.meta.url));
const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
};

/** A host that hands out the built files under a path and knows nothing of boats; it can be switched off and on again. */
export const hostOfFiles = async (path: string) => {
  let isOn = true;
  const server = createServer((request, response) => {
    if (!isOn) {
      request.socket.destroy();
      return;
    }
    const asked = new URL(request.url ?? '/', 'http://host').pathname;
    const file = asked.startsWith(path) ? asked.slice(path.length) || 'index.html' : undefined;
    const isPlain = file !== undefined && !file.includes('..');
    void (isPlain ? readFile(join(built, file)) : Promise.reject(new Error('elsewhere'))).then(
      (body) =>
        response.writeHead(200, { 'content-type': types[extname(file ?? '')] ?? 'application/octet-stream' }).end(body),
      () => response.writeHead(404).end(),
    );
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const at = server.address();
  const port = typeof at === 'object' && at !== null ? at.port : 0;
  return {
    address: `http://127.0.0.1:${port}${path}`,
    switchOff: (): void => {
      isOn = false;
      server.closeAllConnections();
    },
    close: (): void => {
      server.close();
      server.closeAllConnections();
    },
  };
};
