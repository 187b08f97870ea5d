// The sender of the storms of socket-storm.ts, in a process of its own: bench/storms.ts STORM PORT, until its input ends.
import { connect, type Socket } from 'node:net';

export const storms = ['ten thousand sockets', 'slow headers', 'slow bodies', 'junk in heaps', 'giant bodies'] as const;
export type Storm = (typeof storms)[number];

const sent = { opened: 0, closed: 0, failed: 0, most: 0 };
const open = new Set<Socket>();

/** One of 250 senders, all of them this machine. */
const addressOf = (number: number): string => `127.0.1.${1 + (number % 250)}`;

const sockets = (port: number, wanted: number, begin: (socket: Socket) => void): void => {
  let number = 0;
  const fill = (): void => {
    for (let some = 0; some < 200 && open.size < wanted; some += 1) {
      number += 1;
      const socket = connect({ port, host: '127.0.0.1', localAddress: addressOf(number) });
      open.add(socket);
      sent.most = Math.max(sent.most, open.size);
      socket.on('connect', () => {
        sent.opened += 1;
        begin(socket);
      });
      socket.on('error', () => {
        sent.failed += 1;
      });
      socket.on('close', () => {
        sent.closed += 1;
        open.delete(socket);
      });
      socket.resume();
    }
    setTimeout(fill, 10);
  };
  fill();
};

const drip = (first: string, more: string) => (socket: Socket) => {
  socket.write(first);
  const timer = setInterval(() => socket.write(more), 1000);
  socket.on('close', () => clearInterval(timer));
};

const flood = (first: string, more: Buffer) => (socket: Socket) => {
  socket.write(first);
  const pour = (): void => {
    while (!socket.destroyed && socket.write(more));
  };
  socket.on('drain', pour);
  pour();
};

const pair = (host: string, length: number): string =>
  `POST /api/phone/pair HTTP/1.1\r\nhost: ${host}\r\ncontent-type: application/json\r\ncontent-length: ${length}\r\n\r\n`;

const begin = (storm: Storm, port: number): void => {
  const host = `127.0.0.1:${port}`;
  if (storm === 'ten thousand sockets') sockets(port, 10_000, () => undefined);
  if (storm === 'slow headers') sockets(port, 10_000, drip('GET / HTTP/1.1\r\n', 'x: y\r\n'));
  if (storm === 'slow bodies') sockets(port, 10_000, drip(pair(host, 900), ' '));
  if (storm === 'junk in heaps')
    sockets(port, 300, flood('', Buffer.from(`GET /no HTTP/1.1\r\nhost: ${host}\r\n\r\n`.repeat(500))));
  if (storm === 'giant bodies') sockets(port, 300, flood(pair(host, 8_000_000_000), Buffer.alloc(1_000_000, 32)));
};

const [storm, port] = process.argv.slice(2);
const found = storms.find((one) => one === storm);
if (found !== undefined && import.meta.filename === process.argv[1]) {
  begin(found, Number(port));
  // the storm is on once the first of it has come
  setTimeout(() => process.stdout.write('on\n'), 1000);
  process.stdin.on('end', () => {
    const { opened, closed, failed, most } = sent;
    process.stdout.write(`${opened} connections made, ${closed} ended, ${failed} refused, ${most} held at most\n`);
    process.exit();
  });
  process.stdin.resume();
}
