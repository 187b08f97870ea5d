import { expect, test } from 'vitest';
import { lightStore } from './light-store.ts';

test('what the pointer rests on is lit, and what was picked comes back when it leaves', () => {
  const lights = lightStore();
  lights.pick(['radar']);
  lights.rest(['depth']);
  expect([lights.isLit(['depth']), lights.isLit(['radar'])]).toEqual([true, false]);
  lights.rest([]);
  expect([lights.isLit(['depth']), lights.isLit(['radar', 'other'])]).toEqual([false, true]);
});

test('a thing that stands for nothing is never lit', () => {
  const lights = lightStore();
  lights.pick(['radar']);
  expect(lights.isLit([])).toBe(false);
});

test('leaving a place where nothing was lit wakes nobody', () => {
  const lights = lightStore();
  let heard = 0;
  lights.subscribe(() => {
    heard += 1;
  });
  lights.rest([]);
  expect(heard).toBe(0);
});
