import fc from 'fast-check';
import { expect, it } from 'vitest';
import { signedAngleDeg } from './signed-angle.ts';

it('is an angle the shorter way round, whatever turns lie in it', () => {
  expect(signedAngleDeg(2 - 358)).toBe(4);
  expect(signedAngleDeg(358 - 2)).toBe(-4);
  expect(signedAngleDeg(-180)).toBe(180);
  fc.assert(
    fc.property(fc.integer({ min: -179, max: 180 }), fc.integer({ min: -3, max: 3 }), (angle, turns) => {
      expect(signedAngleDeg(angle + 360 * turns)).toBe(angle);
    }),
  );
});
