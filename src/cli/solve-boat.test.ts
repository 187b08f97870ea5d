import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readBoat } from '../core/boat/read-boat.ts';
import { solveBoat } from './solve-boat.ts';

const gannet = readBoat(readFileSync(new URL('../../examples/gannet/gannet.boat.json', import.meta.url), 'utf8'));

test('a search stopped at once gives a plan with the first layout it has, and says how far off it may be', async () => {
  const { buses } = await solveBoat(gannet, { isStopped: () => true, onProgress: () => undefined });
  const { layout } = buses[0] ?? expect.unreachable();
  expect(layout.status).toBe('stopped');
  expect(layout.broken).toEqual([]);
  expect(layout.bound).toBeLessThan(layout.cost);
});

test('a search says which bus it is at and what it has found', async () => {
  const said: string[] = [];
  await solveBoat(gannet, {
    isStopped: () => false,
    onProgress: ({ says, found = '' }) => said.push(`${says} ${found}`),
  });
  expect(said[0]).toBe('Looking for the cheapest way to lay Navigation bus. ');
  expect(said.at(-1)).toMatch(/571\.63 EUR so far; none can be under 571\.63 EUR\.$/);
});
