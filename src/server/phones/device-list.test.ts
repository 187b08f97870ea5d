import { readdirSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { UserError } from '../../core/boat/user-error.ts';
import { boatFolder } from '../../node/boat-folder.ts';
import { contentHash } from '../../node/files/content-hash.ts';
import { tempFolder } from '../../node/files/temp-folder.test-helper.ts';
import { deviceFile, deviceFileName, mostDevices } from './device-file.ts';
import { deviceList } from './device-list.ts';

const started = (folder = tempFolder()) => {
  let nowMs = 1_800_000_000_000;
  const devices = deviceList(deviceFile(folder), () => nowMs);
  return {
    folder,
    path: join(folder, deviceFileName),
    devices,
    pass: (ms: number) => {
      nowMs += ms;
    },
  };
};

test('a paired phone is known by its token, after a restart too, and by nothing else', async () => {
  const { folder, devices } = started();
  const { token, device } = await devices.pair('Anna');
  expect(Buffer.from(token, 'base64url')).toHaveLength(32);
  expect(await devices.holderOf(token)).toMatchObject({ id: device.id, name: 'Anna' });
  expect(await started(folder).devices.holderOf(token)).toMatchObject({ id: device.id });
  for (const other of ['', 'x', `${token.slice(1)}A`, contentHash(token)])
    expect(await devices.holderOf(other)).toBeUndefined();
});

test('the file holds no token, is for its owner only, and is no boat', async () => {
  const { folder, path, devices } = started();
  const { token } = await devices.pair('Anna');
  const text = readFileSync(path, 'utf8');
  expect(text).not.toContain(token);
  expect(text).toContain(contentHash(token));
  if (process.platform !== 'win32') expect(statSync(path).mode & 0o777).toBe(0o600);
  expect(readdirSync(folder)).toEqual([deviceFileName]);
  expect(await boatFolder(folder).list()).toEqual([]);
});

test('a file that others could read is so no longer once it is written again', async () => {
  const { path, devices } = started();
  writeFileSync(path, JSON.stringify({ format: 'fairlead-phones', version: 1, devices: [] }), { mode: 0o644 });
  await devices.pair('Anna');
  if (process.platform !== 'win32') expect(statSync(path).mode & 0o777).toBe(0o600);
});

test('a revoked phone is a stranger from then on, in every program that serves the folder', async () => {
  const { folder, devices } = started();
  const { token, device } = await devices.pair('Anna');
  const other = await devices.pair('Ben');
  const elsewhere = started(folder).devices;
  expect(await elsewhere.holderOf(token)).toBeDefined();
  expect(await devices.revoke(device.id)).toBe(true);
  expect(await devices.holderOf(token)).toBeUndefined();
  expect(await elsewhere.holderOf(token)).toBeUndefined();
  expect(await devices.holderOf(other.token)).toBeDefined();
  expect(await devices.revoke(device.id)).toBe(false);
});

test('with the file taken away every phone is a stranger', async () => {
  const { path, devices } = started();
  const { token } = await devices.pair('Anna');
  rmSync(path);
  expect(await devices.holderOf(token)).toBeUndefined();
  expect(await devices.list()).toEqual([]);
});

test('two phones of one name are told apart', async () => {
  const { devices } = started();
  for (let time = 0; time < 3; time += 1) await devices.pair('Anna');
  expect((await devices.list()).map(({ name }) => name)).toEqual(['Anna', 'Anna 2', 'Anna 3']);
});

test('phones paired at the same moment are all kept', async () => {
  const { devices } = started();
  const paired = await Promise.all(Array.from({ length: 12 }, () => devices.pair('Anna')));
  for (const { token } of paired) expect(await devices.holderOf(token)).toBeDefined();
  expect(new Set((await devices.list()).map(({ name }) => name)).size).toBe(12);
});

test('when a phone was seen last is shown at once and written down now and then', async () => {
  const { folder, devices, pass } = started();
  const { token, device } = await devices.pair('Anna');
  pass(400_000);
  await devices.holderOf(token);
  expect((await devices.list())[0]?.lastSeenMs).toBe(device.pairedAtMs + 400_000);
  await devices.pair('Ben');
  expect((await started(folder).devices.list())[0]?.lastSeenMs).toBe(device.pairedAtMs + 400_000);
});

test(`no more than ${mostDevices} phones are paired`, async () => {
  const { path, devices } = started();
  const one = { name: 'x', pairedAtMs: 1, lastSeenMs: 1, tokenHash: contentHash('x') };
  const many = Array.from({ length: mostDevices }, (_, at) => ({ ...one, id: `abcdef${10 + at}` }));
  writeFileSync(path, JSON.stringify({ format: 'fairlead-phones', version: 1, devices: many }));
  await expect(devices.pair('Anna')).rejects.toThrow(UserError);
  expect(await devices.revoke('abcdef10')).toBe(true);
  await expect(devices.pair('Anna')).resolves.toBeDefined();
});

test.each([
  ['no JSON', '{'],
  ['a token in place of its hash', '{"format":"fairlead-phones","version":1,"devices":[{"token":"x"}]}'],
  ['far too large', ' '.repeat(100_001)],
])('a list that is %s is told of and lets nobody in', async (_, text) => {
  const { path, devices } = started();
  writeFileSync(path, text);
  await expect(devices.list()).rejects.toThrow(UserError);
  await expect(devices.holderOf('x'.repeat(43))).rejects.toThrow(UserError);
});

test.skipIf(process.platform === 'win32')('a link to a list elsewhere is not followed', async () => {
  const elsewhere = started();
  const { token } = await elsewhere.devices.pair('Mallory');
  const { path, devices } = started();
  symlinkSync(elsewhere.path, path);
  await expect(devices.holderOf(token)).rejects.toThrow(UserError);
});
