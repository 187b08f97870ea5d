import { expect, test } from 'vitest';
import { aBoat } from '../a-boat.test-helper.ts';
import { inPlace } from '../in-place.ts';
import { refuseBroken } from './refuse-broken.ts';

test('an edit may not leave a length that no boat has, nor a reference that leads nowhere', () => {
  const { boat } = aBoat();
  expect(() => refuseBroken(boat)).not.toThrow();
  const long = inPlace(boat, (draft) => {
    for (const way of draft.ways) way.length.valueM = 5000;
  });
  expect(() => refuseBroken(long)).toThrow('`valueM` is 5000; it must be at most 1000.');
  const lost = inPlace(boat, (draft) => {
    for (const unit of draft.kit) unit.place = 'nowhere';
  });
  expect(() => refuseBroken(lost)).toThrow('nowhere');
});
