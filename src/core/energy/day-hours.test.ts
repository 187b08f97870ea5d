import { describe, expect, it } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import { standardDays } from '../boat/own-day.ts';
import { duties } from '../facts/day-duty.ts';
import { hoursIn, hoursOf, partHours } from './day-hours.ts';
import { unchargedParts } from './uncharged-parts.ts';

const hours = (duty: keyof typeof duties, ...day: Parameters<typeof partHours>): number =>
  hoursOf(duties[duty], { parts: partHours(...day), uncharged: [], reckoned: 'usual' }).hours;

describe('the hours of a day', () => {
  it('are 24 in all, whatever the day and the hull', () => {
    for (const day of standardDays) {
      for (const hull of ['sloop', 'trawler'] as const) {
        const parts = partHours(day, hull);
        expect(parts.anchor + parts.sailing + parts.motoring + parts.alongside).toBe(24);
      }
    }
  });

  it('have no charge at anchor and under sail; an engine or the shore charges', () => {
    const uncharged = (...day: Parameters<typeof partHours>): number =>
      hoursIn(partHours(...day), unchargedParts(indexBoat(aBoat().boat), 'house'));
    expect(uncharged('anchor', 'trawler')).toBe(24);
    expect(uncharged('under-way-day', 'trawler')).toBe(14);
    expect(uncharged('under-way-night', 'trawler')).toBe(0);
    expect(uncharged('under-way-night', 'ketch')).toBe(24);
    expect(uncharged('alongside', 'sloop')).toBe(0);
  });

  it('have no charge either where the file names chargers, and none of the kind for that bank', () => {
    const { boat } = aBoat().change((draft) => {
      draft.supply.chargers = [{ id: 'alternator', place: 'locker', kind: 'alternator', charges: ['house'] }];
    });
    expect(unchargedParts(indexBoat(boat), 'house')).toEqual(['anchor', 'sailing', 'alongside']);
    expect(unchargedParts(indexBoat(boat), 'other')).toEqual(['anchor', 'sailing', 'motoring', 'alongside']);
  });

  // practice-duty: the printed hours themselves, each in its own column
  it.each([
    ['helm display', 'helm', 'anchor', 'sloop', 0.5],
    ['helm display', 'helm', 'under-way-night', 'sloop', 24],
    ['nav-station display', 'nav-station', 'anchor', 'sloop', 2],
    ['nav-station display', 'nav-station', 'under-way-night', 'sloop', 6],
    ['radar', 'radar', 'anchor', 'trawler', 0],
    ['radar', 'radar', 'under-way-night', 'sloop', 6],
    ['AIS', 'ais', 'anchor', 'sloop', 24],
    ['VHF receive', 'radio-receive', 'anchor', 'sloop', 15],
    ['VHF transmit', 'radio-transmit', 'under-way-night', 'sloop', 0.2],
    ['pilot motor', 'pilot-motor', 'under-way-night', 'sloop', 24 * 0.3],
    ['satellite terminal left on', 'internet', 'anchor', 'sloop', 24],
  ] as const)('of a %s (%s) in a day %s of a %s are %f', (_name, duty, day, hull, expected) => {
    expect(hours(duty, day, hull)).toBeCloseTo(expected, 9);
  });

  it('of ten hours under engine are the printed ones of motoring, and the rest of that day lies at anchor', () => {
    expect(hours('radar', 'under-way-day', 'trawler')).toBeCloseTo(6.5, 9);
    expect(hours('ais', 'under-way-day', 'trawler')).toBeCloseTo(24, 9);
    expect(hours('helm', 'under-way-day', 'trawler')).toBeCloseTo(10 + (0.5 * 14) / 24, 9);
  });
});
