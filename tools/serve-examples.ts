import { spawn } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Serves the boats of a folder with the built app on a free port, with what else is said at its start, for pictures and measures. */
export const serveBoats = async (
  folder: string,
  ...said: readonly string[]
): Promise<{ address: string; stop: () => void }> => {
  const server = spawn(process.execPath, [`${root}dist/cli/main.js`, 'open', folder, '--port', '0', ...said]);
  const address = await new Promise<string>((found) => {
    server.stdout.on('data', (data: Buffer) => {
      const at = /http:\/\/127\.0\.0\.1:\d+/.exec(String(data))?.[0];
      if (at !== undefined) found(at);
    });
  });
  return { address, stop: () => server.kill() };
};

/** Serves a copy of the demo boats: what is tried on them is written beside them, and the examples stay as they come. */
export const serveExamples = async (...said: readonly string[]): ReturnType<typeof serveBoats> => {
  const folder = mkdtempSync(join(tmpdir(), 'fairlead-examples-'));
  cpSync(`${root}examples`, folder, { recursive: true });
  const { address, stop } = await serveBoats(folder, ...said);
  return {
    address,
    stop: () => {
      stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
};
