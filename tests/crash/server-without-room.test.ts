import { mkdirSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { type AddressInfo, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test, vi } from 'vitest';
import { aBoat } from '../../src/core/boat/a-boat.test-helper.ts';
import { writeBoat } from '../../src/core/boat/write-boat.ts';
import { writeSheet } from '../../src/core/boat/write-sheet.ts';
import { typicalSheets } from '../../src/core/facts/sheets/index.ts';
import type { LogEntry } from '../../src/core/log/log-entry.ts';
import { startRecorder } from '../../src/live/recorder.ts';
import { boatFolder } from '../../src/node/boat-folder.ts';
import { contentHash } from '../../src/node/files/content-hash.ts';
import { addToLog } from '../../src/node/files/log-file.ts';
import { saveBoat } from '../../src/node/files/save-boat.ts';
import { writeSet } from '../../src/node/files/write-set.ts';
import { pictureFolder } from '../../src/node/picture-folder.ts';
import { serve } from '../../src/server/serve.ts';
import { contentsOf, lendsDisks, smallDisk } from './small-disk.ts';

const named = (name: string): string => writeBoat(aBoat().with({ name }).boat);
const picture = new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, ...Array(6000).fill(7)]);
const [sheet] = typicalSheets;
if (sheet === undefined) throw new Error('there are no typical sheets');

const note = (id: string, text = 'found'): LogEntry => ({
  kind: 'note',
  id,
  at: '2027-03-31T09:30:00Z',
  about: [],
  text,
});

/** A server on a folder, and what a page asks of it. */
const served = async (folder: string) => {
  const appFolder = mkdtempSync(join(tmpdir(), 'fairlead-app-'));
  onTestFinished(() => rmSync(appFolder, { recursive: true }));
  writeFileSync(join(appFolder, 'index.html'), '<p>app</p>');
  const boats = boatFolder(folder);
  const { port, close } = await serve({ appFolder, folders: { boats, demos: boats }, port: 0 });
  onTestFinished(close);
  const origin = `http://127.0.0.1:${port}`;
  const asked = async (
    method: string,
    path: string,
    body: string | typeof picture,
    headers: Record<string, string> = {},
  ) => {
    const own = { origin, 'content-type': typeof body === 'string' ? 'application/json' : 'image/png', ...headers };
    const answer = await fetch(`${origin}/api/${path}`, {
      method,
      ...(method === 'GET' ? {} : { body }),
      headers: own,
    });
    // reason: what is looked at below is compared whole
    const told = (await answer.json()) as { says?: string; recording?: { kind: string; says?: string } };
    return {
      status: answer.status,
      retryAfter: answer.headers.get('retry-after'),
      tag: answer.headers.get('etag') ?? '',
      ...told,
    };
  };
  return {
    asked,
    read: (path: string) => asked('GET', path, ''),
    save: async (text: string, tag: string) => asked('PUT', 'boats/tern', text, { 'if-match': tag }),
    addNotes: (...notes: readonly unknown[]) => asked('POST', 'boats/tern/log', JSON.stringify(notes)),
    keepPicture: () => asked('PUT', `boats/tern/files/${contentHash(picture)}`, picture),
    keepSheet: () => asked('POST', 'sheets', writeSheet(sheet)),
  };
};

/** Something that talks and talks. */
const talker = async (): Promise<number> => {
  const server = createServer((socket) => {
    socket.on('error', () => undefined);
    const saying = setInterval(() => socket.write('$SDDPT,12.3,-1.5*4E\r\n'.repeat(20)), 5);
    socket.on('close', () => clearInterval(saying));
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  onTestFinished(() => void server.close());
  return (server.address() as AddressInfo).port;
};

test.runIf(lendsDisks)(
  'what the app sends to a full disk is refused in words, to be sent again, and goes in later',
  async (context) => {
    const disk = smallDisk(600);
    if (disk === undefined) return context.skip('no disk is lent here');
    const folder = join(disk.folder, 'boats');
    mkdirSync(folder);
    writeFileSync(join(folder, 'tern.boat.json'), named('Tern'));
    const page = await served(folder);
    const { tag } = await page.read('boats/tern');
    await page.addNotes(note('before01'));
    const log = (): string => readFileSync(join(folder, 'tern.log.jsonl'), 'utf8');
    disk.fill();
    const before = contentsOf(folder);
    const full = { status: 503, says: expect.stringContaining('The disk is full') };
    for (let turn = 0; turn < 2; turn += 1) {
      // part of so many lines still has room behind the one that is there
      const notes = Array.from({ length: 20 }, (_, at) => note(`later${100 + at}`, 'x'.repeat(900)));
      expect(await page.addNotes(...notes)).toMatchObject({ ...full, retryAfter: '30' });
      expect(await page.save(named('Skua'), tag)).toMatchObject(full);
      expect(await page.keepPicture()).toMatchObject(full);
      expect(await page.keepSheet()).toMatchObject({ ...full, status: 422 });
      expect({ ...before, ...contentsOf(folder) }).toMatchObject(before);
      expect(readdirSync(folder, { recursive: true }).filter((name) => /fairlead/.test(String(name)))).toEqual([]);
    }
    disk.makeRoom();
    expect(await page.addNotes(note('after001'))).toMatchObject({ status: 200 });
    expect((await page.save(named('Skua'), tag)).status).toBe(200);
    expect((await page.keepPicture()).status).toBe(200);
    expect((await page.keepSheet()).status).toBe(201);
    expect(
      log()
        .split('\n')
        .map((line) => line.slice(0, 32)),
    ).toEqual([expect.stringContaining('before01'), expect.stringContaining('after001'), '']);
  },
);

test.runIf(lendsDisks)(
  'a recording that fills the disk is told, keeps whole lines, and lets the rest go on',
  async (context) => {
    const disk = smallDisk(200);
    if (disk === undefined) return context.skip('no disk is lent here');
    writeFileSync(join(disk.folder, 'tern.boat.json'), named('Tern'));
    const page = await served(disk.folder);
    const wish = { source: { kind: 'tcp', host: '127.0.0.1', port: await talker() }, record: true };
    expect((await page.asked('POST', 'boats/tern/live', JSON.stringify(wish))).status).toBe(201);
    await vi.waitFor(async () => expect((await page.read('boats/tern/live')).recording?.kind).toBe('stopped'), 20_000);
    const { recording } = await page.read('boats/tern/live');
    expect(recording?.says).toBe('The disk is full: recording has stopped, listening goes on.');
    await page.asked('DELETE', 'boats/tern/live', '{}');
    const [name = ''] = readdirSync(join(disk.folder, 'tern.recordings'));
    const lines = readFileSync(join(disk.folder, 'tern.recordings', name), 'latin1').split('\n');
    expect(lines.pop()).toBe('');
    expect(lines.length).toBeGreaterThan(100);
    expect(lines.filter((line) => !/^(#|\(\d+\.\d{6}\) \$SDDPT,12\.3,-1\.5\*4E$)/.test(line))).toEqual([]);
    // one that finds no room at all leaves no empty file
    disk.fill();
    await page.asked('POST', 'boats/tern/live', JSON.stringify(wish));
    await vi.waitFor(async () => expect((await page.read('boats/tern/live')).recording?.kind).toBe('stopped'), 20_000);
    await page.asked('DELETE', 'boats/tern/live', '{}');
    expect(readdirSync(join(disk.folder, 'tern.recordings'))).toEqual([name]);
  },
);

test('a folder that is taken away under the app is told, and what was to be saved goes in when it is back', async () => {
  const above = mkdtempSync(join(tmpdir(), 'fairlead-away-'));
  onTestFinished(() => rmSync(above, { recursive: true }));
  const folder = join(above, 'boats');
  mkdirSync(folder);
  writeFileSync(join(folder, 'tern.boat.json'), named('Tern'));
  const page = await served(folder);
  const { tag } = await page.read('boats/tern');
  renameSync(folder, join(above, 'elsewhere'));
  const gone = { status: 503, says: expect.stringContaining('The folder of the boats is not there any more') };
  expect(await page.read('boats')).toMatchObject(gone);
  expect(await page.read('boats/tern')).toMatchObject(gone);
  expect(await page.save(named('Skua'), tag)).toMatchObject(gone);
  expect(await page.addNotes(note('later001'))).toMatchObject(gone);
  expect(await page.keepPicture()).toMatchObject(gone);
  expect(readdirSync(above)).toEqual(['elsewhere']);
  renameSync(join(above, 'elsewhere'), folder);
  expect((await page.save(named('Skua'), tag)).status).toBe(200);
  // a folder in the place of the file, and one in the place of the log
  rmSync(join(folder, 'tern.boat.json'));
  for (const name of ['tern.boat.json', 'gull.log.jsonl']) mkdirSync(join(folder, name));
  writeFileSync(join(folder, 'gull.boat.json'), named('Gull'));
  expect((await page.save(named('Tern'), tag)).status).toBe(404);
  expect(await page.asked('POST', 'boats/gull/log', JSON.stringify([note('later002')]))).toMatchObject({
    status: 503,
    says: 'This is a folder, not a file.',
  });
});

test.runIf(process.getuid?.() === 0)('who may not write into a folder is told, and nothing is changed', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'fairlead-barred-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  const path = join(folder, 'tern.boat.json');
  writeFileSync(path, named('Tern'), { mode: 0o644 });
  const before = contentsOf(folder);
  const barred = { says: 'This program may not use the file or its folder.' };
  const tries: readonly (() => Promise<unknown>)[] = [
    () => saveBoat({ path, text: named('Skua') }),
    () => saveBoat({ path: join(folder, 'new.boat.json'), text: named('Skua'), isNew: true }),
    () => addToLog(path, [note('later001')]),
    () => writeSet(join(folder, 'papers'), [['boat.svg', 'new']]),
    () => pictureFolder(path).keep(picture),
    async () => startRecorder(join(folder, 'live.log')),
    () => boatFolder(folder).newRecording('tern', 0),
  ];
  // somebody without the rights of the one who runs the tests
  process.seteuid?.(65_534);
  try {
    for (const one of tries) await expect(one()).rejects.toMatchObject(barred);
  } finally {
    process.seteuid?.(0);
  }
  expect(contentsOf(folder)).toEqual(before);
});
