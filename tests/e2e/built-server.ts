import { type ChildProcess, spawn } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../../', import.meta.url));

/** Starts the built server on a folder of boats, with what else is said at its start, and waits until it says where it is. */
export const startServer = async (
  folder: string,
  ...said: readonly string[]
): Promise<{ server: ChildProcess; address: string }> => {
  const program = `${root}dist/cli/main.js`;
  if (!existsSync(program)) throw new Error('The app is not built: run npm run build first.');
  const server = spawn(process.execPath, [program, 'open', folder, '--port', '0', ...said], { cwd: root });
  const address = await new Promise<string>((resolve, reject) => {
    let told = '';
    const listen = (chunk: Buffer): void => {
      told += chunk.toString();
      const found = /http:\/\/127\.0\.0\.1:\d+/.exec(told);
      if (found !== null) resolve(found[0]);
    };
    server.stdout.on('data', listen);
    server.stderr.on('data', listen);
    server.once('exit', () => reject(new Error(`The server stopped at once and said: ${told}`)));
  });
  return { server, address };
};

/** The built server on a folder of its own, which go with the process at the latest. */
export interface OwnServer {
  readonly address: string;
  readonly folder: string;
  /** puts the demo boats back as they come, where it has them */
  readonly putBack: () => void;
  /** puts them back, and takes all else out of the folder */
  readonly empty: () => void;
  readonly end: () => void;
}

// a process that is told to end tidies up as well
process.once('SIGTERM', () => process.exit());

/** Starts the built server on a new folder, with the demo boats in it or with nothing. */
export const ownServer = async ({ demos }: { demos: boolean }): Promise<OwnServer> => {
  const folder = mkdtempSync(join(tmpdir(), 'fairlead-boats-'));
  const putBack = (): void => {
    if (demos) cpSync(`${root}examples`, folder, { recursive: true });
  };
  const empty = (): void => {
    for (const name of readdirSync(folder)) rmSync(join(folder, name), { recursive: true });
    putBack();
  };
  putBack();
  const { server, address } = await startServer(folder);
  const end = (): void => {
    process.off('exit', end);
    server.kill();
    rmSync(folder, { recursive: true, force: true });
  };
  process.once('exit', end);
  return { address, folder, putBack, empty, end };
};
