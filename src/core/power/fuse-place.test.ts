import { describe, expect, it } from 'vitest';
import { fusePlace } from './fuse-place.ts';

const open = { distanceMm: 170, sheathed: false, fromBattery: false, practicalAtSource: false, rule: 'cfr' } as const;

describe('the place of a fuse', () => {
  it.each([
    ['PW-60', '7 in = 178 mm', open, true],
    ['PW-61', 'more than 178 mm needs a sheath', { ...open, distanceMm: 600 }, false],
    ['PW-62', '40 in = 1016 mm', { ...open, distanceMm: 1000, sheathed: true }, true],
  ])('%s (33 CFR 183.455(b), published: %s): %o is allowed: %s', (_id, _source, ask, allowed) => {
    expect(fusePlace(ask).allowed).toBe(allowed);
  });

  it.each([
    ['178 mm by the rule of this project, sheath or no', { ...open, sheathed: true, rule: 'project' }, 178],
    ['none at all by law where the source itself will do', { ...open, practicalAtSource: true }, 0],
    ['178 mm by law where it will not', open, 178],
    ['1016 mm by law in a sheath', { ...open, sheathed: true }, 1016],
    [
      '1829 mm in a sheath from a battery, in the trade’s words',
      { ...open, sheathed: true, fromBattery: true, rule: 'trade' },
      1829,
    ],
    ['178 mm bare from a battery, in the trade’s words too', { ...open, fromBattery: true, rule: 'trade' }, 178],
    ['200 mm by the older ISO', { ...open, rule: 'iso' }, 200],
    [
      '1800 mm in a sheath from a battery by the older ISO',
      { ...open, sheathed: true, fromBattery: true, rule: 'iso' },
      1800,
    ],
  ] as const)('may be %s', (_says, ask, mostMm) => {
    expect(fusePlace({ ...ask, distanceMm: mostMm })).toMatchObject({ allowed: true, row: { mostMm } });
    expect(fusePlace({ ...ask, distanceMm: mostMm + 1 }).allowed).toBe(false);
  });
});
