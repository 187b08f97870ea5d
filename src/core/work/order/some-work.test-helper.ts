import type { Skill, WatchedFunction, WorkDay, WorkItem, WorkProblem } from './problem.ts';
import { hashed } from './work-hash.ts';

/** A job of half an hour for one hand, unless said otherwise. */
export const anItem = (id: string, own: Partial<WorkItem> = {}): WorkItem => ({
  id,
  slots: 1,
  people: 1,
  needs: [],
  after: [],
  notBefore: 0,
  outside: false,
  aloft: false,
  apart: [],
  ...own,
});

/** A day afloat with fair weather and light all day. */
export const aDay = (hands: readonly string[], own: Partial<WorkDay> = {}): WorkDay => ({
  hands,
  afloat: true,
  mast: 'up',
  foul: false,
  light: [0, 48],
  counts: [],
  ...own,
});

/** A problem with two hands unless said otherwise; every function counts on every day that says nothing of it. */
export const someWork = ({
  jobs,
  days,
  functions = [],
  hands = [
    { id: 'one', can: [] },
    { id: 'two', can: [] },
  ],
  perDay = 4,
  from = 18,
}: {
  readonly jobs: readonly WorkItem[];
  readonly days: number | readonly WorkDay[];
  readonly functions?: readonly WatchedFunction[];
  readonly hands?: readonly { readonly id: string; readonly can: readonly Skill[] }[];
  readonly perDay?: number;
  readonly from?: number;
}): WorkProblem =>
  hashed({
    format: 1,
    phase: 1,
    perDay,
    from,
    days:
      typeof days === 'number'
        ? Array.from({ length: days }, () =>
            aDay(
              hands.map(({ id }) => id),
              { counts: functions.map(({ id }) => id) },
            ),
          )
        : days,
    hands,
    jobs: [...jobs].sort((a, b) => (a.id < b.id ? -1 : 1)),
    functions: [...functions].sort((a, b) => (a.id < b.id ? -1 : 1)),
  });

/** The place in a list of the one to take, so that a case can be drawn by fast-check or by a plain generator. */
export type Draw = (below: number) => number;

/** A generator of whole numbers for cases drawn by a seed. */
export const drawOf = (seed: number): Draw => {
  let state = Math.imul(seed + 1, 0x9e3779b1) >>> 0;
  return (below) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return (state >>> 8) % below;
  };
};

/** Work drawn by lot: old ways that end, new ones that come, waits, days that are not alike, sometimes a skill or a long job. */
export const drawnWork = (
  draw: Draw,
  size: { jobs: number; days: number; perDay: number; hands?: number; isEasy?: boolean },
): WorkProblem => {
  /** easy work has nothing in it that often leaves no order at all */
  const isRare = (below: number): boolean => draw(below) === 0 && size.isEasy !== true;
  const names = Array.from({ length: size.jobs }, (_, n) => `j${String(n).padStart(3, '0')}`);
  const hands = Array.from({ length: size.hands ?? 2 }, (_, n) => ({
    id: `hand-${n}`,
    can: n === 0 || draw(3) === 0 ? (['aloft', 'radio'] as const) : [],
  }));
  const jobs = names.map((id, n): WorkItem => {
    const earlier = names.slice(Math.max(0, n - 5), n).filter(() => draw(3) === 0);
    const aloft = draw(6) === 0;
    return anItem(id, {
      slots: draw(8) === 0 ? size.perDay + 1 : draw(9) === 0 ? 0 : 1 + draw(size.perDay),
      people: hands.length > 1 && draw(6) === 0 ? 2 : 1,
      needs: aloft ? ['aloft'] : draw(8) === 0 ? ['radio'] : [],
      after: earlier.map((job) => ({ job, wait: draw(5) === 0 ? draw(60) : 0 })),
      notBefore: draw(6) === 0 ? draw(2) : 0,
      ...(isRare(16) ? { on: draw(size.days) } : {}),
      ...(isRare(16) ? { notAfter: draw(size.days) } : {}),
      ...(isRare(12) ? { hand: hands[draw(hands.length)]?.id ?? '' } : {}),
      ...(isRare(14) ? { state: draw(2) === 0 ? ('ashore' as const) : ('afloat' as const) } : {}),
      outside: draw(6) === 0,
      aloft,
      apart: n > 0 && isRare(10) ? [names[draw(n)] ?? id] : [],
    });
  });
  const functions = ['depth', 'vhf', 'steering'].slice(0, 1 + draw(3)).map((id): WatchedFunction => {
    const some = (): string[] => [names[draw(size.jobs)] ?? ''];
    const old = { from: [], until: some() };
    const fresh = { from: draw(4) === 0 ? [...new Set([...some(), ...some()])] : some(), until: [] };
    const between = draw(4) === 0 ? [{ from: some(), until: some() }] : [];
    return { id, hard: isRare(8), ways: [old, fresh, ...between] };
  });
  const days = Array.from({ length: size.days }, () =>
    aDay(
      hands.filter(() => draw(7) > 0).map(({ id }) => id),
      {
        afloat: draw(5) > 0,
        mast: draw(5) > 0 ? 'up' : 'down',
        foul: isRare(6),
        light: isRare(5) ? [19, 18 + size.perDay] : [0, 48],
        counts: functions.filter(() => draw(4) > 0).map(({ id }) => id),
      },
    ),
  );
  return someWork({ jobs, days, functions, hands, perDay: size.perDay });
};
