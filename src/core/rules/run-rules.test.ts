import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import type { LaidRule, WholePlanRule } from './rule.ts';
import { findingsOf, ruleInput } from './rule-case.test-helper.ts';
import { runRules } from './run-rules.ts';

const rule = (fields: Partial<LaidRule>): LaidRule => ({
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
  const both = runRules([broken, whole], ruleInput());
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

test('only a rule that says it looks at the whole plan is shown what is needed', () => {
  const told: number[] = [];
  const laid = rule({
    check: ({ index, reaches }) => {
      told.push(index.boat.needs.length, reaches.network.index.boat.needs.length);
      return [];
    },
  });
  const all: WholePlanRule = {
    ...rule({ id: 'test/all' }),
    looksAt: 'whole-plan',
    check: ({ index, reaches }) => {
      told.push(index.boat.needs.length, reaches.network.index.boat.needs.length);
      return [];
    },
  };
  const { boat } = aBoat();
  expect(boat.needs.length).toBeGreaterThan(0);
  runRules([laid, all], ruleInput({ boat }));
  expect(told).toEqual([0, 0, boat.needs.length, boat.needs.length]);
});
