import { chmodSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { tempFolder } from '../node/files/temp-folder.test-helper.ts';
import { askBus, isBusInterface } from './ask-bus.ts';

test('each frame goes through cansend, and is told of once it was sent', async () => {
  const folder = tempFolder();
  const [command, out] = [join(folder, 'cansend'), join(folder, 'sent')];
  writeFileSync(command, `#!/bin/sh\necho "$@" >> '${out}'\n`);
  chmodSync(command, 0o755);
  const told: string[] = [];
  const asking = askBus({
    line: 'can0',
    isThorough: false,
    nowMs: () => performance.now(),
    onSent: ({ says }) => told.push(says),
    command,
  });
  expect(await asking.done).toBeUndefined();
  expect(readFileSync(out, 'utf8')).toBe('can0 18EAFFFE#00EE00\n');
  expect(told).toEqual(['asks everyone to claim its address again']);
});

test('where there is no cansend nothing is sent, and it is told', async () => {
  const told: string[] = [];
  const asking = askBus({
    line: 'can0',
    isThorough: true,
    nowMs: () => performance.now(),
    onSent: ({ says }) => told.push(says),
    command: join(tempFolder(), 'no-such-program'),
  });
  expect(await asking.done).toContain('can-utils');
  expect(told).toEqual([]);
});

test('only the name of an interface is taken for one', () => {
  expect(['can0', 'vcan1', '-x', 'can0;x', '../x', ''].map(isBusInterface)).toEqual([
    true,
    true,
    ...Array(4).fill(false),
  ]);
});
