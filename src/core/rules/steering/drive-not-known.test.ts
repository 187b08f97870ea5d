import { expect, test } from 'vitest';
import { aPilotBoat } from '../../boat/pilot-boat.test-helper.ts';
import { driveNotKnown } from './drive-not-known.ts';
import { findsAboard } from './steering-case.test-helper.ts';

const found = findsAboard(driveNotKnown);

test('a pilot in which everything fits passes', () => {
  expect(found(aPilotBoat().boat)).toEqual([]);
});

test('what a sheet leaves out is one doubt a pair, that names each point', () => {
  const [finding, ...others] = found(aPilotBoat({ without: ['whenPowerIsLost', 'boatKg'] }).boat);
  expect(finding).toMatchObject({ level: 'doubt', about: ['pilot.motor', 'pump.motor'] });
  expect(finding?.says).toMatch(/weight of the boat.*whether the drive lets go/);
  expect(others).toEqual([]);
});

test('a drive that no computer is joined to is a doubt', () => {
  const alone = aPilotBoat().change((boat) => {
    boat.joins = boat.joins.filter(({ id }) => id !== 'pump-lead');
  });
  expect(found(alone.boat)).toMatchObject([
    { about: ['pump.motor'], says: expect.stringContaining('No pilot computer is joined') },
  ]);
});
