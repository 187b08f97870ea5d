import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { standardDays } from '../boat/own-day.ts';
import { dutyOfKind } from '../facts/day-duty.ts';
import { partHours } from './day-hours.ts';
import { unitDay } from './unit-day.ts';

const atAnchor = {
  parts: partHours('anchor', 'trawler'),
  uncharged: ['anchor', 'sailing'],
  reckoned: 'usual',
} as const;
const atSea = {
  parts: partHours('under-way-night', 'ketch'),
  uncharged: ['anchor', 'sailing'],
  reckoned: 'usual',
} as const;

describe('what a unit takes in a day', () => {
  it('is 72 Wh for an AIS of 0.25 A at 12 V that is never off (maker-loads, practice-duty)', () => {
    expect(unitDay({ kind: 'ais', typicalW: 3, mostW: 30 }, atAnchor)).toEqual({ hours: 24, wh: 72, fromBankWh: 72 });
  });

  it('is 2640 Wh for a satellite terminal of 110 W that is left on, and nothing in a day in which it is off', () => {
    const terminal = { kind: 'satellite-terminal', typicalW: 110, mostW: 110 };
    expect(unitDay(terminal, atAnchor).wh).toBe(2640);
    expect(unitDay(terminal, { ...atAnchor, ownHours: 0 }).wh).toBe(0);
    expect(unitDay(terminal, { ...atAnchor, reckoned: 'least' }).wh).toBe(0);
  });

  it('counts a VHF that sends for minutes: 0.35 A for 15 h and 6 A for 0.1 h at 12 V', () => {
    expect(unitDay({ kind: 'vhf-radio', typicalW: 4.2, mostW: 72 }, atAnchor).wh).toBeCloseTo(4.2 * 15 + 72 * 0.1, 9);
  });

  it('counts a radar that waits: 2.1 A for 6 h, and 0.25 A for the other 18 of 24 h at sea', () => {
    const radar = { kind: 'radar', typicalW: 25.2, mostW: 25.2 };
    expect(unitDay(radar, atSea).wh).toBeCloseTo(12 * (2.1 * 6 + 0.25 * 18), 9);
    expect(unitDay(radar, { ...atSea, ownHours: 0 }).wh).toBe(0);
    expect(unitDay(radar, atAnchor).wh).toBe(0);
  });

  it('turns the motor of a pilot for a share of the run, and leaves its electronics on', () => {
    expect(unitDay({ kind: 'steering-drive', typicalW: 72, mostW: 216 }, atSea).hours).toBeCloseTo(7.2, 9);
    expect(unitDay({ kind: 'pilot-computer', typicalW: 5, mostW: 12 }, atSea).hours).toBe(24);
  });

  it('takes from the bank only what no engine carries', () => {
    const day = {
      parts: partHours('under-way-day', 'trawler'),
      uncharged: ['anchor', 'sailing'],
      reckoned: 'usual',
    } as const;
    const { wh, fromBankWh } = unitDay({ kind: 'ais', typicalW: 3, mostW: 30 }, day);
    expect([wh, fromBankWh]).toEqual([72, expect.closeTo(42, 9)]);
    expect(unitDay({ kind: 'ais', typicalW: 3, mostW: 30 }, { ...day, ownHours: 12 }).fromBankWh).toBeCloseTo(21, 9);
  });

  it('is never less for more hours', () => {
    const kinds = fc.constantFrom(...Object.keys(dutyOfKind), 'converter');
    const hours = fc.double({ min: 0, max: 12, noNaN: true });
    fc.assert(
      fc.property(kinds, fc.constantFrom(...standardDays), hours, hours, (kind, day, ownHours, more) => {
        const drawn = { kind, typicalW: 10, mostW: 30 };
        const asked = { parts: partHours(day, 'sloop'), uncharged: ['anchor', 'sailing'], reckoned: 'usual' } as const;
        const [some, longer] = [ownHours, ownHours + more].map((own) => unitDay(drawn, { ...asked, ownHours: own }));
        expect(longer?.wh).toBeGreaterThanOrEqual((some?.wh ?? 0) - 1e-9);
        expect(some?.fromBankWh).toBeLessThanOrEqual((some?.wh ?? 0) + 1e-9);
      }),
    );
  });
});
