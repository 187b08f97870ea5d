import { describe, expect, test } from 'vitest';
import type { WorkDay } from '../problem.ts';
import { aDay, anItem, type Draw, drawOf, someWork } from '../some-work.test-helper.ts';
import { daySlots, workGround } from './ground.ts';
import { lastDayOf, type Spot } from './spot.ts';
import { Timeline } from './timeline.ts';

const perDay = 4;
const from = 18;

/** Days of one hand, some without her, some too dark outside; and a job of several days outside among three short ones. */
const drawn = (draw: Draw) => {
  const days = Array.from(
    { length: 4 + draw(9) },
    (): WorkDay => aDay(draw(4) === 0 ? [] : ['one'], { light: draw(4) === 0 ? [0, 10] : [0, 48] }),
  );
  const short = ['a', 'b', 'c'].map((id) => anItem(id));
  const long = anItem('long', {
    slots: perDay * (2 + draw(3)),
    outside: true,
    apart: draw(2) === 0 ? ['c'] : [],
    notBefore: draw(3),
  });
  const hands = [{ id: 'one', can: [] }];
  const problem = someWork({ jobs: [...short, long], days, hands, perDay, from });
  const timeline = new Timeline(workGround(problem));
  const spots = ['a', 'b', 'c'].flatMap((id): Spot[] => {
    const number = problem.jobs.findIndex((job) => job.id === id);
    const spot = timeline.find(number, draw(days.length) * daySlots);
    if (draw(3) === 0 || spot === undefined) return [];
    timeline.put(number, spot);
    return [spot];
  });
  const apartOn = timeline.spots[problem.jobs.findIndex(({ id }) => id === 'c')];
  return { problem, timeline, long, taken: spots.map(lastDayOf), apartOn: long.apart.length > 0 ? apartOn : undefined };
};

/** The days a job of several takes that begins with one, by the words alone: whole days on which she is there and it is light. */
const daysFrom = (begin: number, { problem, long, taken, apartOn }: ReturnType<typeof drawn>): number[] | undefined => {
  const isThere = (day: number): boolean => problem.days[day]?.hands.length === 1;
  const isLight = (day: number): boolean => (problem.days[day]?.light[1] ?? 0) > from;
  if (!isThere(begin) || !isLight(begin) || begin < long.notBefore) return undefined;
  let left = long.slots / perDay;
  for (let day = begin; day < problem.days.length; day++) {
    if (isThere(day) && taken.includes(day)) return undefined;
    if (!isThere(day) || !isLight(day)) continue;
    left -= 1;
    if (left > 0) continue;
    const meets = apartOn !== undefined && lastDayOf(apartOn) >= begin && lastDayOf(apartOn) <= day;
    return meets ? undefined : [begin, day];
  }
  return undefined;
};

describe('a job of several days', () => {
  test('lies on the first whole days that are free for it, from any day on', () => {
    let laid = 0;
    for (let seed = 0; seed < 150; seed++) {
      const case_ = drawn(drawOf(seed));
      const { problem, timeline } = case_;
      const number = problem.jobs.findIndex(({ id }) => id === 'long');
      for (const fromDay of problem.days.keys()) {
        const wanted = [...problem.days.keys()]
          .filter((day) => day >= fromDay)
          .flatMap((day) => [daysFrom(day, case_) ?? []].filter(({ length }) => length > 0))[0];
        const found = timeline.find(number, fromDay * daySlots);
        expect(
          found === undefined ? undefined : [Math.floor(found.begin / daySlots), lastDayOf(found)],
          `seed ${seed}, from day ${fromDay}`,
        ).toEqual(wanted);
        if (found !== undefined) laid += 1;
      }
    }
    expect(laid).toBeGreaterThan(150);
  });

  test('does not begin with a day that is half over', () => {
    const timeline = new Timeline(workGround(someWork({ jobs: [anItem('long', { slots: 8 })], days: 4 })));
    expect(timeline.find(0, daySlots + from + 1)?.begin).toBe(2 * daySlots + from);
    expect(timeline.find(0, daySlots + from)?.begin).toBe(daySlots + from);
  });
});
