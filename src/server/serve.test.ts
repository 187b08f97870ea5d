import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { request as httpRequest } from 'node:http';
import { join } from 'node:path';
import { runInNewContext } from 'node:vm';
import { expect, onTestFinished, test } from 'vitest';
import { aBoat } from '../core/boat/a-boat.test-helper.ts';
import { writeBoat } from '../core/boat/write-boat.ts';
import { writeSheet } from '../core/boat/write-sheet.ts';
import { boatFolder } from '../node/boat-folder.ts';
import { contentHash } from '../node/files/content-hash.ts';
import { tempFolder } from '../node/files/temp-folder.test-helper.ts';
import { serve } from './serve.ts';

const named = (name: string): string => writeBoat(aBoat().with({ name }).boat);

/** A server on a folder with one boat, Tern, and an app of one page. */
const server = async ({ page = '<p>app</p>' } = {}) => {
  const [appFolder, folder] = [tempFolder(), tempFolder()];
  writeFileSync(join(appFolder, 'index.html'), page);
  const path = join(folder, 'tern.boat.json');
  writeFileSync(path, named('Tern'));
  const { port, close } = await serve({
    appFolder,
    folders: { boats: boatFolder(folder), demos: boatFolder(join(import.meta.dirname, '../../examples')) },
    port: 0,
  });
  onTestFinished(close);
  const address = `http://127.0.0.1:${port}`;
  const read = async (id = 'tern') => {
    const response = await fetch(`${address}/api/boats/${id}`);
    return { status: response.status, text: await response.text(), tag: response.headers.get('etag') ?? '' };
  };
  /** writes as the app does, but for what `headers` says otherwise */
  const write = async (method: string, at: string, { body = '', headers = {} }: Wish = {}) => {
    const own = { origin: address, 'content-type': 'application/json' };
    const response = await fetch(`${address}${at}`, { method, body, headers: { ...own, ...headers } });
    return { status: response.status, tag: response.headers.get('etag') ?? '', json: await response.json() };
  };
  return { address, folder, path, read, write };
};

interface Wish {
  readonly body?: BodyInit;
  readonly headers?: Record<string, string>;
}

const held = (path: string): string => readFileSync(path, 'utf8');

test('a boat is saved over what was read, and the one before it is kept', async () => {
  const { folder, path, read, write } = await server();
  const { tag } = await read();
  const saved = await write('PUT', '/api/boats/tern', { body: named('Skua'), headers: { 'if-match': tag } });
  expect(saved.status).toBe(200);
  expect(held(path)).toBe(named('Skua'));
  expect((await read()).tag).toBe(saved.tag);
  const [backup = ''] = readdirSync(join(folder, 'tern.backups'));
  expect(held(join(folder, 'tern.backups', backup))).toBe(named('Tern'));
});

test('a file that was changed meanwhile is not saved over', async () => {
  const { path, read, write } = await server();
  const { tag } = await read();
  writeFileSync(path, named('Tern, by hand'));
  const saved = await write('PUT', '/api/boats/tern', { body: named('Skua'), headers: { 'if-match': tag } });
  expect(saved).toMatchObject({ status: 412, json: { says: expect.stringContaining('changed by something else') } });
  expect(held(path)).toBe(named('Tern, by hand'));
});

test('what is no boat is refused with its sentence, and nothing is written', async () => {
  const { folder, path, read, write } = await server();
  const headers = { 'if-match': (await read()).tag };
  const broken = await write('PUT', '/api/boats/tern', { body: '{ "format": "fairlead-boat", ', headers });
  expect(broken).toMatchObject({ status: 422, json: { says: expect.stringMatching(/\.$/) } });
  expect((await write('POST', '/api/boats', { body: '{}' })).status).toBe(422);
  expect(held(path)).toBe(named('Tern'));
  expect(readdirSync(folder)).toEqual(['tern.boat.json']);
});

test.each<[string, number, Record<string, string>]>([
  ['a page elsewhere', 403, { origin: 'http://elsewhere.example' }],
  ['a page of another port', 403, { origin: 'http://127.0.0.1:1' }],
  ['a page that says where it is not', 403, { 'sec-fetch-site': 'cross-site' }],
  ['a form', 415, { 'content-type': 'text/plain' }],
  ['somebody who read nothing', 428, { 'if-match': '' }],
  ['somebody who would save over anything', 428, { 'if-match': '*' }],
])('%s writes nothing', async (_, status, headers) => {
  const { path, read, write } = await server();
  const body = named('Skua');
  const saved = await write('PUT', '/api/boats/tern', {
    body,
    headers: { 'if-match': (await read()).tag, ...headers },
  });
  expect(saved.status).toBe(status);
  expect(held(path)).toBe(named('Tern'));
});

test('a request without an origin writes nothing', async () => {
  const { address, path, read } = await server();
  const headers = { 'content-type': 'application/json', 'if-match': (await read()).tag };
  const status = await new Promise((done) => {
    const { hostname, port } = new URL(address);
    const sent = httpRequest({ hostname, port, method: 'PUT', path: '/api/boats/tern', headers }, (response) =>
      done(response.statusCode),
    );
    sent.end(named('Skua'));
  });
  expect(status).toBe(403);
  expect(held(path)).toBe(named('Tern'));
});

test('more than 16 MB is refused, whether the length is told or not', async () => {
  const { address, path, read } = await server();
  const { hostname, port } = new URL(address);
  const own = { origin: address, 'content-type': 'application/json', 'if-match': (await read()).tag };
  const statusOf = (headers: Record<string, string>) =>
    new Promise((done) => {
      const wish = { hostname, port, method: 'PUT', path: '/api/boats/tern', headers: { ...own, ...headers } };
      const sent = httpRequest(wish, (response) => done(response.statusCode));
      sent.on('error', () => undefined);
      if ('content-length' in headers) sent.flushHeaders();
      else sent.end(' '.repeat(16_000_001));
    });
  expect(await statusOf({ 'content-length': '16000001' })).toBe(413);
  expect(await statusOf({ 'transfer-encoding': 'chunked' })).toBe(413);
  expect(held(path)).toBe(named('Tern'));
});

test('a new boat gets a free name of its own, and no address names a file', async () => {
  const { folder, write } = await server();
  expect(await write('POST', '/api/boats', { body: named('Tern') })).toMatchObject({
    status: 201,
    json: { id: 'tern-2' },
  });
  expect(await write('POST', '/api/boats', { body: named('../Skua') })).toMatchObject({ json: { id: 'skua' } });
  expect(readdirSync(folder).sort()).toEqual(['skua.boat.json', 'tern-2.boat.json', 'tern.boat.json']);
  for (const at of ['/api/boats/gull', '/api/boats/..%2Fgull', '/api/boats/%E0%A4%A']) {
    const headers = { 'if-match': `"${'0'.repeat(64)}"` };
    expect((await write('PUT', at, { body: named('Gull'), headers })).status).toBeGreaterThanOrEqual(404);
  }
  expect(readdirSync(folder)).toHaveLength(3);
});

test('a boat file with a blank, a dot or a letter of another alphabet in its name is opened by the id on the list', async () => {
  const { address, folder, read } = await server();
  const names = ['my boat', 'tern.v2', 'Möwe'];
  for (const name of names) writeFileSync(join(folder, `${name}.boat.json`), named(name));
  const list: { id: string; name: string }[] = await (await fetch(`${address}/api/boats`)).json();
  for (const name of names) {
    const { id } = list.find((boat) => boat.name === name) ?? { id: '' };
    expect((await read(encodeURIComponent(id))).text).toBe(named(name));
  }
});

test('a folder inside that is none of ours does not keep the others from being listed', async () => {
  const { address, folder } = await server();
  mkdirSync(join(folder, 'inside'));
  writeFileSync(join(folder, 'inside', 'skua.boat.json'), named('Skua'));
  writeFileSync(join(folder, 'big.boat.json'), ' '.repeat(16_000_001));
  expect(await (await fetch(`${address}/api/boats`)).json()).toMatchObject([
    { id: 'big', says: expect.stringContaining('at most 16 MB') },
    { id: 'skua', name: 'Skua' },
    { id: 'tern', name: 'Tern' },
  ]);
});

test('a boat that is still what the page has is not sent again', async () => {
  const { address, path, read } = await server();
  const { tag } = await read();
  const ask = () => fetch(`${address}/api/boats/tern`, { headers: { 'if-none-match': tag } });
  const same = await ask();
  expect([same.status, await same.text()]).toEqual([304, '']);
  writeFileSync(path, named('Tern, by hand'));
  const other = await ask();
  expect([other.status, await other.text()]).toEqual([200, named('Tern, by hand')]);
  expect(other.headers.get('fairlead-folder')).toBe(same.headers.get('fairlead-folder'));
  expect(other.headers.get('fairlead-folder')).toMatch(/^[0-9a-f]{16}$/);
});

test('what a boat was before each save is listed, the newest first, and can be read and not written', async () => {
  const { address, read, write } = await server();
  const { text, tag } = await read();
  expect(await (await fetch(`${address}/api/boats/tern/states`)).json()).toEqual([]);
  await write('PUT', '/api/boats/tern', { body: named('Skua'), headers: { 'if-match': tag } });
  const states: { id: string; untilMs: number }[] = await (await fetch(`${address}/api/boats/tern/states`)).json();
  expect(states).toHaveLength(1);
  expect(Math.abs((states[0]?.untilMs ?? 0) - Date.now())).toBeLessThan(60_000);
  const at = `/api/boats/tern/states/${states[0]?.id}`;
  expect(await (await fetch(`${address}${at}`)).text()).toBe(text);
  expect((await write('PUT', at, { body: named('Skua'), headers: { 'if-match': tag } })).status).toBe(405);
  expect((await fetch(`${address}/api/boats/tern/states/2026-01-01`)).status).toBe(404);
  expect((await fetch(`${address}/api/boats/tern/states/..%2Ftern`)).status).toBe(404);
  expect((await fetch(`${address}/api/boats/nobody/states`)).status).toBe(404);
});

test('a damaged boat is put back from its newest good state by the app alone, and the damaged file is kept', async () => {
  const { address, folder, path, read, write } = await server();
  const at = '/api/boats/tern/damaged';
  const { tag } = await read();
  await write('PUT', '/api/boats/tern', { body: named('Skua'), headers: { 'if-match': tag } });
  const half = named('Skua').slice(0, 400);
  writeFileSync(path, half);
  const response = await fetch(`${address}${at}`);
  const { good }: { good: { text: string } } = await response.json();
  expect(good.text).toBe(named('Tern'));
  const damagedTag = response.headers.get('etag') ?? '';
  expect(damagedTag).toBe((await read()).tag);
  expect(response.headers.get('fairlead-folder')).toMatch(/^[0-9a-f]{16}$/);
  const headers = { 'if-match': damagedTag };
  expect(
    (await write('PUT', at, { body: good.text, headers: { ...headers, origin: 'http://elsewhere' } })).status,
  ).toBe(403);
  expect((await write('PUT', at, { body: good.text })).status).toBe(428);
  expect((await write('PUT', at, { body: half, headers })).status).toBe(422);
  expect((await write('PUT', at, { body: good.text, headers: { 'if-match': tag } })).status).toBe(412);
  expect(held(path)).toBe(half);
  expect((await write('PUT', at, { body: good.text, headers })).status).toBe(200);
  expect(held(path)).toBe(named('Tern'));
  const aside = readdirSync(join(folder, 'tern.backups')).filter((name) => name.endsWith('.damaged.json'));
  expect(aside.map((name) => held(join(folder, 'tern.backups', name)))).toEqual([half]);
  expect((await write('PUT', at, { body: good.text, headers: { 'if-match': (await read()).tag } })).status).toBe(412);
  expect((await fetch(`${address}/api/boats/none/damaged`)).status).toBe(404);
});

test('a boat of a newer program is on the list as what it is, and is never put back', async () => {
  const { address, path, read, write } = await server();
  const newer = named('Tern').replace('"version": 1', '"version": 2');
  writeFileSync(path, newer);
  const [listed]: { name: string; says: string }[] = await (await fetch(`${address}/api/boats`)).json();
  expect(listed?.name).toBe('Tern');
  expect(listed?.says).toContain('written by a newer Fairlead: to look at only');
  const { tag } = await read();
  const put = await write('PUT', '/api/boats/tern/damaged', { body: named('Skua'), headers: { 'if-match': tag } });
  expect(put.status).toBe(422);
  expect(held(path)).toBe(newer);
});

test('the demo boats may be read and not written', async () => {
  const { address, write } = await server();
  const demos: { id: string }[] = await (await fetch(`${address}/api/demos`)).json();
  expect(demos.map(({ id }) => id)).toContain('gannet');
  const gannet = await fetch(`${address}/api/demos/gannet`);
  const headers = { 'if-match': gannet.headers.get('etag') ?? '' };
  expect((await write('PUT', '/api/demos/gannet', { body: named('Gannet'), headers })).status).toBe(405);
  expect((await write('POST', '/api/demos', { body: named('Gannet') })).status).toBe(405);
});

const picture = new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 1, 2, 3]);
const pictureHash = contentHash(picture);
const pictureAt = (hash: string, shelf = 'boats/tern'): string => `/api/${shelf}/files/${hash}`;
const asJpeg = { 'content-type': 'image/jpeg' };

test('a picture is kept beside the boat under its hash, and read as the picture it is', async () => {
  const { address, folder, write } = await server();
  const kept = await write('PUT', pictureAt(pictureHash), { body: picture, headers: asJpeg });
  expect(kept).toMatchObject({ status: 200, json: { hash: pictureHash } });
  expect(readdirSync(join(folder, 'tern.files'))).toEqual([`${pictureHash}.jpeg`]);
  const response = await fetch(`${address}${pictureAt(pictureHash)}`);
  expect(response.headers.get('content-type')).toBe('image/jpeg');
  expect(response.headers.get('x-content-type-options')).toBe('nosniff');
  expect(new Uint8Array(await response.arrayBuffer())).toEqual(picture);
  expect((await fetch(`${address}${pictureAt('0'.repeat(64))}`)).status).toBe(404);
});

test('the pictures beside a boat are listed by hash, but for one that no longer holds what its name says', async () => {
  const { address, folder, write } = await server();
  const list = async (): Promise<unknown> => (await fetch(`${address}/api/boats/tern/files`)).json();
  expect(await list()).toEqual([]);
  await write('PUT', pictureAt(pictureHash), { body: picture, headers: asJpeg });
  writeFileSync(join(folder, 'tern.files', `${'0'.repeat(64)}.jpeg`), picture);
  expect(await list()).toEqual([pictureHash]);
  expect((await fetch(`${address}/api/boats/gull/files`)).status).toBe(404);
  expect((await write('PUT', '/api/boats/tern/files', { body: picture, headers: asJpeg })).status).toBe(405);
});

test.each<[string, number, { at?: string; body?: BodyInit; headers?: Record<string, string> }]>([
  ['a page elsewhere', 403, { headers: { origin: 'http://elsewhere.example' } }],
  ['a page that says where it is not', 403, { headers: { 'sec-fetch-site': 'cross-site' } }],
  ['a form', 415, { headers: { 'content-type': 'text/plain' } }],
  ['a drawing that may hold a script', 415, { headers: { 'content-type': 'image/svg+xml' } }],
  ['a picture that is none', 422, { body: 'no picture', at: pictureAt(contentHash('no picture')) }],
  ['other bytes than the address says', 422, { at: pictureAt('0'.repeat(64)) }],
  ['a picture for a boat that is not there', 404, { at: pictureAt(pictureHash, 'boats/gull') }],
  ['a picture for a path', 404, { at: pictureAt(pictureHash, 'boats/..%2Fgull') }],
  ['a picture for a demo boat', 405, { at: pictureAt(pictureHash, 'demos/gannet') }],
  ['more than 8 MB', 413, { body: new Uint8Array(8_000_001) }],
])('%s keeps no picture', async (_, status, { at = pictureAt(pictureHash), body = picture, headers = {} }) => {
  const { folder, write } = await server();
  const kept = await write('PUT', at, { body, headers: { ...asJpeg, ...headers } });
  expect(kept.status).toBe(status);
  expect(readdirSync(folder)).toEqual(['tern.boat.json']);
});

test('a sheet is kept for the next boat, given to the page, and forgotten; one that is none is refused', async () => {
  const { address, folder, write } = await server();
  const [sheet] = aBoat().boat.sheets;
  if (sheet === undefined) throw new Error('no sheet');
  const kept = await write('POST', '/api/sheets', { body: writeSheet(sheet) });
  expect([kept.status, kept.json.name]).toEqual([201, sheet.name]);
  expect(readdirSync(join(folder, 'own-sheets'))).toEqual([`${kept.json.id}.sheet.json`]);
  const list = await (await fetch(`${address}/api/sheets`)).json();
  expect(list.map(({ id }: { id: string }) => id)).toEqual([kept.json.id]);
  const bad = await write('POST', '/api/sheets', { body: '{"format":"fairlead-boat"}' });
  expect([bad.status, bad.json.says]).toEqual([422, expect.stringContaining('fairlead-sheet')]);
  const elsewhere = { origin: 'http://elsewhere.example' };
  expect((await write('POST', '/api/sheets', { body: writeSheet(sheet), headers: elsewhere })).status).toBe(403);
  expect((await write('DELETE', `/api/sheets/${kept.json.id}`, { headers: elsewhere })).status).toBe(403);
  expect((await write('POST', '/api/sheets', { body: 'x'.repeat(1_000_001) })).status).toBe(413);
  expect((await write('DELETE', `/api/sheets/${kept.json.id}`)).status).toBe(200);
  expect((await write('DELETE', `/api/sheets/${kept.json.id}`)).status).toBe(404);
  expect(readdirSync(join(folder, 'own-sheets'))).toEqual([]);
});

test('the log of a boat is read, added to once for each entry, and only by the app itself', async () => {
  const { address, write } = await server();
  const at = '/api/boats/tern/log';
  const entry = { id: 'entry0001', at: '2027-03-31T09:30:00Z', kind: 'tick', of: 'job-1', done: true };
  const add = (sent: unknown, headers = {}) => write('POST', at, { body: JSON.stringify(sent), headers });
  const read = (headers = {}) => fetch(`${address}${at}`, { headers });
  expect(await (await read()).json()).toEqual({ text: '' });
  expect((await add([entry])).json).toEqual({ added: 1 });
  expect((await add([entry])).json).toEqual({ added: 0 });
  const now = await read();
  expect(await now.json()).toEqual({ text: `${JSON.stringify(entry)}\n` });
  expect((await read({ 'if-none-match': now.headers.get('etag') ?? '' })).status).toBe(304);
  const refused = [[entry, { kind: 'tick' }], 'noise', { entry }, Array.from({ length: 1001 }, () => entry)];
  for (const sent of refused) expect((await add(sent)).status).toBe(422);
  expect((await add([entry], { origin: 'http://elsewhere.example' })).status).toBe(403);
  expect((await add('x'.repeat(1_100_000))).status).toBe(413);
  expect((await write('POST', '/api/demos/gannet/log', { body: '[]' })).status).toBe(405);
  expect((await fetch(`${address}/api/boats/nobody/log`)).status).toBe(404);
});

test('the page is told that its boats are in a folder, and a worker left by another host at this address takes itself away', async () => {
  const { address } = await server({ page: '<meta name="fairlead-boats" content="browser" />' });
  for (const at of ['/', '/index.html']) {
    expect(await (await fetch(`${address}${at}`)).text()).toBe('<meta name="fairlead-boats" content="folder" />');
  }
  const worker = await fetch(`${address}/sw.js`);
  expect(worker.headers.get('content-type')).toMatch(/^text\/javascript/);
  expect(worker.headers.get('cache-control')).toBe('no-cache');
  const left: string[] = [];
  const heard = new Map<string, (event: { waitUntil: (work: Promise<void>) => void }) => void>();
  const page = { url: `${address}/`, navigate: async (url: string) => left.push(`again ${url}`) };
  const world = {
    addEventListener: (name: string, listener: (event: { waitUntil: (work: Promise<void>) => void }) => void) =>
      heard.set(name, listener),
    skipWaiting: () => left.push('at once'),
    caches: { keys: async () => ['old'], delete: async (name: string) => left.push(`no ${name}`) },
    registration: { unregister: async () => left.push('unregistered') },
    clients: { matchAll: async () => [page] },
  };
  runInNewContext(await worker.text(), world);
  let work: Promise<void> = Promise.resolve();
  const event = {
    waitUntil: (begun: Promise<void>) => {
      work = begun;
    },
  };
  heard.get('install')?.(event);
  heard.get('activate')?.(event);
  await work;
  expect(left).toEqual(['at once', 'no old', 'unregistered', `again ${address}/`]);
});
