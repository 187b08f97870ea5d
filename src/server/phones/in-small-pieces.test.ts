import { createServer, type RequestListener } from 'node:http';
import { connect } from 'node:net';
import { expect, onTestFinished, test } from 'vitest';
import { bodyOf } from '../body-of.ts';
import { inSmallPieces } from './in-small-pieces.ts';

const listening = (listener: RequestListener): Promise<number> =>
  new Promise((done) => {
    const server = createServer(listener);
    server.on('connection', inSmallPieces);
    server.listen(0, '127.0.0.1', () => {
      const at = server.address();
      done(typeof at === 'object' && at !== null ? at.port : 0);
    });
    onTestFinished(() => {
      server.closeAllConnections();
      server.close();
    });
  });

test('of a heap of requests few are taken in once the first has ended the connection', async () => {
  let taken = 0;
  const port = await listening((request) => {
    taken += 1;
    request.socket.destroy();
  });
  const heap = 'GET / HTTP/1.1\r\nhost: x\r\n\r\n'.repeat(2000);
  await new Promise<void>((done) => {
    const socket = connect(port, '127.0.0.1', () => socket.write(heap));
    socket.on('error', () => undefined).on('close', () => done());
  });
  expect(taken).toBeGreaterThan(0);
  // 2048 bytes of them are fewer than eighty
  expect(taken).toBeLessThan(80);
});

test('what is large, or comes one after the other on one connection, arrives whole', async () => {
  const port = await listening(async (request, response) => {
    const body = await bodyOf(request, 10_000_000);
    response.end(String(body?.reduce((sum, byte) => (sum * 31 + byte) % 1_000_003, 7)));
  });
  for (const length of [0, 1, 2047, 2048, 2049, 3_000_000, 100]) {
    const body = Uint8Array.from({ length }, (_, at) => (at * 7) % 251);
    const expected = body.reduce((sum, byte) => (sum * 31 + byte) % 1_000_003, 7);
    const answer = await fetch(`http://127.0.0.1:${port}/`, { method: 'POST', body });
    expect(await answer.text()).toBe(String(expected));
  }
});
