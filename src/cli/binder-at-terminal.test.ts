import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { anExample } from '../../tests/an-example.test-helper.ts';
import { UserError } from '../core/boat/user-error.ts';
import { quickPlan } from '../core/quick-plan.test-helper.ts';
import { binderWish, writeBinder } from './binder-at-terminal.ts';

test('a binder is for A4 and of no day, unless told', () => {
  expect(binderWish({})).toEqual({ paper: 'a4' });
  expect(binderWish({ paper: 'letter', date: '2028-02-29' })).toEqual({ paper: 'letter', dateIso: '2028-02-29' });
});

test.each([
  { paper: 'a5' },
  { paper: 'toString' },
  { date: '2026-02-30' },
  { date: '26-11-2026' },
  { date: '2026-13-01' },
])('%o is refused with what to do', (wish) => {
  expect(() => binderWish(wish)).toThrow(UserError);
});

test('the binder alone is written to a file, or it is said where it could not be', async () => {
  const boat = anExample('sandpiper');
  const of = { boat, plan: quickPlan(boat), paper: 'letter' } as const;
  const folder = mkdtempSync(join(tmpdir(), 'fairlead-binder-'));
  const file = join(folder, 'mine.pdf');
  await writeBinder(file, of);
  expect(readFileSync(file).subarray(0, 5).toString('latin1')).toBe('%PDF-');
  await expect(writeBinder(join(folder, 'missing', 'mine.pdf'), of)).rejects.toThrow(UserError);
  rmSync(folder, { recursive: true });
});
