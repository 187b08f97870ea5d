import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { UserError } from '../../core/boat/user-error.ts';
import { tempFolder } from '../../node/files/temp-folder.test-helper.ts';
import { phonesThread } from './phones-thread.ts';

test('phones are let in by a thread, which tells what it cannot do and answers as the switch in it does', async () => {
  const [folder, pages] = [tempFolder(), tempFolder()];
  const pageFolder = join(pages, 'phone');
  const phones = phonesThread({ folder, pageFolder, port: 0 });
  onTestFinished(phones.close);
  expect(await phones.told()).toMatchObject({ on: false, devices: [] });
  await expect(phones.turnOn()).rejects.toThrow('The page for phones is not built.');
  expect(await phones.giveCode()).toBe(false);
  mkdirSync(pageFolder);
  writeFileSync(join(pageFolder, 'index.html'), '<p>phone</p>');
  await phones.turnOn();
  const { port } = await phones.told();
  expect(await (await fetch(`http://127.0.0.1:${port}/`)).text()).toBe('<p>phone</p>');
  expect(await phones.giveCode()).toBe(true);
  expect((await phones.told()).code?.code).toMatch(/^\d{6}$/);
  expect(await phones.revoke('abcdefgh')).toBe(false);
  await phones.turnOff();
  await expect(fetch(`http://127.0.0.1:${port}/`)).rejects.toThrow();
});

test('a thread that falls takes nothing with it, and whoever asked is told', async () => {
  const work = { folder: tempFolder(), pageFolder: tempFolder(), port: 0 };
  // too little for anything
  const phones = phonesThread(work, 4);
  onTestFinished(phones.close);
  await expect(phones.told()).rejects.toThrow(UserError);
});
