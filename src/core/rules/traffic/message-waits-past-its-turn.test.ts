import { expect, test } from 'vitest';
import type { BusTraffic, SentEntry } from '../../traffic-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { messageWaitsPastItsTurn } from './message-waits-past-its-turn.ts';

const message: SentEntry = {
  pgn: 127258,
  count: 1,
  everyMs: 250,
  rate: 'sheet',
  frames: 1,
  framesPerS: 4,
  worstPct: 0.256,
  waitMs: 240,
};

const found = (messages: readonly SentEntry[], worstPct = 26) => {
  const bus: BusTraffic = {
    bus: 'nav',
    units: 1,
    averagePct: 0.886 * worstPct,
    worstPct,
    shipsPct: 0,
    senders: [{ port: 'gnss.n2k', framesPerS: 4, averagePct: 1, worstPct: 1, messages: [...messages] }],
    bursts: [],
  };
  return findingsOf(messageWaitsPastItsTurn, { plan: { traffic: { waters: 'quiet', buses: [bus], lines: [] } } });
};

test('a message that is through in time, be it by ten milliseconds, is no finding', () => {
  expect(found([message, { ...message, waitMs: 250 }])).toEqual([]);
});

test('one that may still wait when its next is due is a doubt, with both times', () => {
  const [finding, ...others] = found([message, { ...message, waitMs: 255 }]);
  expect(others).toEqual([]);
  expect(finding).toMatchObject({
    level: 'doubt',
    about: ['nav'],
    measured: { value: 255, unit: 'ms' },
    limit: { value: 250, unit: 'ms' },
  });
  expect(finding?.says).toContain('(127258)');
});

test('the worst by its own interval comes first, and only three are named', () => {
  const late = [300, 600, 400, 500].map((waitMs, at) => ({ ...message, pgn: 127250 + at, waitMs }));
  const [finding] = found(late);
  expect(finding?.measured?.value).toBe(600);
  expect(finding?.says).toContain('and 1 more');
});

test('a wait that nothing bounds is past every interval', () => {
  const { waitMs: _, ...unbounded } = message;
  const [finding] = found([unbounded]);
  expect(finding?.says).toContain('without a bound');
  expect(finding).not.toHaveProperty('measured');
});

test('reports of other ships are due at no set time, and a bus past the stop mark has a finding of its own', () => {
  expect(found([{ ...message, rate: 'waters', waitMs: 500 }])).toEqual([]);
  expect(found([{ ...message, waitMs: 500 }], 71)).toEqual([]);
});
