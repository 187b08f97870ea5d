import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { aFeed } from './power-case.test-helper.ts';
import { wireSizeUnknown } from './wire-size-unknown.ts';

test('all wires aboard that nobody has read are told of together', () => {
  const unread = (over: Parameters<typeof aFeed>[0]) => {
    const { areaMm2: _area, ...feed } = aFeed(over);
    return feed;
  };
  const feeds = [unread({}), unread({ to: 'gnss.n2k' }), aFeed({ to: 'nav' })];
  expect(findingsOf(wireSizeUnknown, { plan: { feeds } })).toMatchObject([
    { level: 'advice', about: ['display.dc', 'gnss.n2k'], cure: expect.stringContaining('areaMm2') },
  ]);
});

test('a wire still to be picked is not unknown', () => {
  const { areaMm2: _area, wire: _wire, ...none } = aFeed();
  expect(findingsOf(wireSizeUnknown, { plan: { feeds: [none] } })).toEqual([]);
});
