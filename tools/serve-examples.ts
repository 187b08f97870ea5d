import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Serves the boats of a folder with the built app on a free port, for pictures and measures. */
export const serveBoats = async (folder: string): Promise<{ address: string; stop: () => void }> => {
  const server = spawn(process.execPath, [`${root}dist/cli/main.js`, 'open', folder, '--port', '0']);
  const address = await new Promise<string>((found) => {
    server.stdout.on('data', (data: Buffer) => {
      const at = /http:\/\/127\.0\.0\.1:\d+/.exec(String(data))?.[0];
      if (at !== undefined) found(at);
    });
  });
  return { address, stop: () => server.kill() };
};

/** Serves the demo boats. */
export const serveExamples = (): ReturnType<typeof serveBoats> => serveBoats(`${root}examples`);
