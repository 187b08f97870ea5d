import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { plannedBoat } from '../../../tests/recordings/planned-boat.ts';
import { liveSessions } from './live-sessions.ts';

const { index, plan } = plannedBoat('sandpiper');
const source = { says: 'a test', start: () => undefined, stop: () => Promise.resolve() };

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

const wish = { boat: index.boat, plan, source, on: undefined };

test('with no page looking on and nothing recorded, listening ends after ten minutes', async () => {
  const sessions = liveSessions({});
  sessions.begin('tern', wish);
  await vi.advanceTimersByTimeAsync(590_000);
  expect(sessions.isOn('tern')).toBe(true);
  await vi.advanceTimersByTimeAsync(20_000);
  expect(sessions.isOn('tern')).toBe(false);
});

test('a boat is listened to once at a time', async () => {
  const sessions = liveSessions({});
  expect([sessions.begin('tern', wish), sessions.begin('tern', wish), sessions.begin('skua', wish)]).toEqual([
    true,
    false,
    true,
  ]);
  await sessions.stopAll();
  expect(sessions.told('tern')).toEqual({ listening: false });
});
