import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { aReading } from './a-plan.test-helper.ts';
import { beforeAndAfter } from './before-and-after.ts';

test('what was there before is kept, what is new is gained, and what nothing has afterwards is named', () => {
  const readings = [
    aReading({ reading: 'depth', seenBefore: true }),
    aReading({ reading: 'heading', seenBefore: false }),
    aReading({ reading: 'rudder', seenBefore: true, arrives: false }),
  ];
  const before = [
    { reading: 'depth' as const, at: 'display', by: [], after: true },
    { reading: 'log-distance' as const, at: 'display', by: [], after: false },
  ];
  expect(beforeAndAfter(aBoat().boat, { readings, before })).toEqual({
    kept: 1,
    gained: 1,
    lost: ['log distance, before at Helm display'],
  });
});
