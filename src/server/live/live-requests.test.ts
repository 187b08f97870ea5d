import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { type AddressInfo, createServer, type Socket } from 'node:net';
import { join } from 'node:path';
import { expect, onTestFinished, test, vi } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { writeBoat } from '../../core/boat/write-boat.ts';
import { boatFolder } from '../../node/boat-folder.ts';
import { tempFolder } from '../../node/files/temp-folder.test-helper.ts';
import { serve } from '../serve.ts';

const depth = '$SDDPT,12.3,-1.5*4E\r\n';

/** A gateway aboard: whoever calls is told the depth, again and again. */
const gateway = async (): Promise<number> => {
  const calls = new Set<Socket>();
  const server = createServer((socket) => {
    calls.add(socket);
    socket.on('error', () => undefined);
    const saying = setInterval(() => socket.write(depth), 20);
    socket.on('close', () => clearInterval(saying));
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  onTestFinished(() => {
    server.close();
    for (const call of calls) call.destroy();
  });
  return (server.address() as AddressInfo).port;
};

const app = async () => {
  const [appFolder, folder] = [tempFolder(), tempFolder()];
  writeFileSync(join(appFolder, 'index.html'), '<p>app</p>');
  writeFileSync(join(folder, 'tern.boat.json'), writeBoat(aBoat().with({ name: 'Tern' }).boat));
  const boats = boatFolder(folder);
  const { port, close } = await serve({ appFolder, folders: { boats, demos: boats }, port: 0 });
  onTestFinished(close);
  const address = `http://127.0.0.1:${port}`;
  const own = { origin: address, 'content-type': 'application/json' };
  const send = async (method: string, at: string, body: unknown = {}, headers: Record<string, string> = {}) => {
    const response = await fetch(`${address}/api/boats/${at}`, {
      method,
      body: JSON.stringify(body),
      headers: { ...own, ...headers },
    });
    // reason: what is looked at below is compared whole
    return { status: response.status, json: (await response.json()) as Record<string, unknown> };
  };
  const read = async (at: string) => (await fetch(`${address}/api/${at}`)).json() as Promise<Record<string, unknown>>;
  return { address, folder, send, read };
};

/** Reads events until one is wanted. */
const eventsUntil = async (address: string, isWanted: (event: Record<string, unknown>) => boolean) => {
  const response = await fetch(address);
  const type = response.headers.get('content-type');
  let text = '';
  for await (const piece of response.body ?? []) {
    text += Buffer.from(piece).toString('utf8');
    const events = text.split('\n\n').slice(0, -1);
    const found = events
      .map((event) => JSON.parse(event.replace(/^data: /, '')) as Record<string, unknown>)
      .find(isWanted);
    if (found === undefined) continue;
    return { type, found };
  }
  return undefined;
};

test('a boat is listened to, looked at while she speaks, recorded, and let go', async () => {
  const { address, folder, send, read } = await app();
  const port = await gateway();
  expect(await read('boats/tern/live')).toEqual({ listening: false });
  const source = { kind: 'tcp', host: '127.0.0.1', port };
  expect((await send('POST', 'tern/live', { source, record: true })).status).toBe(201);
  expect((await send('POST', 'tern/live', { source, record: false })).status).toBe(409);
  const seen = await eventsUntil(`${address}/api/boats/tern/live/flow`, ({ sentences }) => Number(sentences) > 2);
  expect(seen?.type).toContain('text/event-stream');
  expect(seen?.found).toMatchObject({
    listening: true,
    source: { says: `TCP 127.0.0.1:${port}`, state: { kind: 'flowing' } },
    recording: { kind: 'writing' },
  });
  expect((await send('DELETE', 'tern/live')).json).toEqual({ listening: false });
  const [name = ''] = readdirSync(join(folder, 'tern.recordings'));
  expect(name).toMatch(/^\d{4}-\d\d-\d\dT\d\d-\d\d-\d\dZ\.log$/);
  expect(readFileSync(join(folder, 'tern.recordings', name), 'latin1')).toContain(') $SDDPT,12.3,-1.5*4E\n');
});

test('a page that looks on before anybody listens is told when that begins', async () => {
  const { address, send } = await app();
  const port = await gateway();
  const waiting = eventsUntil(`${address}/api/boats/tern/live/flow`, ({ listening }) => listening === true);
  await send('POST', 'tern/live', { source: { kind: 'tcp', host: '127.0.0.1', port }, record: false });
  expect((await waiting)?.found).toMatchObject({ listening: true });
  await send('DELETE', 'tern/live');
});

test.each<[string, number, unknown]>([
  ['a serial port that is not in the list', 422, { source: { kind: 'serial', path: '/etc/passwd' }, record: false }],
  ['a host that is no name', 422, { source: { kind: 'tcp', host: 'a b', port: 1 }, record: false }],
  ['a bind address that is no address', 422, { source: { kind: 'udp', port: 1, address: 'x' }, record: false }],
  ['a wire she does not have', 422, { source: { kind: 'udp', port: 10_110 }, on: 'no-bus', record: false }],
  ['a source nobody knows', 422, { source: { kind: 'file', path: '/etc/passwd' }, record: false }],
  ['a path to record to', 422, { source: { kind: 'udp', port: 10_110 }, record: '/tmp/x' }],
])('%s is refused, and nobody listens', async (_, status, wish) => {
  const { send, read } = await app();
  expect((await send('POST', 'tern/live', wish)).status).toBe(status);
  expect(await read('boats/tern/live')).toEqual({ listening: false });
});

test('a page elsewhere begins nothing, stops nothing and asks nothing', async () => {
  const { send } = await app();
  const elsewhere = { origin: 'http://elsewhere.example' };
  const source = { kind: 'udp', port: 10_110 };
  expect((await send('POST', 'tern/live', { source, record: false }, elsewhere)).status).toBe(403);
  expect((await send('DELETE', 'tern/live', {}, elsewhere)).status).toBe(403);
  expect((await send('POST', 'tern/live/ask', { line: 'can0', thorough: false, yes: true }, elsewhere)).status).toBe(
    403,
  );
});

test('nothing is asked without a yes in the request, nor of anything but an interface', async () => {
  const { send } = await app();
  expect((await send('POST', 'tern/live/ask', { line: 'can0', thorough: false })).status).toBe(422);
  expect((await send('POST', 'tern/live/ask', { line: 'can0', thorough: false, yes: false })).status).toBe(422);
  expect((await send('POST', 'tern/live/ask', { line: '-h', thorough: false, yes: true })).status).toBe(422);
  expect((await send('POST', 'tern/live/ask', { line: 'can0', thorough: false, yes: true })).status).toBe(409);
});

test('a boat that is not there is not listened to, and a reading without a curve is told', async () => {
  const { send, read } = await app();
  const wish = { source: { kind: 'tcp', host: '127.0.0.1', port: 1 }, record: false };
  expect((await send('POST', 'no-boat/live', wish)).status).toBe(404);
  expect(await read('boats/tern/live/curve/0')).toMatchObject({ says: expect.stringContaining('nothing to draw') });
});

test('the last minutes of a reading are given by its number', async () => {
  const { send, read } = await app();
  const port = await gateway();
  await send('POST', 'tern/live', { source: { kind: 'tcp', host: '127.0.0.1', port }, record: false });
  await vi.waitFor(async () => expect((await read('boats/tern/live')).readings).toHaveLength(1), 3000);
  await send('DELETE', 'tern/live');
});
