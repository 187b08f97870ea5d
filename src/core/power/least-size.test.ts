import { describe, expect, it } from 'vitest';
import { leastSize } from './least-size.ts';

const wire = { system: 'awg', sheathed: false, use: 'other', currentA: 5, lengthMm: 2000 } as const;

describe('the least size of a conductor', () => {
  it.each([
    ['16 AWG alone', wire, '16'],
    ['18 AWG in a sheath', { ...wire, sheathed: true }, '18'],
    ['18 AWG up to 762 mm out of its sheath', { ...wire, sheathed: true, outOfSheathMm: 762 }, '18'],
    ['16 AWG farther out of its sheath', { ...wire, sheathed: true, outOfSheathMm: 763 }, '16'],
    ['1 mm² alone', { ...wire, system: 'metric' }, '1'],
    ['0.75 mm² in a sheath', { ...wire, system: 'metric', sheathed: true, outOfSheathMm: 800 }, '0.75'],
    ['16 AWG in a pump’s circuit of less than 1 A, which is not electronic', { ...wire, currentA: 0.5 }, '16'],
  ] as const)('is %s (33 CFR 183.425; ISO 10133 7.7, second-hand)', (_says, ask, size) => {
    expect(leastSize(ask)).toMatchObject({ binds: true, size });
  });

  it.each([
    ['communications', { ...wire, use: 'communications' }, 'communications'],
    ['electronic navigation equipment', { ...wire, use: 'navigation-electronics' }, 'navigation-electronics'],
    ['an electronic circuit under 1 A', { ...wire, use: 'electronics', currentA: 0.9 }, 'under-1-a'],
    ['a pigtail of 177 mm', { ...wire, lengthMm: 177 }, 'pigtail'],
    ['a metric wire of 200 mm', { ...wire, system: 'metric', lengthMm: 200 }, 'short'],
  ] as const)('does not bind %s (33 CFR 183.425(g); ISO 10133 7.7, second-hand)', (_says, ask, why) => {
    expect(leastSize(ask)).toEqual({ binds: false, why });
  });

  it('binds an electronic circuit of 1 A, a pigtail of 178 mm, and metric electronics', () => {
    expect(leastSize({ ...wire, use: 'electronics', currentA: 1 }).binds).toBe(true);
    expect(leastSize({ ...wire, lengthMm: 178 }).binds).toBe(true);
    expect(leastSize({ ...wire, system: 'metric', use: 'navigation-electronics' }).binds).toBe(true);
  });
});
