import { chmodSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import { expect, onTestFinished, test, vi } from 'vitest';
import { plannedBoat } from '../../tests/recordings/planned-boat.ts';
import type { LiveNews } from '../core/proof/live/live-snapshot.ts';
import { tempFolder } from '../node/files/temp-folder.test-helper.ts';
import { startListening } from './listening.ts';
import { streamSource } from './sources/stream-source.ts';

const { index, plan } = plannedBoat('gannet');

test('what is sent is told, and written in the record beside what came in', async () => {
  const folder = tempFolder();
  const [command, record] = [join(folder, 'cansend'), join(folder, 'out.log')];
  writeFileSync(command, '#!/bin/sh\n');
  chmodSync(command, 0o755);
  const stream = new PassThrough();
  const news: LiveNews[] = [];
  const listening = startListening({
    source: streamSource(stream, 'a test'),
    boat: index.boat,
    plan,
    recordTo: record,
    onNews: (one) => news.push(one),
    askCommand: command,
  });
  stream.write('can0 09F8012B#0011223344556677\n');
  listening.ask({ line: 'can0', isThorough: false });
  await vi.waitFor(() => expect(news.some(({ of }) => of === 'sent')).toBe(true), 3000);
  stream.end();
  await listening.ended;
  await listening.stop();
  expect(listening.snapshot()).toMatchObject({ frames: 1, recording: { kind: 'writing', lines: 1 } });
  const text = readFileSync(record, 'utf8');
  expect(text).toContain(' can0 09F8012B#0011223344556677\n');
  expect(text).toContain('Sent on can0: 18EAFFFE#00EE00, asks everyone to claim its address again.');
});

test.skipIf(!existsSync('/dev/full'))('a recording that cannot be written is told, and listening goes on', async () => {
  const stream = new PassThrough();
  const news: LiveNews[] = [];
  const listening = startListening({
    source: streamSource(stream, 'a test'),
    boat: index.boat,
    plan,
    recordTo: '/dev/full',
    onNews: (one) => news.push(one),
  });
  onTestFinished(() => listening.stop());
  stream.write('can0 09F8012B#0011223344556677\n');
  await vi.waitFor(() => expect(news.map(({ says }) => says).join()).toContain('listening goes on'), 3000);
  stream.write('can0 09F8012B#0011223344556677\n');
  await vi.waitFor(() => expect(listening.snapshot().frames).toBe(2), 3000);
});
