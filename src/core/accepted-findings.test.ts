import { expect, test } from 'vitest';
import { isOpen, withReasons } from './accepted-findings.ts';
import type { Finding } from './plan-shape.ts';

const finding = (id: string, level: Finding['level']): Finding => ({ id, rule: 'a/b', level, about: [], says: id });
const found = [finding('one', 'doubt'), finding('two', 'danger'), finding('three', 'fault')];

test('a finding that was accepted says why, the others are left alone', () => {
  const [one, two, three] = withReasons(found, [{ finding: 'one', reason: 'Seen and measured.' }]);
  expect(one).toEqual({ ...found[0], accepted: 'Seen and measured.' });
  expect([two, three]).toEqual(found.slice(1));
});

test('what was accepted is no longer open, but a danger stays open', () => {
  const all = withReasons(
    found,
    found.map(({ id }) => ({ finding: id, reason: 'It is so.' })),
  );
  expect(all.filter(isOpen).map(({ id }) => id)).toEqual(['two']);
});

test('a reason for a finding that is not there changes nothing', () => {
  expect(withReasons(found, [{ finding: 'gone', reason: 'It was so.' }])).toEqual(found);
});
