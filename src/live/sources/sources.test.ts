import { spawn, spawnSync } from 'node:child_process';
import { createSocket } from 'node:dgram';
import { appendFileSync, renameSync, truncateSync, writeFileSync } from 'node:fs';
import { type AddressInfo, createServer, type Socket } from 'node:net';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import { expect, onTestFinished, test, vi } from 'vitest';
import { byCodeUnit } from '../../core/boat/ids.ts';
import type { LinkState } from '../../core/proof/live/link-state.ts';
import { tempFolder } from '../../node/files/temp-folder.test-helper.ts';
import type { LiveSource } from '../live-source.ts';
import { serialPorts } from './serial-port.ts';
import { serialSource } from './serial-source.ts';
import { streamSource } from './stream-source.ts';
import { tailSource } from './tail-source.ts';
import { tcpSource } from './tcp-source.ts';
import { udpSource, usualUdpPort } from './udp-source.ts';

const depth = '$SDDPT,12.3,-1.5*4E\r\n';

/** Starts a source and keeps what it says. */
const heard = (source: LiveSource) => {
  const links: LinkState[] = [];
  let text = '';
  source.start(
    (bytes) => {
      text += Buffer.from(bytes).toString('latin1');
    },
    (link) => links.push(link),
  );
  onTestFinished(() => source.stop());
  return { text: () => text, kinds: () => links.map(({ kind }) => kind), links };
};

const soon = { timeout: 5000, interval: 5 };

test('a UDP port gives what is sent to it, each datagram as whole lines', async () => {
  const probe = createSocket('udp4');
  const port = await new Promise<number>((done) => probe.bind(0, '127.0.0.1', () => done(probe.address().port)));
  await new Promise<void>((done) => probe.close(() => done()));
  const { text, kinds } = heard(udpSource({ port, address: '127.0.0.1' }));
  await vi.waitFor(() => expect(kinds()).toEqual(['open']), soon);
  const sender = createSocket('udp4');
  onTestFinished(() => void sender.close());
  sender.send(depth.trimEnd(), port, '127.0.0.1');
  await vi.waitFor(() => expect(text()).toBe(`${depth.trimEnd()}\n`), soon);
});

test('an address this machine does not have is told, and tried again', async () => {
  const { links } = heard(udpSource({ port: usualUdpPort, address: '203.0.113.7' }));
  await vi.waitFor(() => expect(links).toHaveLength(1), soon);
  expect(links[0]).toMatchObject({ kind: 'gone', says: expect.stringContaining('no such address') });
});

test('a TCP source calls again where the other side hangs up', async () => {
  const calls: Socket[] = [];
  const server = createServer((socket) => {
    socket.on('error', () => undefined);
    calls.push(socket);
    socket.write(depth);
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  onTestFinished(() => void server.close());
  const { port } = server.address() as AddressInfo;
  const { text, kinds } = heard(tcpSource({ host: '127.0.0.1', port }));
  await vi.waitFor(() => expect(text()).toBe(depth), soon);
  calls[0]?.destroy();
  await vi.waitFor(() => expect(text()).toBe(depth + depth), soon);
  expect(kinds()).toEqual(['open', 'gone', 'open']);
  for (const call of calls) call.destroy();
});

test('nobody who listens at a TCP port is told in a sentence', async () => {
  const server = createServer();
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.address() as AddressInfo;
  await new Promise<void>((done) => server.close(() => done()));
  const { links } = heard(tcpSource({ host: '127.0.0.1', port }));
  await vi.waitFor(() => expect(links[0]).toMatchObject({ kind: 'gone', says: 'Nobody listens there.' }), soon);
});

test('a stream is read to its end', async () => {
  const stream = new PassThrough();
  const { text, kinds } = heard(streamSource(stream));
  stream.end(depth);
  await vi.waitFor(() => expect(kinds()).toEqual(['open', 'ended']), soon);
  expect(text()).toBe(depth);
});

test('a file is followed while it grows, is cut short, goes, and is replaced', async () => {
  const path = join(tempFolder(), 'bus.log');
  writeFileSync(path, 'before\n');
  const { text, kinds } = heard(tailSource(path));
  await vi.waitFor(() => expect(kinds()).toEqual(['open']), soon);
  appendFileSync(path, 'one\n');
  await vi.waitFor(() => expect(text()).toBe('one\n'), soon);
  truncateSync(path, 0);
  await vi.waitFor(() => expect(kinds()).toEqual(['open', 'note']), soon);
  appendFileSync(path, 'two\n');
  await vi.waitFor(() => expect(text()).toBe('one\ntwo\n'), soon);
  renameSync(path, `${path}.old`);
  await vi.waitFor(() => expect(kinds().at(-1)).toBe('gone'), soon);
  writeFileSync(path, 'three\n');
  await vi.waitFor(() => expect(text()).toBe('one\ntwo\nthree\n'), soon);
  writeFileSync(`${path}.new`, 'four\n');
  renameSync(`${path}.new`, path);
  await vi.waitFor(() => expect(text()).toBe('one\ntwo\nthree\nfour\n'), soon);
});

/** A port in the hand of the test: what it is told, and what it says. */
const fakePort = () => {
  const bauds: number[] = [];
  let take: (bytes: Uint8Array) => void = () => undefined;
  let close: (cause: Error | undefined) => void = () => undefined;
  return {
    bauds,
    say: (bytes: Uint8Array) => take(bytes),
    unplug: () => close(undefined),
    open: ({ baud }: { baud: number }) => {
      bauds.push(baud);
      return Promise.resolve({
        onBytes: (taker: typeof take) => {
          take = taker;
        },
        onClose: (closer: typeof close) => {
          close = closer;
        },
        setBaud: (next: number) => {
          bauds.push(next);
          return Promise.resolve();
        },
        close: () => Promise.resolve(),
      });
    },
  };
};

test('without a speed the usual ones are tried in turn until lines come whole', async () => {
  const port = fakePort();
  const { links } = heard(serialSource({ path: '/dev/fake', open: port.open }));
  await vi.waitFor(() => expect(links).toEqual([{ kind: 'open', baud: 4800 }]), soon);
  port.say(new Uint8Array(200).fill(0xf3));
  await vi.waitFor(() => expect(links.at(-1)).toEqual({ kind: 'open', baud: 38_400 }), soon);
  for (let times = 0; times < 20; times += 1) port.say(Buffer.from(depth));
  expect(port.bauds).toEqual([4800, 38_400]);
});

test('an adapter that is unplugged is told at once and opened again', async () => {
  const port = fakePort();
  const { links } = heard(serialSource({ path: '/dev/fake', baud: 4800, open: port.open }));
  await vi.waitFor(() => expect(links).toHaveLength(1), soon);
  port.unplug();
  expect(links.at(-1)).toMatchObject({ kind: 'gone', says: 'The adapter was unplugged.' });
  await vi.waitFor(() => expect(links.at(-1)).toEqual({ kind: 'open', baud: 4800 }), soon);
});

test('a port that is not there is told in a sentence', async () => {
  const { links } = heard(serialSource({ path: '/dev/no-such-port-aboard', baud: 4800 }));
  await vi.waitFor(() => expect(links[0]).toMatchObject({ kind: 'gone', says: 'It is not there.' }), soon);
});

const hasPython = spawnSync('python3', ['-c', 'import pty']).status === 0;

const pseudoTerminal = `
import os, pty, sys, time, tty
hand, line = pty.openpty()
tty.setraw(line)
print(os.ttyname(line), flush=True)
while True:
    os.write(hand, b"$SDDPT,12.3,-1.5*4E\\r\\n")
    time.sleep(0.02)
`;

test.skipIf(!hasPython)('a real line of the system is read as a serial port', async () => {
  const child = spawn('python3', ['-c', pseudoTerminal], { stdio: ['ignore', 'pipe', 'ignore'] });
  onTestFinished(() => void child.kill());
  const path = await new Promise<string>((done) =>
    child.stdout.once('data', (bytes: Buffer) => done(bytes.toString().trim())),
  );
  const { text, links } = heard(serialSource({ path, baud: 4800 }));
  await vi.waitFor(() => expect(text()).toContain('\n$SDDPT,12.3,-1.5*4E\r\n'), soon);
  child.kill();
  await vi.waitFor(() => expect(links.at(-1)?.kind).toBe('gone'), soon);
});

test('the serial ports of this machine are listed by their paths, in order', async () => {
  const ports = await serialPorts();
  expect(ports).toEqual([...ports].sort(byCodeUnit));
});
