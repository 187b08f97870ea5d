import { createSocket } from 'node:dgram';
import { resolve } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { UserError } from '../../core/boat/user-error.ts';
import { listen } from './listen.ts';

const boatFile = resolve(import.meta.dirname, '../../../examples/sandpiper/sandpiper.boat.json');
let printed = '';

beforeEach(() => {
  printed = '';
  vi.spyOn(process.stderr, 'write').mockReturnValue(true);
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    printed += String(text);
    return true;
  });
});
afterEach(() => {
  vi.restoreAllMocks();
  process.exitCode = undefined;
});

const refusalOf = async (options: Parameters<typeof listen>[1], file = boatFile): Promise<string> => {
  const refusal = await listen(file, options).catch((cause: unknown) => cause);
  return refusal instanceof UserError ? refusal.text : String(refusal);
};

test('where to listen is said once, and in a form that can be read', async () => {
  expect(await refusalOf({})).toContain('Nobody said where to listen.');
  expect(await refusalOf({ udp: true, stdin: true })).toContain('One place to listen to is enough.');
  expect(await refusalOf({ tcp: 'gateway' })).toContain('no address with a port');
  expect(await refusalOf({ udp: '70000' })).toContain('from 1 to 65535');
  expect(await refusalOf({ stdin: true }, '-')).toContain('Give the boat as a file.');
});

test('a wire the boat does not have is refused with those she has', async () => {
  expect(await refusalOf({ stdin: true, on: 'no-such-bus' })).toContain('Give one of: log-depth.out');
});

test('nothing is sent without a yes, and only to an interface of a bus', async () => {
  expect(await refusalOf({ stdin: true, ask: 'can0' })).toContain('Nothing may be sent without a yes');
  expect(await refusalOf({ stdin: true, ask: 'can0; reboot', yes: true })).toContain('no interface of a bus');
});

test('what a program sends by UDP is held against the plan, with the code of its findings', async () => {
  const probe = createSocket('udp4');
  const port = await new Promise<number>((done) => probe.bind(0, '127.0.0.1', () => done(probe.address().port)));
  await new Promise<void>((done) => probe.close(() => done()));
  const sender = createSocket('udp4');
  const saying = setInterval(() => sender.send('$SDDPT,12.3,-1.5*4E', port, '127.0.0.1'), 30);
  await listen(boatFile, { udp: String(port), bind: '127.0.0.1', for: 1, json: true });
  clearInterval(saying);
  sender.close();
  const report = JSON.parse(printed) as { boat: string; wires: { kind: string; count: number }[] };
  expect(report.wires[0]).toMatchObject({ kind: 'line' });
  expect(report.wires[0]?.count).toBeGreaterThan(0);
  expect(process.exitCode).toBe(1);
});
