import fc from 'fast-check';
import { expect, it } from 'vitest';
import { faultCurrentA } from './fault-current.ts';

it('PW-59 (ABYC E-11 example, second-hand): at the poles of a bank of 7200 A it is 7200 A, and half where the wire has as much as the bank', () => {
  expect(faultCurrentA({ nominalV: 12, atSourceA: 7200, loopOhm: 0 })).toBeCloseTo(7200, 9);
  expect(faultCurrentA({ nominalV: 12, atSourceA: 7200, loopOhm: 12 / 7200 })).toBeCloseTo(3600, 9);
});

it('is that of the wire alone behind a source without limit, and nothing behind one that gives nothing', () => {
  expect(faultCurrentA({ nominalV: 24, atSourceA: 1e12, loopOhm: 0.01 })).toBeCloseTo(2400, 3);
  expect(faultCurrentA({ nominalV: 24, atSourceA: 0, loopOhm: 0.01 })).toBe(0);
});

it('never rises with the length of the wire, and never above what the bank gives', () => {
  const amps = fc.double({ min: 1, max: 1e5, noNaN: true });
  const ohm = fc.double({ min: 0, max: 10, noNaN: true });
  fc.assert(
    fc.property(amps, ohm, ohm, (atSourceA, one, more) => {
      const near = faultCurrentA({ nominalV: 12, atSourceA, loopOhm: one });
      const far = faultCurrentA({ nominalV: 12, atSourceA, loopOhm: one + more });
      expect(far).toBeLessThanOrEqual(near * (1 + 1e-12));
      expect(near).toBeLessThanOrEqual(atSourceA * (1 + 1e-12));
    }),
  );
});
