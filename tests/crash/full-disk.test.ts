import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { boatFolder } from '../../src/node/boat-folder.ts';
import { serve } from '../../src/server/serve.ts';

const gannet = readFileSync(new URL('../../examples/gannet/gannet.boat.json', import.meta.url), 'utf8');
const named = (name: string): string => gannet.replace('"name": "Gannet"', `"name": "${name}"`);

/** A disk of some kilobytes of its own; undefined where this machine lends none. */
const smallDisk = (sizeKb: number): string | undefined => {
  const folder = mkdtempSync(join(tmpdir(), 'fairlead-disk-'));
  const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', `size=${sizeKb}k`, 'tmpfs', folder]);
  if (mounted.status !== 0) {
    rmSync(folder, { recursive: true });
    return undefined;
  }
  onTestFinished(() => {
    spawnSync('umount', [folder]);
    rmSync(folder, { recursive: true, force: true });
  });
  return folder;
};

const mayMount = process.getuid?.() === 0 && spawnSync('mount', ['--version']).status === 0;

test.runIf(mayMount)(
  'a full disk is told, nothing is lost or half-written, and there is room again after',
  async (context) => {
    const disk = smallDisk(2000);
    if (disk === undefined) return context.skip();
    const [folder, appFolder] = [join(disk, 'boats'), join(disk, 'app')];
    for (const one of [folder, appFolder]) mkdirSync(one);
    writeFileSync(join(appFolder, 'index.html'), '<p>app</p>');
    const path = join(folder, 'gannet.boat.json');
    writeFileSync(path, gannet);
    const boats = boatFolder(folder);
    const { port, close } = await serve({ appFolder, folders: { boats, demos: boats }, port: 0 });
    onTestFinished(close);
    const address = `http://127.0.0.1:${port}`;
    const save = async (text: string) => {
      const tag = (await fetch(`${address}/api/boats/gannet`)).headers.get('etag') ?? '';
      const headers = { origin: address, 'content-type': 'application/json', 'if-match': tag };
      const answer = await fetch(`${address}/api/boats/gannet`, { method: 'PUT', body: text, headers });
      return { status: answer.status, ...((await answer.json()) as { says?: string }) };
    };
    const ballast = join(disk, 'ballast');
    try {
      writeFileSync(ballast, Buffer.alloc(4_000_000));
    } catch {
      // as full as it gets
    }
    for (let turn = 0; turn < 3; turn += 1) {
      expect(await save(named('Skua'))).toEqual({
        status: 422,
        says: 'The disk is full; the file is as it was before.',
        whatToDo: 'Make room, or save to another disk.',
      });
      expect(readFileSync(path, 'utf8')).toBe(gannet);
    }
    expect(readdirSync(folder, { recursive: true }).filter((name) => String(name).endsWith('.tmp'))).toEqual([]);
    rmSync(ballast);
    expect((await save(named('Skua'))).status).toBe(200);
    expect(readFileSync(path, 'utf8')).toBe(named('Skua'));
  },
);
