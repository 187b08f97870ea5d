import { describe, expect, it } from 'vitest';
import { mayEnter, numberHolds, whoMayEnter } from './who-may-enter.ts';

describe('who may enter what makes a set this ship’s (47 CFR 80.231(b), text as of 1 October 2020)', () => {
  it('LG-01, LG-02: under the US flag the static data of an AIS class B are for an installer, never for the owner', () => {
    expect(mayEnter({ flag: 'US', is: 'ais-class-b' }, 'owner')).toBe(false);
    expect(mayEnter({ flag: 'US', is: 'ais-class-b' }, 'radio-installer')).toBe(true);
  });

  it('LG-03: class A is outside that rule', () => {
    expect(mayEnter({ flag: 'US', is: 'ais-class-a' }, 'owner')).toBe(true);
    expect(whoMayEnter({ flag: 'US', is: 'ais-class-a' })).toBe('anyone');
  });

  it('asks for the flag where nobody said it, and elsewhere lets the owner enter them once (from memory)', () => {
    expect(whoMayEnter({ is: 'ais-class-b' })).toBe('ask-flag');
    expect(whoMayEnter({ flag: 'GB', is: 'ais-class-b' })).toBe('once');
    expect(whoMayEnter({ is: 'radio' })).toBe('once');
  });
});

it('LG-04: a number of a private registrar does not hold at foreign ports (USCG NAVCEN)', () => {
  expect(numberHolds({ from: 'private-registrar', goesAbroad: true })).toBe(false);
  expect(numberHolds({ from: 'private-registrar', goesAbroad: false })).toBe(true);
  expect(numberHolds({ from: 'state', goesAbroad: true })).toBe(true);
});
