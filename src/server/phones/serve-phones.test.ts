import { connect, type Socket } from 'node:net';
import fc from 'fast-check';
import { expect, onTestFinished, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { writeBoat } from '../../core/boat/write-boat.ts';
import { phoneHeaders } from './phone-headers.ts';
import { phonesUnderTest } from './phones-under-test.test-helper.ts';

const hurried = { headerMs: 150, requestMs: 300, silentMs: 200 };

const opened = (port: number): Promise<Socket> =>
  new Promise((done) => {
    const socket = connect(port, '127.0.0.1', () => done(socket));
    socket.on('error', () => done(socket));
    onTestFinished(() => void socket.destroy());
  });

const closed = (socket: Socket): Promise<void> =>
  new Promise((done) => {
    socket.resume();
    if (socket.destroyed) done();
    else socket.once('close', () => done());
  });

test('the page and its files are all there is to read, each with every header', async () => {
  const { onPhone } = await phonesUnderTest();
  const page = await onPhone('/');
  expect(page).toMatchObject({ status: 200, text: '<p>phone</p>' });
  for (const path of ['/', '/index.html', '/nothing', '/api/phone/boats', '/%2e%2e/x'])
    expect((await onPhone(path)).headers).toMatchObject(phoneHeaders);
  const { 'content-security-policy': policy } = phoneHeaders;
  expect(policy).toContain("default-src 'none'");
  expect(policy).not.toMatch(/unsafe|\*|http:/);
});

test.each([
  ['no http at all', 'SSH-2.0-x\r\n\r\n', 400],
  ['a header without end', `GET / HTTP/1.1\r\nx: ${'a'.repeat(20_000)}`, 431],
  ['thousands of headers', `GET / HTTP/1.1\r\n${'a: b\r\n'.repeat(5000)}`, 431],
  ['two lengths', 'POST / HTTP/1.1\r\nhost: x\r\ncontent-length: 1\r\ncontent-length: 2\r\n\r\na', 400],
  ['a length and pieces', 'POST / HTTP/1.1\r\ncontent-length: 5\r\ntransfer-encoding: chunked\r\n\r\n0\r\n\r\n', 400],
  ['a line that is folded', 'GET / HTTP/1.1\r\nhost: x\r\n y: z\r\n\r\n', 400],
  ['no host', 'GET / HTTP/1.1\r\nconnection: close\r\n\r\n', 421],
  ['another protocol', 'GET / HTTP/1.1\r\nconnection: upgrade, close\r\nupgrade: websocket\r\nhost: x\r\n\r\n', 421],
  ['a secret handshake', '\u0016\u0003\u0001\u0002\u0000\u0001\u0000', 400],
])('%s is refused with the headers of any other answer', async (_, bytes, status) => {
  const { raw, atLaptop } = await phonesUnderTest({ patience: hurried });
  const said = await raw(bytes);
  expect(said).toMatch(new RegExp(`^HTTP/1.1 ${status} `));
  for (const [name, value] of Object.entries(phoneHeaders))
    expect(said.toLowerCase()).toContain(`${name}: ${value}`.toLowerCase());
  expect((await atLaptop('/api/boats')).status).toBe(200);
});

test('whatever bytes come, they are answered or let go, and the laptop and the next phone are served', async () => {
  const { port, onPhone, atLaptop } = await phonesUnderTest({ patience: hurried });
  const begin = fc.constantFrom(
    '',
    'GET / HTTP/1.1\r\n',
    `GET /api/phone/me HTTP/1.1\r\nhost: 127.0.0.1:${port}\r\n`,
    'POST ',
  );
  await fc.assert(
    fc.asyncProperty(begin, fc.uint8Array({ maxLength: 3000 }), async (text, bytes) => {
      const socket = await opened(port);
      socket.end(Buffer.concat([Buffer.from(text), bytes]));
      await closed(socket);
    }),
    { numRuns: 40 },
  );
  expect((await onPhone('/')).status).toBe(200);
  expect((await atLaptop('/api/boats')).status).toBe(200);
});

test('one who asks beforehand whether to send is answered as any other', async () => {
  const { raw } = await phonesUnderTest({ patience: hurried });
  const said = await raw(
    'POST /api/phone/pair HTTP/1.1\r\nhost: x\r\nexpect: 100-continue\r\ncontent-length: 9000000000\r\n\r\n',
  );
  expect(said).toMatch(/^HTTP\/1\.1 421 /);
  expect(said).not.toContain('100 Continue');
});

test('a tunnel is not opened', async () => {
  const { raw } = await phonesUnderTest({ patience: hurried });
  expect(await raw('CONNECT 127.0.0.1:22 HTTP/1.1\r\nhost: x\r\n\r\n')).toBe('');
});

test('requests sent in a heap end the connection, and their sender is let in no more for a while', async () => {
  const { raw, port, onPhone, atLaptop } = await phonesUnderTest({ patience: hurried });
  const one = `GET /nothing HTTP/1.1\r\nhost: 127.0.0.1:${port}\r\n\r\n`;
  const said = await raw(one.repeat(2000));
  expect((said.match(/^HTTP\/1\.1 \d{3}/gm) ?? []).length).toBeLessThanOrEqual(1);
  await expect(onPhone('/')).rejects.toThrow();
  expect((await atLaptop('/api/boats')).status).toBe(200);
});

test('one who asks too often is told so, while others are answered', async () => {
  const { onPhone, atLaptop } = await phonesUnderTest();
  const statuses: number[] = [];
  for (let time = 0; time < 305; time += 1) statuses.push((await onPhone('/nothing')).status);
  expect(statuses.slice(0, 300).every((status) => status === 404)).toBe(true);
  expect(statuses.at(-1)).toBe(429);
  expect((await atLaptop('/api/boats')).status).toBe(200);
});

test('one who sends slowly, or nothing, is let go', async () => {
  const { port, phones } = await phonesUnderTest({ patience: hurried });
  const silent = await opened(port);
  const slow = await opened(port);
  slow.write('GET / HTTP/1.1\r\n');
  const drip = setInterval(() => slow.write('x: y\r\n'), 50);
  onTestFinished(() => clearInterval(drip));
  const slowBody = await opened(port);
  slowBody.write(
    `POST /api/phone/pair HTTP/1.1\r\nhost: 127.0.0.1:${port}\r\ncontent-type: application/json\r\ncontent-length: 900\r\n\r\n`,
  );
  const bodyDrip = setInterval(() => slowBody.write(' '), 50);
  onTestFinished(() => clearInterval(bodyDrip));
  await Promise.all([silent, slow, slowBody].map(closed));
  await expect.poll(async () => (await phones.told()).connections.open).toBe(0);
});

test('hundreds of sockets are turned away, the laptop is answered at once and a boat is saved', async () => {
  const { port, phones, atLaptop } = await phonesUnderTest();
  const sockets = await Promise.all(Array.from({ length: 400 }, () => opened(port)));
  for (const socket of sockets) socket.write('GET / HTTP/1.1\r\n');
  const begunMs = performance.now();
  const read = await atLaptop('/api/boats/tern');
  const body = writeBoat(aBoat().with({ name: 'Skua' }).boat);
  const saved = await atLaptop('/api/boats/tern', {
    method: 'PUT',
    body,
    headers: { 'if-match': String(read.headers.etag) },
  });
  expect(saved.status).toBe(200);
  expect(performance.now() - begunMs).toBeLessThan(2000);
  // all of them come from one sender
  await expect.poll(async () => (await phones.told()).connections).toEqual({ open: 8, turnedAway: 392 });
});
