import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { inventedDevices, recordBus } from '../../../tests/recordings/invented-bus.ts';
import { candumpBytes } from '../../../tests/recordings/write-recording.ts';
import { readBoat } from '../../core/boat/read-boat.ts';
import { tempFolder } from '../../node/files/temp-folder.test-helper.ts';
import { newBoat } from './new.ts';
import { survey } from './survey.ts';

beforeEach(() => {
  vi.spyOn(process.stderr, 'write').mockReturnValue(true);
  vi.spyOn(process.stdout, 'write').mockReturnValue(true);
});
afterEach(() => vi.restoreAllMocks());

const recorded = (folder: string): string => {
  const log = join(folder, 'bus.log');
  writeFileSync(log, candumpBytes(recordBus({ devices: inventedDevices, seconds: 20 })));
  return log;
};
const boatIn = (path: string) => readBoat(readFileSync(path, 'utf8'));

test('what was heard comes aboard a boat that is there, whose own file stays as it is', async () => {
  const folder = tempFolder();
  const [mine, out] = [join(folder, 'mine.boat.json'), join(folder, 'heard.boat.json')];
  await newBoat({ pattern: 'trawler', length: '12', name: 'Mine', out: mine });
  const before = readFileSync(mine, 'utf8');
  await survey([recorded(folder)], { into: mine, out });
  expect(readFileSync(mine, 'utf8')).toBe(before);
  expect(boatIn(out)).toMatchObject({ name: 'Mine', hull: { kind: 'trawler' } });
  expect(boatIn(out).kit.length).toBe(9);
});

test('a draft on a hull pattern has her places, and without one it is the stand-in', async () => {
  const folder = tempFolder();
  const log = recorded(folder);
  const [on, bare] = [join(folder, 'on.boat.json'), join(folder, 'bare.boat.json')];
  await survey([log], { pattern: 'open-boat', length: '20 ft', out: on });
  expect(boatIn(on).hull).toMatchObject({ kind: 'open-boat', lengthM: 6.1 });
  expect(boatIn(on).kit.length).toBe(9);
  await survey([log], { out: bare });
  expect(boatIn(bare).places.length).toBe(1);
});

test('from lines of sentences alone nothing is drafted, and it is said why', async () => {
  const folder = tempFolder();
  const [log, out] = [join(folder, 'wind.log'), join(folder, 'out.boat.json')];
  writeFileSync(log, '$IIMWV,338,R,13.41,N,A*2C\r\n'.repeat(20));
  await expect(survey([log], { out })).rejects.toThrow('No unit of a bus was heard');
  expect(existsSync(out)).toBe(false);
});
