import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { noWireDoes } from './no-wire-does.ts';
import { aFeed, aLoad } from './power-case.test-helper.ts';

const found = (over: Parameters<typeof aFeed>[0]) => findingsOf(noWireDoes, { plan: { feeds: [aFeed(over)] } });

test('tells which of the limits no size of the table keeps', () => {
  expect(found({ whyNot: 'drop' })[0]?.says).toContain('may lose 0.36 V');
  expect(found({ whyNot: 'drop', allowedV: 0 })[0]?.says).toContain('nothing may be lost');
  expect(found({ whyNot: 'ampacity', carrying: 12 })[0]?.says).toContain('with 12 conductors');
  expect(found({ whyNot: 'insulation' })).toMatchObject([{ level: 'fault', about: ['display.dc', 'helm-circuit'] }]);
});

test('a feed with a wire is right, and one without a fuse is another matter', () => {
  expect(found({})).toEqual([]);
  expect(found({ whyNot: 'maker' })).toEqual([]);
});

test('behind a bank that cannot work nothing is said of single wires', () => {
  const supplies = [{ source: 'house', sourceV: 11.8, works: false, at: [] }];
  const feeds = [aFeed({ whyNot: 'drop', allowedV: 0 })];
  expect(findingsOf(noWireDoes, { plan: { feeds, loads: [aLoad()], supplies } })).toEqual([]);
});
