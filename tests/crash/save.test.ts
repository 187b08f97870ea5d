import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { startLot } from '../recordings/mutate-bytes.ts';
import { killLoop } from './kill-loop.ts';

/** Enough for every commit; `npm run kill-loop` for a long run. */
const kills = Number(process.env.KILLS ?? 50);

test(`a program killed ${kills} times while it edits, saves and writes its log loses nothing it had told as safe`, {
  timeout: 120_000 + kills * 4000,
}, async () => {
  const folder = mkdtempSync(join(tmpdir(), 'fairlead-crash-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const { saves, lines, faults } = await killLoop({ folder, kills, lot: startLot(20_261_127) });
  expect(faults).toEqual([]);
  expect(saves).toBeGreaterThanOrEqual(kills);
  expect(lines).toBeGreaterThan(0);
});
