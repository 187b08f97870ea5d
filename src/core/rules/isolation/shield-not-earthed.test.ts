import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { isolationFindings } from './isolation-case.test-helper.ts';
import { shieldNotEarthed } from './shield-not-earthed.ts';

const earthed = (shieldAt: string[] | undefined) =>
  aBoat().change((boat) => {
    for (const bus of boat.buses) if (shieldAt !== undefined) bus.shieldAt = shieldAt;
  });

test('a shield that is earthed passes, and one of which nothing is said is earthed at the feed by the plan', () => {
  expect(isolationFindings(shieldNotEarthed, earthed(['locker']))).toEqual([]);
  expect(isolationFindings(shieldNotEarthed, earthed(undefined))).toEqual([]);
});

test('one that is said to be earthed nowhere is a doubt', () => {
  expect(isolationFindings(shieldNotEarthed, earthed([]))).toMatchObject([{ level: 'doubt', about: ['nav'] }]);
});
