import { expect, test } from 'vitest';
import { findingsOf } from '../rule-case.test-helper.ts';
import { numberNotReadBack } from './number-not-read-back.ts';
import { ternWithAis } from './typed-case.test-helper.ts';

const number = { digits: '000123456', from: 'state' as const };

test('nine digits that one person typed and none read back are a doubt, shown by their last two', () => {
  const [finding] = findingsOf(numberNotReadBack, { boat: ternWithAis({ papers: { number } }) });
  expect(finding).toMatchObject({ id: 'settings/number-not-read-back', level: 'doubt' });
  expect(finding?.says).toContain('•••••••56');
});

test('read back, or not there at all, they are none', () => {
  const boat = ternWithAis({ papers: { number: { ...number, readBackBy: 'the mate' } } });
  expect(findingsOf(numberNotReadBack, { boat })).toEqual([]);
  expect(findingsOf(numberNotReadBack, { boat: ternWithAis() })).toEqual([]);
});
