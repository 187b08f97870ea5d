import { expect, test } from 'vitest';
import type { Rule } from './rule.ts';
import { findingsOf } from './rule-case.test-helper.ts';
import { runRules } from './run-rules.ts';

const rule = (fields: Partial<Rule>): Rule => ({
  id: 'test/one',
  level: 'doubt',
  title: 'A test.',
  sources: [],
  check: () => [],
  ...fields,
});

test('a rule that breaks becomes a finding, and the others still run', () => {
  const broken = rule({
    id: 'test/broken',
    check: () => {
      throw new TypeError('planted');
    },
  });
  const whole = rule({ check: () => [{ about: ['nav'], says: 'Found.' }] });
  const [input] = [findingsOf(broken), findingsOf(whole)];
  expect(input).toMatchObject([{ rule: 'program/rule-broke', level: 'doubt' }]);
  const both = runRules([broken, whole], {
    index: undefined as never,
    plan: undefined as never,
    reaches: undefined as never,
  });
  expect(both.map(({ id }) => id)).toEqual(['program/rule-broke:test/broken', 'test/one:nav']);
});

test('the id of a finding is its rule, the sorted ids it is about and what tells two apart', () => {
  const found = findingsOf(rule({ check: () => [{ about: ['b', 'a', 'b'], apart: ['engine', 0], says: 'x' }] }));
  expect(found.map(({ id, about }) => ({ id, about }))).toEqual([{ id: 'test/one:a,b:engine:0', about: ['a', 'b'] }]);
});

test('one thing said twice is one finding', () => {
  const twice = rule({ check: () => [1, 2].map(() => ({ about: ['a'], says: 'x' })) });
  expect(findingsOf(twice)).toHaveLength(1);
});
