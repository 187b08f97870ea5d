import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { createSocket } from 'node:dgram';
import { once } from 'node:events';
import { appendFileSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { type AddressInfo, createServer, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { expect, type TestContext, test, vi } from 'vitest';
import type { ProofReport } from '../src/core/proof/compare/proof-report.ts';
import { plannedBoat, recordPlanned } from './recordings/planned-boat.ts';
import { recordLine } from './recordings/planned-line.ts';
import { candumpBytes } from './recordings/write-recording.ts';

const repository = resolve(import.meta.dirname, '..');
const program = join(repository, 'dist/cli/main.js');
const example = (name: string): string => join(repository, `examples/${name}/${name}.boat.json`);

/** Each waits for a program of its own, so they wait together. */
const together = { concurrent: true, timeout: 120_000 };

const soon = { timeout: 60_000, interval: 20 };

type Context = Pick<TestContext, 'onTestFinished'>;

/** The built program at a source, as a person would begin it. */
const listening = ({ onTestFinished }: Context, args: readonly string[]) => {
  const record = join(mkdtempSync(join(tmpdir(), 'fairlead-wires-')), 'dock.log');
  onTestFinished(() => rmSync(dirname(record), { recursive: true, force: true }));
  const child = spawn(process.execPath, [
    program,
    'listen',
    example('sandpiper'),
    ...args,
    '--record',
    record,
    '--json',
  ]);
  onTestFinished(() => void child.kill('SIGKILL'));
  let [out, said] = ['', ''];
  child.stdout.on('data', (text: Buffer) => {
    out += text.toString();
  });
  child.stderr.on('data', (text: Buffer) => {
    said += text.toString();
  });
  const ended = once(child, 'close');
  return {
    said: () => said,
    says: (text: string) => vi.waitFor(() => expect(said).toContain(text), soon),
    /** comes back when so many lines were heard and recorded */
    heard: (lines: number) =>
      vi.waitFor(() => {
        const text = existsSync(record) ? readFileSync(record, 'utf8') : '';
        expect(text.split('\n').filter((line) => line.startsWith('(')).length).toBe(lines);
      }, soon),
    /** Ctrl-C, and what is printed then */
    stopped: async (): Promise<{ code: unknown; report: ProofReport }> => {
      child.kill('SIGINT');
      const [code] = await ended;
      return { code, report: JSON.parse(out) as ProofReport };
    },
  };
};

const nav = () => candumpBytes(recordPlanned(plannedBoat('sandpiper'), 'nav', 20));
/** The same in two halves, parted between two lines. */
const halves = (bytes: Uint8Array): [first: Uint8Array, second: Uint8Array] => {
  const half = bytes.indexOf(10, bytes.length / 2) + 1;
  return [bytes.subarray(0, half), bytes.subarray(half)];
};
const linesIn = (bytes: Uint8Array): number => bytes.filter((byte) => byte === 10).length;

/** Bytes that make no line, and are none: what a loose plug gives. */
const noise = Uint8Array.from({ length: 400 }, (_, at) => (at === 399 ? 10 : 0x80 + ((at * 73) % 0x7f)));

const hasSocat = spawnSync('socat', ['-V'], { stdio: 'ignore' }).status === 0;

/** Two ends of a serial cable; pulled, both are gone, as an adapter and its path are. */
const serialCable = async ({ onTestFinished }: Context) => {
  const folder = mkdtempSync(join(tmpdir(), 'fairlead-cable-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const [far, near] = [join(folder, 'far'), join(folder, 'near')];
  let cable: ChildProcess | undefined;
  const plugIn = async (): Promise<void> => {
    const ends = [far, near].map((link) => `pty,raw,echo=0,link=${link}`);
    cable = spawn('socat', ends, { stdio: 'ignore' });
    await vi.waitFor(() => expect([far, near].map(existsSync)).toEqual([true, true]), soon);
  };
  const pull = async (): Promise<void> => {
    const gone = cable === undefined ? undefined : once(cable, 'exit');
    cable?.kill();
    await gone;
  };
  onTestFinished(pull);
  await plugIn();
  return { near, send: (bytes: Uint8Array | string) => appendFileSync(far, bytes), plugIn, pull };
};

test.skipIf(!hasSocat)(
  'a serial gateway of the bus that is unplugged, plugged in again and noisy proves the plan',
  together,
  async (context) => {
    const cable = await serialCable(context);
    const [first, second] = halves(nav());
    const { says, said, heard, stopped } = listening(context, ['--serial', cable.near, '--baud', '115200']);
    await says('Listening at 115200 baud');
    cable.send(first);
    await says('Data flows at 115200 baud');
    await heard(linesIn(first));
    await cable.pull();
    await says('The adapter was unplugged. Plug it in again.');
    await cable.plugIn();
    await vi.waitFor(() => expect(said().split('Listening at 115200 baud').length).toBeGreaterThan(2), soon);
    cable.send(noise);
    cable.send(second);
    await heard(linesIn(first) + linesIn(second));
    const { code, report } = await stopped();
    // that it was silent meanwhile may be told
    expect(report.findings.filter(({ level }) => ['danger', 'fault'].includes(level))).toEqual([]);
    expect(report.wires).toMatchObject([{ id: 'nav', count: linesIn(first) + linesIn(second) }]);
    expect(code).toBe(0);
  },
);

/** Sentences have no time of their own: they come as a talker says them. */
const sayInTime = async (send: (text: string) => void, seconds: number): Promise<number> => {
  const sentences = recordLine(plannedBoat('sandpiper'), 'log-depth.out', seconds);
  const [firstUs = 0, startedMs] = [sentences[0]?.timeUs, performance.now()];
  for (const { timeUs, text } of sentences) {
    await wait(Math.max(0, (timeUs - firstUs) / 1000 - (performance.now() - startedMs)));
    send(`${text}\r\n`);
  }
  return sentences.length;
};

test.skipIf(!hasSocat)(
  'a 0183 talker on a serial line is heard through noise as it was planned',
  together,
  async (context) => {
    const cable = await serialCable(context);
    const { says, heard, stopped } = listening(context, [
      '--serial',
      cable.near,
      '--baud',
      '4800',
      '--on',
      'log-depth.out',
    ]);
    await says('Listening at 4800 baud');
    cable.send(noise);
    await heard(await sayInTime(cable.send, 8));
    const { code, report } = await stopped();
    expect(report.wires).toMatchObject([{ id: 'log-depth.out', kind: 'line' }]);
    expect(report.messages.map(({ message, state }) => [message, state])).toEqual(
      ['DBT', 'MTW', 'VHW', 'VLW'].map((sentence) => [sentence, 'right']),
    );
    expect(report.findings.filter(({ level }) => level !== 'advice')).toEqual([]);
    expect(code).toBe(0);
  },
);

test(
  'a gateway that hangs up in mid-line over TCP is called again, and the rest proves the plan',
  together,
  async (context) => {
    const [first, second] = halves(nav());
    const calls: Socket[] = [];
    const server = createServer((socket) => {
      socket.on('error', () => undefined);
      calls.push(socket);
      // half a line at the end of the first call
      if (calls.length === 1) socket.write(Buffer.concat([first, second.subarray(0, 20)]));
      else socket.write(second);
    });
    server.listen(0, '127.0.0.1');
    await once(server, 'listening');
    context.onTestFinished(() => {
      for (const call of calls) call.destroy();
      server.close();
    });
    const { says, heard, stopped } = listening(context, [
      '--tcp',
      `127.0.0.1:${(server.address() as AddressInfo).port}`,
    ]);
    await says('Data flows');
    calls[0]?.destroy();
    await vi.waitFor(() => expect(calls).toHaveLength(2), soon);
    await heard(linesIn(first) + linesIn(second));
    const { code, report } = await stopped();
    expect(report.wires).toMatchObject([{ id: 'nav', count: linesIn(first) + linesIn(second) }]);
    expect(code).toBe(0);
  },
);

test('a gateway that sends by UDP proves the plan', together, async (context) => {
  const sender = createSocket('udp4');
  context.onTestFinished(() => void sender.close());
  const probe = createSocket('udp4').bind(0, '127.0.0.1');
  await once(probe, 'listening');
  const { port } = probe.address();
  probe.close();
  await once(probe, 'close');
  const { says, heard, stopped } = listening(context, ['--udp', String(port), '--bind', '127.0.0.1']);
  await says('Listening');
  const lines = Buffer.from(nav())
    .toString()
    .split('\n')
    .filter((line) => line !== '');
  for (let at = 0; at < lines.length; at += 10) {
    sender.send(lines.slice(at, at + 10).join('\n'), port, '127.0.0.1');
    await wait(2);
  }
  await heard(lines.length);
  const { code, report } = await stopped();
  expect(report.wires).toMatchObject([{ id: 'nav', count: lines.length }]);
  expect(code).toBe(0);
});

test('a bus recorder’s stream through a pipe finds what the same recording finds as a file', together, async () => {
  const [boat, log] = [example('gannet'), join(repository, 'examples/gannet/gannet-at-the-dock.candump.log')];
  const finds = async (command: string): Promise<{ code: unknown; report: ProofReport; said: string }> => {
    const child = spawn('sh', ['-c', command]);
    let [out, said] = ['', ''];
    child.stderr.on('data', (text: Buffer) => {
      said += text.toString();
    });
    child.stdout.on('data', (text: Buffer) => {
      out += text.toString();
    });
    const [code] = await once(child, 'close');
    return { code, said, report: JSON.parse(out) as ProofReport };
  };
  const run = `"${process.execPath}" "${program}"`;
  const live = await finds(`cat "${log}" | ${run} listen "${boat}" --stdin --json`);
  const filed = await finds(`${run} prove "${boat}" "${log}" --json`);
  expect(live.code).toBe(1);
  expect(live.said).toContain('The source has ended.');
  expect(live.report.findings.map(({ id }) => id)).toEqual(filed.report.findings.map(({ id }) => id));
  expect(live.report.findings.length).toBeGreaterThan(3);
});
