import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Finding } from '../../core/plan-shape.ts';
import { gatherFindings } from './gather-findings.ts';

const finding = (rule: string, at: number, level: Finding['level'] = 'doubt'): Finding => ({
  id: `${rule}:${at}`,
  rule,
  level,
  about: [`unit-${at}`],
  says: `Unit ${at}.`,
});
const several = (count: number): Finding[] => Array.from({ length: count }, (_, at) => finding('a/b', at));

test('three findings of one rule stand one by one', () => {
  expect(gatherFindings(several(3)).map(({ said, more }) => [said.length, more.length])).toEqual([
    [1, 0],
    [1, 0],
    [1, 0],
  ]);
});

test('four become one note with two said in full', () => {
  const [note, ...others] = gatherFindings(several(4));
  expect(others).toEqual([]);
  expect(note?.said.map(({ id }) => id)).toEqual(['a/b:0', 'a/b:1']);
  expect(note?.more.map(({ id }) => id)).toEqual(['a/b:2', 'a/b:3']);
});

test('a fault is never gathered with a doubt of the same rule', () => {
  expect(gatherFindings([...several(3), finding('a/b', 9, 'fault')])).toHaveLength(4);
});

test('no finding is lost and none said twice', () => {
  const some = fc.array(
    fc.tuple(fc.constantFrom('a/b', 'c/d', 'e/f'), fc.nat(50), fc.constantFrom('fault' as const, 'doubt' as const)),
    { maxLength: 40 },
  );
  fc.assert(
    fc.property(some, (rows) => {
      const findings = rows.map(([rule, at, level]) => finding(rule, at, level));
      const ids = gatherFindings(findings).flatMap(({ said, more }) => [...said, ...more].map(({ id }) => id));
      expect(ids.sort()).toEqual(findings.map(({ id }) => id).sort());
    }),
  );
});
