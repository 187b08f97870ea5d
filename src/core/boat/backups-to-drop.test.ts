import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Backup, backupsToDrop } from './backups-to-drop.ts';

const minuteMs = 60_000;
const hourMs = 60 * minuteMs;
const startMs = Date.UTC(2026, 2, 1, 9);

const at = (keptMs: number, bytes = 300_000): Backup => ({ name: `b${keptMs}`, keptMs, bytes });

/** What stays of some backups after each was kept in its turn, as a save does it. */
const savedAt = (timesMs: readonly number[], bytes?: number): readonly Backup[] => {
  let kept: readonly Backup[] = [];
  for (const nowMs of timesMs) {
    const all = [...kept, at(nowMs, bytes)];
    const gone = new Set(backupsToDrop(all, nowMs));
    kept = all.filter(({ name }) => !gone.has(name));
  }
  return kept;
};

const every = (stepMs: number, count: number): number[] =>
  Array.from({ length: count }, (_, turn) => startMs + turn * stepMs);

test('after a day of edits each quarter of an hour of it is still there, the morning before the first edit too', () => {
  const times = every(10_000, (8 * hourMs) / 10_000);
  const kept = savedAt(times);
  for (let quarter = 0; quarter < 8 * 4; quarter += 1) {
    const [fromMs, toMs] = [startMs + quarter * 15 * minuteMs, startMs + (quarter + 1) * 15 * minuteMs];
    expect(kept.some(({ keptMs }) => keptMs >= fromMs && keptMs < toMs)).toBe(true);
  }
  expect(kept[0]?.keptMs).toBe(startMs);
  expect(kept.length).toBeLessThan(90);
});

test('days stay for two months, and the newest ten always', () => {
  const kept = savedAt(every(6 * hourMs, 4 * 90));
  const lastMs = startMs + (4 * 90 - 1) * 6 * hourMs;
  for (let day = 2; day < 59; day += 1) {
    const toMs = lastMs - day * 24 * hourMs;
    expect(kept.some(({ keptMs }) => keptMs <= toMs && keptMs > toMs - 24 * hourMs)).toBe(true);
  }
  expect(kept.slice(-10).map(({ keptMs }) => lastMs - keptMs)).toEqual(
    [9, 8, 7, 6, 5, 4, 3, 2, 1, 0].map((turn) => turn * 6 * hourMs),
  );
});

test('large backups leave room for fewer, but never fewer than ten', () => {
  expect(savedAt(every(hourMs, 40), 20_000_000).length).toBe(10);
  expect(savedAt(every(hourMs, 40), 5_000_000).length).toBe(20);
});

test('whenever backups were kept, no more than 240 stay, the newest among them, and thinning again changes nothing', () => {
  fc.assert(
    fc.property(fc.uniqueArray(fc.nat(200 * 24 * 60), { maxLength: 400 }), (minutes) => {
      const backups = minutes.map((minute) => at(startMs + minute * minuteMs));
      const nowMs = startMs + 200 * 24 * hourMs;
      const gone = new Set(backupsToDrop(backups, nowMs));
      const kept = backups.filter(({ name }) => !gone.has(name));
      expect(kept.length).toBeLessThanOrEqual(240);
      const newest = [...backups].sort((a, b) => b.keptMs - a.keptMs).slice(0, 10);
      expect(kept).toEqual(expect.arrayContaining(newest));
      expect(backupsToDrop(kept, nowMs)).toEqual([]);
    }),
  );
});
