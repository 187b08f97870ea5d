import { expect, test } from 'vitest';
import { aPilotBoat } from '../../boat/pilot-boat.test-helper.ts';
import { noWayToLetGo } from './no-way-to-let-go.ts';
import { findsAboard } from './steering-case.test-helper.ts';

const found = findsAboard(noWayToLetGo);

test('a pilot in which everything fits passes', () => {
  expect(found(aPilotBoat().boat)).toEqual([]);
});

const steered = (letsGo: NonNullable<Parameters<typeof found>[0]['steering']>[number]['letsGo']) =>
  found(aPilotBoat().with({ steering: [{ place: 'helm', by: 'wheel', letsGo }] }).boat);

test('a wheel with only the key of a pilot head is a danger', () => {
  const [finding] = steered([{ how: 'pilot-head' }]);
  expect(finding).toMatchObject({ level: 'danger', about: ['helm'] });
  expect(finding?.says).toContain('the key on the pilot head needs the network');
});

test('a switch in the locker is out of reach: 1.79 m, and 1 m is allowed', () => {
  const [finding] = steered([{ how: 'hard-wired-switch', at: 'locker' }]);
  expect(finding?.measured?.value).toBeCloseTo(1.79, 2);
  expect(finding?.limit).toMatchObject({ value: 1, unit: 'm' });
});

test('one steering place without a way is enough, and one with nothing entered too', () => {
  const two = aPilotBoat().change((boat) => {
    boat.steering?.push({ place: 'stern-rail', by: 'emergency-tiller', letsGo: [] });
  });
  expect(found(two.boat)).toMatchObject([
    { about: ['stern-rail'], says: expect.stringContaining('nothing is entered') },
  ]);
});

test('a file that does not say where she is steered is a doubt, and only with a pilot aboard', () => {
  const silent = aPilotBoat().change((boat) => {
    delete boat.steering;
  });
  expect(found(silent.boat)).toMatchObject([{ level: 'doubt', about: ['pump.motor'] }]);
  const gone = silent.unit('pump', { fate: 'goes' }).unit('pilot', { fate: 'goes' });
  expect(found(gone.boat)).toEqual([]);
});
