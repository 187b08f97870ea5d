import type { WatchedFunction, WorkItem, WorkProblem } from './problem.ts';
import { aDay, anItem, type Draw, someWork } from './some-work.test-helper.ts';

const slots = (draw: Draw, least: number, most: number): number => least + draw(most - least + 1);

/** The jobs of one unit that takes the place of an old one: five to seven, in their order. */
const unitJobs = (draw: Draw, n: number): WorkItem[] => {
  const id = (kind: string): string => `${kind}:u${String(n).padStart(2, '0')}`;
  const isAloft = n % 7 === 3;
  const isWet = n % 11 === 5;
  return [
    anItem(id('label'), { slots: 1, after: [{ job: 'survey', wait: 0 }] }),
    anItem(id('take-out'), {
      slots: slots(draw, 1, 3),
      after: [{ job: id('label'), wait: 0 }],
      aloft: isAloft,
      needs: isAloft ? ['aloft'] : [],
      ...(isWet ? { state: 'ashore' as const } : {}),
    }),
    anItem(id('pull'), {
      slots: slots(draw, 2, 6),
      people: n % 3 === 0 ? 2 : 1,
      after: [{ job: n % 2 === 0 ? id('take-out') : id('label'), wait: 0 }],
    }),
    anItem(id('mount'), {
      slots: slots(draw, 2, 5),
      after: [{ job: id('take-out'), wait: 0 }],
      aloft: isAloft,
      needs: isAloft ? ['aloft'] : [],
      notBefore: n % 5 === 0 ? draw(12) : 0,
      ...(isWet ? { state: 'ashore' as const } : {}),
    }),
    anItem(id('connect'), {
      slots: slots(draw, 1, 4),
      after: [
        { job: id('pull'), wait: 0 },
        { job: id('mount'), wait: isWet ? 48 : 0 },
      ],
    }),
    anItem(id('power-up'), {
      slots: 1,
      after: [
        { job: id('connect'), wait: 0 },
        { job: 'feed', wait: 0 },
      ],
    }),
  ];
};

const watched = ['depth', 'vhf', 'position', 'heading', 'navigation-lights', 'steering', 'ais'];

/** A refit drawn by lot: so many units that each replace an old one, a panel worked at, days ashore in the middle. */
export const refitWork = (
  draw: Draw,
  { units, days, hands = 2 }: { units: number; days: number; hands?: number },
): WorkProblem => {
  const people = Array.from({ length: hands }, (_, n) => ({
    id: `hand-${n}`,
    can: n === 0 ? (['aloft'] as const) : [],
  }));
  const ids = Array.from({ length: units }, (_, n) => String(n).padStart(2, '0'));
  const jobs = [
    anItem('survey', { slots: 8 }),
    anItem('feed', { slots: 5, after: [{ job: 'panel', wait: 0 }] }),
    anItem('panel', { slots: 4, after: [{ job: 'survey', wait: 0 }] }),
    ...ids.flatMap((_, n) => unitJobs(draw, n)),
    anItem('sea-trial', { slots: 10, state: 'afloat', after: ids.map((n) => ({ job: `power-up:u${n}`, wait: 0 })) }),
  ];
  const functions = watched.slice(0, Math.min(watched.length, units)).map(
    (id, n): WatchedFunction => ({
      id,
      hard: false,
      ways: [
        { from: [], until: [`take-out:u${ids[n]}`, ...(n % 3 === 0 ? ['panel'] : [])] },
        { from: [`power-up:u${ids[n]}`], until: [] },
      ],
    }),
  );
  const calendar = Array.from({ length: days }, (_, day) => {
    const afloat = day < Math.floor(days / 3) || day >= Math.floor(days / 3) + 4;
    return aDay(day % 7 === 6 ? [] : people.map(({ id }) => id), {
      afloat,
      light: [16, 36],
      counts: afloat ? functions.map(({ id }) => id) : [],
    });
  });
  return someWork({ jobs, days: calendar, functions, hands: people, perDay: 12 });
};
