import { readdir, readFile } from 'node:fs/promises';
import { extname, join } from 'node:path';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.ttf': 'font/ttf',
  '.woff2': 'font/woff2',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.json': 'application/json; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
};

export interface StaticFile {
  readonly type: string;
  readonly body: Buffer;
  /** files whose name carries a hash of their content never change */
  readonly lasting: boolean;
}

/**
 * The files of the built app by address. All are listed and read once at the start, so no address typed by anyone is ever turned into a path.
 */
export const readStaticFiles = async (folder: string): Promise<ReadonlyMap<string, StaticFile>> => {
  const files = new Map<string, StaticFile>();
  const read = async (inside: string, address: string): Promise<void> => {
    for (const entry of await readdir(inside, { withFileTypes: true })) {
      const path = join(inside, entry.name);
      if (entry.isDirectory()) await read(path, `${address}${entry.name}/`);
      else {
        const type = types[extname(entry.name)] ?? 'application/octet-stream';
        files.set(`${address}${entry.name}`, {
          type,
          body: await readFile(path),
          lasting: address.startsWith('/assets/'),
        });
      }
    }
  };
  await read(folder, '/');
  const index = files.get('/index.html');
  if (index !== undefined) files.set('/', index);
  return files;
};
