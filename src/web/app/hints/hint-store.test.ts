import { afterEach, expect, test, vi } from 'vitest';
import { jobSteps } from '../../../papers/next/job-steps.ts';
import { bringHintsBack, type HintId, hintAt, putAllHintsAway, putHintAway } from './hint-store.ts';

afterEach(() => {
  vi.unstubAllGlobals();
  vi.resetModules();
});

test('one hint at a time: each that is put away makes room for the next, and at the end there is none', () => {
  for (const step of jobSteps) {
    const seen: HintId[] = [];
    for (let hint = hintAt(step, seen); hint !== undefined; hint = hintAt(step, seen)) seen.push(hint.id);
    expect(new Set(seen).size, step).toBe(seen.length);
    expect(seen[0], step).toBe('next');
    expect(seen.length).toBeLessThan(7);
  }
  expect(hintAt('kit', ['next'])).toEqual({ id: 'kit', place: 'margin' });
});

/** A browser that keeps what it is told, and the hints of a page loaded in it. */
const aPage = async (store: Map<string, string>) => {
  vi.resetModules();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => store.get(key) ?? null,
    setItem: (key: string, value: string) => void store.set(key, value),
  });
  return import('./hint-store.ts');
};

test('what was put away stays away when the page is loaded again, until the hints are called back', async () => {
  const store = new Map<string, string>();
  const first = await aPage(store);
  first.putHintAway('next');
  first.putHintAway('kit');
  expect([...store.values()]).toEqual(['next kit']);
  const again = await aPage(store);
  again.putHintAway('pull');
  expect([...store.values()]).toEqual(['next kit pull']);
  again.bringHintsBack();
  expect([...store.values()]).toEqual(['']);
  again.putAllHintsAway();
  expect(again.hintAt('lines', [...store.values()].join('').split(' ') as HintId[])).toBeUndefined();
});

test('a browser that keeps nothing still puts a hint away for as long as the page lasts', () => {
  expect(() => {
    putHintAway('next');
    putAllHintsAway();
    bringHintsBack();
  }).not.toThrow();
});
