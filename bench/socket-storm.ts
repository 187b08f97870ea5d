// What the laptop feels while a network full of sockets leans on the listener for phones: reading and saving a boat by the
// app’s own listener, idle and in each storm, side by side; and what a paired phone gets meanwhile.
import { type ChildProcess, spawn } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { Agent, request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Storm, storms } from './storms.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const secondsEach = Number(process.argv[2] ?? 8);

interface Answered {
  readonly status: number;
  readonly text: string;
  readonly tag: string;
  readonly ms: number;
}

const agent = new Agent({ keepAlive: true });

const ask = (
  url: string,
  { method = 'GET', headers = {}, body }: { method?: string; headers?: Record<string, string>; body?: string } = {},
): Promise<Answered> => {
  const begunMs = performance.now();
  return new Promise((done) => {
    const given = (status: number, text: string, tag: string): void =>
      done({ status, text, tag, ms: performance.now() - begunMs });
    const sent = request(url, { method, headers, agent, timeout: 20_000 }, (response) => {
      let text = '';
      response.setEncoding('utf8').on('data', (chunk: string) => {
        text += chunk;
      });
      response.on('end', () => given(response.statusCode ?? 0, text, String(response.headers.etag ?? '')));
      response.on('error', () => given(0, '', ''));
    });
    sent.on('timeout', () => sent.destroy());
    sent.on('error', () => given(0, '', ''));
    sent.end(body);
  });
};

const at = (sorted: readonly number[], share: number): string =>
  (sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN).toFixed(1).padStart(7);

const line = (name: string, answers: readonly Answered[]): string => {
  const right = answers.filter(({ status }) => status === 200 || status === 304);
  const sorted = right.map(({ ms }) => ms).sort((one, other) => one - other);
  const count = `${right.length} of ${answers.length}`.padStart(14);
  return `  ${name.padEnd(22)}${count} right   median ${at(sorted, 0.5)} ms   95 % ${at(sorted, 0.95)} ms   longest ${at(sorted, 1)} ms`;
};

/** As few descriptors as a system gives a program that asks for no more. */
const serverDescriptors = 256;

const started = (folder: string): Promise<{ server: ChildProcess; app: string; phonePort: number }> => {
  const program = `${root}dist/cli/main.js`;
  const args = [process.execPath, program, 'open', folder, '--port', '0', '--lan', '--lan-port', '0'];
  const server = spawn('sh', ['-c', `ulimit -n ${serverDescriptors} 2>/dev/null; exec "$0" "$@"`, ...args]);
  server.stderr.pipe(process.stderr);
  let said = '';
  return new Promise((done) => {
    server.stdout.on('data', async (chunk: Buffer) => {
      said += String(chunk);
      const app = /http:\/\/127\.0\.0\.1:\d+/.exec(said)?.[0];
      if (app === undefined || !said.includes('hone')) return;
      const told = JSON.parse((await ask(`${app}/api/phones`)).text);
      done({ server, app, phonePort: told.port });
    });
  });
};

/** Kilobytes in memory and open descriptors of a process, where the system tells. */
const weight = (pid: number | undefined): string => {
  try {
    const [, kilobytes = '0'] = /VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8')) ?? [];
    return `${Math.round(Number(kilobytes) / 1024)} MB, ${readdirSync(`/proc/${pid}/fd`).length} descriptors`;
  } catch {
    return 'not told by this system';
  }
};

const paired = async (app: string, phone: string): Promise<string> => {
  const headers = { 'content-type': 'application/json' };
  const given = await ask(`${app}/api/phones/code`, {
    method: 'POST',
    headers: { ...headers, origin: app },
    body: '{}',
  });
  const { code } = JSON.parse(given.text).code;
  const body = JSON.stringify({ code, name: 'Storm' });
  return JSON.parse((await ask(`${phone}/api/phone/pair`, { method: 'POST', headers, body })).text).token;
};

/** Reads and saves over and over, and asks as a paired phone, until the time is up. */
const felt = async (app: string, phone: string, token: string) => {
  const [reads, saves, phones]: [Answered[], Answered[], Answered[]] = [[], [], []];
  const untilMs = performance.now() + secondsEach * 1000;
  const authorization = `Bearer ${token}`;
  const laptop = async (): Promise<void> => {
    while (performance.now() < untilMs) {
      const read = await ask(`${app}/api/boats/gannet`);
      reads.push(read);
      const headers = { origin: app, 'content-type': 'application/json', 'if-match': read.tag };
      saves.push(await ask(`${app}/api/boats/gannet`, { method: 'PUT', headers, body: read.text }));
    }
  };
  const hand = async (): Promise<void> => {
    while (performance.now() < untilMs) {
      phones.push(await ask(`${phone}/api/phone/boats/gannet/log`, { headers: { authorization } }));
      await new Promise((done) => setTimeout(done, 50));
    }
  };
  await Promise.all([laptop(), hand()]);
  return { reads, saves, phones };
};

const attack = (storm: Storm, port: number): Promise<{ stop: () => Promise<string> }> => {
  const program = join(root, 'bench/storms.ts');
  const tsx = join(root, 'node_modules/.bin/tsx');
  // as many descriptors as the system allows this user
  const shell = `ulimit -n $(ulimit -Hn) 2>/dev/null; exec "$0" "$@"`;
  const attacker = spawn('sh', ['-c', shell, tsx, program, storm, String(port)], {
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  let said = '';
  attacker.stdout.on('data', (chunk: Buffer) => {
    said += String(chunk);
  });
  const stop = (): Promise<string> =>
    new Promise((done) => {
      attacker.once('close', () => done(said.trim().split('\n').at(-1) ?? ''));
      attacker.stdin.end();
    });
  return new Promise((done) => attacker.stdout.once('data', () => done({ stop })));
};

const folder = mkdtempSync(join(tmpdir(), 'fairlead-storm-'));
cpSync(`${root}examples`, folder, { recursive: true });
const { server, app, phonePort } = await started(folder);
const phone = `http://127.0.0.1:${phonePort}`;
try {
  const token = await paired(app, phone);
  for (const storm of ['idle', ...storms] as const) {
    const running = storm === 'idle' ? undefined : await attack(storm, phonePort);
    const { reads, saves, phones } = await felt(app, phone, token);
    const weighs = weight(server.pid);
    const came = await running?.stop();
    process.stdout.write(`${storm}${came === undefined ? '' : `: ${came}`}\n`);
    process.stdout.write(
      `${line('boat read', reads)}\n${line('boat saved', saves)}\n${line('paired phone, log', phones)}\n`,
    );
    process.stdout.write(`  server: ${weighs}\n`);
  }
} finally {
  server.kill();
  rmSync(folder, { recursive: true, force: true });
}
