import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, expect, onTestFinished, test } from 'vitest';
import { aBoat } from '../../src/core/boat/a-boat.test-helper.ts';
import { writeBoat } from '../../src/core/boat/write-boat.ts';
import { contentsOf, lendsDisks, smallDisk } from './small-disk.ts';

const program = join(import.meta.dirname, '../../dist/cli/main.js');
const tern = writeBoat(aBoat().with({ name: 'Tern' }).boat);
const heard =
  '(1700000000.000000) can0 18EEFF23#0102030405060708\n(1700000001.000000) can0 09F80123#0011223344556677\n';

beforeAll(() => {
  if (!existsSync(program)) throw new Error('The program is not built: run npm run build first.');
});

/** A line typed at the terminal, by the built program itself. */
const typed = (line: string, input = ''): { status: number | null; told: string } => {
  const { status, stderr } = spawnSync(process.execPath, [program, ...line.split(' ')], { input, encoding: 'utf8' });
  return { status, told: stderr.trim() };
};

/** Papers of yesterday, a boat, one that is damaged, and a recording. */
const fillFolder = (folder: string): void => {
  for (const inside of ['papers', 'damaged.backups']) mkdirSync(join(folder, inside));
  writeFileSync(join(folder, 'tern.boat.json'), tern);
  writeFileSync(join(folder, 'papers', 'boat.svg'), 'of yesterday');
  writeFileSync(join(folder, 'damaged.boat.json'), tern.slice(0, 100));
  writeFileSync(join(folder, 'damaged.backups', '2026-03-01-09-30-00-000.json'), tern);
  writeFileSync(join(folder, 'heard.log'), heard);
};

const writing: readonly string[] = [
  'new --pattern ketch --length 11 --out new.boat.json',
  'tape tern.boat.json WAY 3.45',
  'plan tern.boat.json --out papers',
  'prove tern.boat.json heard.log --out proof',
  'survey heard.log --out draft.boat.json',
  'restore damaged.boat.json',
  'listen tern.boat.json --stdin --record live.log',
];

const way = aBoat().boat.ways[0]?.id ?? '';
const inFolder = (line: string, folder: string): string =>
  line.replace('WAY', way).replace(/\S+\.(json|log)|(?<=--out )\S+/g, (name) => join(folder, name));

test.runIf(lendsDisks)(
  'every command that writes says that the disk is full, ends with 2 and leaves all as it was',
  {
    timeout: 180_000,
  },
  (context) => {
    const disk = smallDisk(400);
    if (disk === undefined) return context.skip('no disk is lent here');
    fillFolder(disk.folder);
    disk.fill();
    const before = contentsOf(disk.folder);
    for (const line of writing) {
      const { status, told } = typed(inFolder(line, disk.folder), heard.repeat(300));
      expect([line, status, told.split('\n').at(-1)]).toEqual([line, 2, expect.stringMatching(/^The disk is full/)]);
      expect(told).toContain(disk.folder);
      expect(told).toMatch(/Make room/);
      expect(contentsOf(disk.folder)).toEqual(before);
    }
  },
);

test.runIf(lendsDisks)('a disk that can only be read is told', (context) => {
  const disk = smallDisk(400);
  if (disk === undefined) return context.skip('no disk is lent here');
  fillFolder(disk.folder);
  disk.remount('ro');
  const before = contentsOf(disk.folder);
  for (const line of [writing[1] ?? '', writing.at(-1) ?? '']) {
    const { status, told } = typed(inFolder(line, disk.folder));
    expect([line, status, told]).toEqual([line, 2, expect.stringMatching(/^The disk can only be read\. At .+ Save/)]);
    expect(contentsOf(disk.folder)).toEqual(before);
  }
});

test('a limit on the size of files, and an output that takes nothing, are told', () => {
  const folder = mkdtempSync(join(tmpdir(), 'fairlead-limit-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  fillFolder(folder);
  const before = contentsOf(folder);
  const shell = (line: string) => spawnSync('bash', ['-c', line], { encoding: 'utf8' });
  const fairlead = `"${process.execPath}" "${program}"`;
  // two blocks of 1024 bytes
  const limited = shell(`ulimit -f 2; ${fairlead} ${inFolder(writing[0] ?? '', folder)}`);
  expect([limited.status, limited.stderr]).toEqual([2, expect.stringContaining('larger than files may be here')]);
  expect(contentsOf(folder)).toEqual(before);
  if (!existsSync('/dev/full')) return;
  const unheard = shell(`${fairlead} sheets > /dev/full`);
  expect([unheard.status, unheard.stderr]).toEqual([2, expect.stringMatching(/^The disk is full: what was printed/)]);
});
