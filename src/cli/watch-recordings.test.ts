import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { plannedBoat, recordPlanned } from '../../tests/recordings/planned-boat.ts';
import { recordLine } from '../../tests/recordings/planned-line.ts';
import { candumpBytes } from '../../tests/recordings/write-recording.ts';
import { isProved } from '../core/proof/compare/is-proved.ts';
import { proofChapter } from '../papers/binder/chapters/proof-of-the-bus.ts';
import { proofText } from '../papers/proof/proof-text.ts';
import { watchRecordings } from './watch-recordings.ts';

const folder = mkdtempSync(join(tmpdir(), 'fairlead-prove-'));
afterAll(() => rmSync(folder, { recursive: true }));

const written = (name: string, bytes: Uint8Array | string): string => {
  writeFileSync(join(folder, name), bytes);
  return join(folder, name);
};

const { index, plan } = plannedBoat('bonxie');
const bonxie = { boat: index.boat, plan };
const frames = recordPlanned({ index, plan }, 'ship', 8);
const half = frames.length >> 1;
const first = written('first.log', candumpBytes(frames.slice(0, half)));
const second = written('second.log', candumpBytes(frames.slice(half)));
const nav = written('nav.log', candumpBytes(recordPlanned({ index, plan }, 'nav', 8)));
const gyro = written(
  'gyro.txt',
  recordLine({ index, plan }, 'gyro.out', 8)
    .map(({ timeUs, text }) => `(${(timeUs / 1_000_000).toFixed(6)}) ${text}\r\n`)
    .join(''),
);

const reportOf = async (...of: Parameters<typeof watchRecordings>) => (await watchRecordings(...of)).report;

describe('recordings of a boat with several wires', () => {
  test('go to the wire each fits best, two of one wire as one', async () => {
    const { wires } = await reportOf(bonxie, [first, nav, second, gyro]);
    expect(wires.map(({ id, known, count }) => [id, known, count > 0])).toEqual([
      ['nav', 'fits', true],
      ['ship', 'fits', true],
      ['gyro.out', 'fits', true],
    ]);
    expect(wires[1]?.count).toBe(frames.length);
  });

  test('go where somebody says they belong', async () => {
    const { wires } = await reportOf(bonxie, [`nav=${nav}`]);
    expect(wires).toMatchObject([{ id: 'nav', known: 'told' }]);
  });

  test('are refused for a wire she has not, and for a file that is none', async () => {
    await expect(watchRecordings(bonxie, [`aft=${nav}`])).rejects.toThrow('no bus or 0183 talker');
    await expect(watchRecordings(bonxie, [join(folder, 'none.log')])).rejects.toThrow('no such recording');
  });

  test('are told on 80 columns and in the binder, with nothing private in it', async () => {
    const report = await reportOf(bonxie, [`nav=${nav}`]);
    const text = proofText(bonxie.boat, report);
    expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
    const { blocks } = proofChapter(bonxie.boat, report);
    expect(blocks.filter(({ kind }) => kind === 'table').length).toBeGreaterThanOrEqual(3);
    // latitude 54.1 of the invented boat, and the text its units call themselves by
    for (const told of [text, JSON.stringify(blocks), JSON.stringify(report)])
      expect(told).not.toMatch(/54\.1\b|INVENTED/);
    expect(isProved(report)).toBe(report.findings.every(({ level }) => level !== 'fault'));
  });
});
