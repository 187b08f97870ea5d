import { mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { contentHash } from '../../node/files/content-hash.ts';
import { phonesUnderTest } from './phones-under-test.test-helper.ts';

const at = '2027-03-31T09:30:00Z';
const tick = (id: string) => ({ id, at, kind: 'tick', of: 'job-1', done: true });
const body = (...entries: unknown[]): string => JSON.stringify({ entries });
const post = (text: string) => ({ method: 'POST', body: text });
const jpeg = Buffer.concat([Buffer.from([0xff, 0xd8, 0xff, 0xe0]), Buffer.alloc(100, 7)]);
const put = (bytes: Uint8Array, type = 'image/jpeg') => ({
  method: 'PUT',
  body: bytes,
  headers: { 'content-type': type },
});
const log = '/api/phone/boats/tern/log';

test('a phone is paired by the code on the laptop, and reads the boats and what is to be done there', async () => {
  const { pair, atLaptop } = await phonesUnderTest();
  const { status, device, asks } = await pair();
  expect(status).toBe(201);
  expect(device).toMatchObject({ name: 'Anna' });
  expect((await asks('/api/phone/me')).json).toEqual(device);
  expect((await asks('/api/phone/boats')).json).toEqual([{ id: 'tern', name: 'Tern' }]);
  const sheet = await asks('/api/phone/boats/tern/sheet');
  expect(sheet.json).toMatchObject({ of: { name: 'Tern' } });
  const again = await asks('/api/phone/boats/tern/sheet', { headers: { 'if-none-match': String(sheet.headers.etag) } });
  expect(again).toMatchObject({ status: 304, text: '' });
  expect((await atLaptop('/api/phones')).json).toMatchObject({ on: true, devices: [{ name: 'Anna' }] });
});

test.each([
  ['no token', {}],
  ['a token of nobody', { authorization: `Bearer ${'A'.repeat(43)}` }],
  ['half a token', { authorization: 'Bearer A' }],
  ['a password', { authorization: 'Basic QTpB' }],
])('with %s a phone reads and writes nothing', async (_, headers) => {
  const { onPhone, folder, pair } = await phonesUnderTest();
  await pair();
  const before = readdirSync(folder);
  for (const path of ['me', 'boats', 'boats/tern/sheet', 'boats/tern/log', 'boats/nobody/log'])
    expect((await onPhone(`/api/phone/${path}`, { headers })).status).toBe(401);
  const json = { ...headers, 'content-type': 'application/json' };
  expect((await onPhone(log, { ...post(body(tick('entry00001'))), headers: json })).status).toBe(401);
  const picture = { ...put(jpeg), headers: { ...headers, 'content-type': 'image/jpeg' } };
  expect((await onPhone(`/api/phone/boats/tern/pictures/${contentHash(jpeg)}`, picture)).status).toBe(401);
  expect(readdirSync(folder)).toEqual(before);
});

test('what a phone ticks stands in the log of the boat, once and under the name of the phone', async () => {
  const { pair, folder } = await phonesUnderTest();
  const { asks } = await pair();
  const two = body(tick('entry00001'), { ...tick('entry00002'), by: 'The skipper' });
  expect(await asks(log, post(two))).toMatchObject({ status: 200, json: { added: 2 } });
  expect((await asks(log, post(two))).json).toEqual({ added: 0 });
  const lines = readFileSync(join(folder, 'tern.log.jsonl'), 'utf8');
  expect(lines.match(/"by":"Anna"/g)).toHaveLength(2);
  expect(lines).not.toContain('skipper');
  expect((await asks(log)).json).toEqual({ text: lines });
});

test('a phone cannot write what is no entry, too many of them, or in another form', async () => {
  const { pair, folder } = await phonesUnderTest();
  const { asks } = await pair();
  expect((await asks(log, post('{'))).status).toBe(422);
  expect((await asks(log, post(body({ ...tick('entry00001'), kind: 'boat' })))).status).toBe(422);
  expect((await asks(log, post(body(...Array(501).fill(tick('entry00001')))))).status).toBe(422);
  expect((await asks(log, post(' '.repeat(1_000_001)))).status).toBe(413);
  const unsaid = { 'transfer-encoding': 'chunked' };
  expect((await asks(log, { ...post(' '.repeat(1_000_001)), headers: unsaid })).status).toBe(413);
  const form = { 'content-type': 'text/plain' };
  expect((await asks(log, { ...post(body(tick('entry00001'))), headers: form })).status).toBe(415);
  const packed = { 'content-encoding': 'gzip' };
  expect((await asks(log, { ...post(body(tick('entry00001'))), headers: packed })).status).toBe(415);
  expect(readdirSync(folder)).not.toContain('tern.log.jsonl');
});

test('where the disk of the laptop refuses, the phone is told to keep what it has and come again', async () => {
  const { pair, folder } = await phonesUnderTest();
  const { asks } = await pair();
  mkdirSync(join(folder, 'tern.log.jsonl'));
  const refused = await asks(log, post(body(tick('entry00001'))));
  expect(refused).toMatchObject({ status: 503, headers: { 'retry-after': '30' } });
  // where a file lies on the laptop is no matter of a phone
  expect(refused.text).not.toContain(folder);
});

test('a picture lies beside the boat if its bytes are those its address names, and is a picture', async () => {
  const { pair, folder } = await phonesUnderTest();
  const { asks } = await pair();
  const address = (bytes: Uint8Array): string => `/api/phone/boats/tern/pictures/${contentHash(bytes)}`;
  expect((await asks(address(jpeg), put(jpeg))).status).toBe(200);
  expect((await asks(address(jpeg), put(jpeg))).status).toBe(200);
  expect(readdirSync(join(folder, 'tern.files'))).toEqual([`${contentHash(jpeg)}.jpeg`]);
  const script = Buffer.from('<script>');
  expect((await asks(address(script), put(script))).status).toBe(422);
  expect((await asks(address(script), put(jpeg))).status).toBe(422);
  expect((await asks(address(jpeg), put(jpeg, 'text/html'))).status).toBe(415);
  const large = Buffer.alloc(8_000_001);
  expect((await asks(address(large), put(large))).status).toBe(413);
  expect(readdirSync(join(folder, 'tern.files'))).toHaveLength(1);
});

test('a revoked phone is a stranger at once, even in the middle of what it sends', async () => {
  const { pair, atLaptop, phones, folder } = await phonesUnderTest();
  const { asks, device } = await pair();
  const other = await pair('Ben');
  expect((await atLaptop(`/api/phones/${device.id}`, { method: 'DELETE' })).status).toBe(200);
  expect((await asks(log, post(body(tick('entry00001'))))).status).toBe(401);
  const sends = other.asks(log, post(body(tick('entry00002'))));
  await phones.revoke(other.device.id);
  const { status } = await sends;
  // it was either in time, and its line stands, or it was not, and nothing does
  const lines = readdirSync(folder).includes('tern.log.jsonl');
  expect([200, 401]).toContain(status);
  expect(lines).toBe(status === 200);
  expect((await other.asks('/api/phone/me')).status).toBe(401);
});

test.each([
  '/api/boats',
  '/api/boats/tern',
  '/api/boats/tern/log',
  '/api/boats/tern/live',
  '/api/boats/tern/live/ask',
  '/api/live/ports',
  '/api/phones',
  '/api/phones/code',
  '/api/phones/lan',
  '/api/sheets',
  '/api/phone',
  '/api/phone/boats/tern',
  '/api/phone/boats/tern/live',
  '/api/phone/boats/tern/states',
  '/phones.json',
  '/tern.boat.json',
  '/assets/',
  '/assets',
  '/index.htm',
])('a paired phone finds nothing at %s', async (path) => {
  const { pair } = await phonesUnderTest();
  const { asks } = await pair();
  expect((await asks(path)).status).toBe(404);
  expect([404, 405]).toContain((await asks(path, post('{}'))).status);
});

test('boats are found by the list of the folder only: links and odd names are none', async () => {
  const { pair, folder, boats } = await phonesUnderTest();
  const { asks } = await pair();
  const elsewhere = await phonesUnderTest();
  symlinkSync(join(elsewhere.folder, 'tern.boat.json'), join(folder, 'linked.boat.json'));
  mkdirSync(join(folder, 'folder.boat.json'));
  writeFileSync(join(folder, '.boat.json'), '{}');
  for (const name of ['linked', 'folder', 'phones.json', 'tern.boat.json', 'constructor', '__proto__', 'TERN', '.'])
    expect([400, 404]).toContain((await asks(`/api/phone/boats/${name}/log`)).status);
  expect((await boats.list()).map(({ id }) => id)).not.toContain('linked');
});

test.each(['PUT', 'DELETE', 'PATCH', 'OPTIONS', 'TRACE', 'HEAD', 'PROPFIND'])(
  '%s is done nowhere it is not meant for',
  async (method) => {
    const { pair } = await phonesUnderTest();
    const { asks } = await pair();
    for (const path of ['/', '/api/phone/boats', log, '/api/phone/pair'])
      expect((await asks(path, { method })).status).toBe(405);
  },
);

test('of a phone nothing is told to a page elsewhere, and nothing is asked by one', async () => {
  const { pair, port } = await phonesUnderTest();
  const { asks } = await pair();
  const origin = 'http://elsewhere.example';
  const told = await asks('/api/phone/boats', { headers: { origin } });
  expect(told.status).toBe(403);
  expect(Object.keys(told.headers).filter((name) => name.startsWith('access-control'))).toEqual([]);
  const rebound = await asks('/api/phone/boats', { headers: { host: `elsewhere.example:${port}` } });
  expect(rebound.status).toBe(421);
});
