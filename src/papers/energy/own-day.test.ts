import { describe, expect, it } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { edits } from '../../core/boat/edits/index.ts';
import { checkedPlan } from '../../core/plan.ts';
import { dayLike, hoursFrom, unitsBesides, withHours } from './own-day.ts';

const tern = aBoat().boat;

describe('a day of one’s own', () => {
  it('starts as a standard one under a free id, so that the boat takes as much on it', () => {
    const first = dayLike(tern, 'anchor');
    const boat = edits['set-day'].apply(tern, first);
    expect([first.id, dayLike(boat, 'anchor').id]).toEqual(['own-day', 'own-day-2']);
    const { energy } = checkedPlan(boat, new Map());
    expect(energy.at(-1)).toMatchObject({ when: 'own-day', like: 'anchor', whPerDayAfter: energy[0]?.whPerDayAfter });
  });

  it('has the hours said of a unit once, and loses them again', () => {
    const day = withHours(withHours(dayLike(tern, 'anchor'), 'radio', 3), 'radio', 5);
    expect(day.hours).toEqual([{ unit: 'radio', hours: 5 }]);
    expect(withHours(day, 'radio', undefined).hours).toEqual([]);
  });

  it('takes hours as people write them', () => {
    expect(['3', ' 2.5 ', '2,5', '0', '24', '24.5', '-1', '', 'all day'].map(hoursFrom)).toEqual([
      3,
      2.5,
      2.5,
      0,
      24,
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });

  it('can be given hours of what else draws', () => {
    const boat = edits['set-day'].apply(tern, dayLike(tern, 'alongside'));
    const names = unitsBesides(boat, checkedPlan(boat, new Map()), 'own-day').map(({ id }) => id);
    expect(names).toEqual(['compass', 'converter', 'display', 'gnss', 'radio']);
  });
});
