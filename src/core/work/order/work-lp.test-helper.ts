import type { WatchedFunction, WorkProblem } from './problem.ts';
import { type Choice, choicesOf } from './work-choices.test-helper.ts';

/** What one function dark for half an hour costs, and one day later, so that they never make up for each other; an ascent costs 1. */
export const lpWeights = { dark: 10_000, day: 100 } as const;

/** Half hours that are all alike for what begins and ends in them: one worked, or all of a night of one day. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly day: number;
}

/**
 * A problem as an integer programme: one unknown for every beginning of every job with every set of hands, one for each way and
 * function in each stretch of time. `none` where some job has no beginning at all.
 */
export const workLp = (problem: WorkProblem): string | 'none' => {
  const choices = problem.jobs.map(({ id }) => choicesOf(problem, id));
  if (choices.some((own) => own.length === 0)) return 'none';
  const dark = problem.functions.map((one, n) => darkRows(problem, choices, one, n));
  const ascents = problem.days.map((_, day) => `a${day}`);
  const rows = [
    ...choices.map((own, job) => `${sum(own.map((_, at) => x(job, at)))} = 1`),
    ...waitRows(problem, choices),
    ...handRows(problem, choices),
    ...apartRows(problem, choices),
    ...choices.map(
      (own, job) =>
        `l - ${sum(
          own.map(({ lastDay }, at) => `${lastDay} ${x(job, at)}`),
          ' - ',
        )} >= 0`,
    ),
    ...ascentRows(problem, choices),
    ...dark.flatMap(({ rows: own }) => own),
  ];
  const weighed = dark.flatMap(({ unknowns }) => unknowns.map(({ name, half }) => `${lpWeights.dark * half} ${name}`));
  return [
    'Minimize',
    ` cost: ${[...weighed, `${lpWeights.day} l`, ...ascents].join(' + ')}`,
    'Subject To',
    ...rows.map((row, n) => ` r${n}: ${row}`),
    'Bounds',
    ...dark.flatMap(({ lit }) => lit).map((name) => ` 0 <= ${name} <= 1`),
    'Binary',
    ...choices.flatMap((own, job) => own.map((_, at) => ` ${x(job, at)}`)),
    ...ascents.map((name) => ` ${name}`),
    'End',
  ].join('\n');
};

const x = (job: number, at: number): string => `x${job}_${at}`;
const sum = (terms: readonly string[], by = ' + '): string => terms.join(by);

/** All beginnings of one job less all ends of another, as numbers of half hours. */
const waitRows = (problem: WorkProblem, choices: readonly (readonly Choice[])[]): string[] =>
  problem.jobs.flatMap(({ after }, job) =>
    after.flatMap(({ job: before, wait }) => {
      const other = problem.jobs.findIndex(({ id }) => id === before);
      if (other < 0) return [];
      const begins = (choices[job] ?? []).map(({ half }, at) => `${half} ${x(job, at)}`);
      const ends = (choices[other] ?? []).map(({ end }, at) => `${end} ${x(other, at)}`);
      return [`${sum(begins)} - ${sum(ends, ' - ')} >= ${wait}`];
    }),
  );

const handRows = ({ hands, days, perDay, from }: WorkProblem, choices: readonly (readonly Choice[])[]): string[] =>
  hands.flatMap(({ id }) =>
    days.flatMap((_, day) =>
      Array.from({ length: perDay }, (__, slot) => day * 48 + from + slot).flatMap((half) => {
        const busy = choices.flatMap((own, job) =>
          own.flatMap((one, at) => (one.hands.includes(id) && one.half <= half && half < one.end ? [x(job, at)] : [])),
        );
        return busy.length > 1 ? [`${sum(busy)} <= 1`] : [];
      }),
    ),
  );

const isOn = ({ day, lastDay }: Choice, one: number): boolean => day <= one && one <= lastDay;

const apartRows = (problem: WorkProblem, choices: readonly (readonly Choice[])[]): string[] =>
  problem.jobs.flatMap(({ apart, id }, job) =>
    apart.flatMap((other) => {
      const number = problem.jobs.findIndex((one) => one.id === other);
      if (number < 0 || other === id) return [];
      return problem.days.flatMap((_, day) => {
        const on = [job, number].map((own) =>
          (choices[own] ?? []).flatMap((one, at) => (isOn(one, day) ? [x(own, at)] : [])),
        );
        return on.every((own) => own.length > 0) ? [`${sum(on.flat())} <= 1`] : [];
      });
    }),
  );

const ascentRows = (problem: WorkProblem, choices: readonly (readonly Choice[])[]): string[] =>
  problem.days.flatMap(({ mast }, day) =>
    mast === 'down'
      ? []
      : problem.jobs.flatMap(({ aloft }, job) => {
          const on = (choices[job] ?? []).flatMap((one, at) => (isOn(one, day) ? [x(job, at)] : []));
          return aloft && on.length > 0 ? [`a${day} - ${sum(on, ' - ')} >= 0`] : [];
        }),
  );

const stretchesOf = ({ days, perDay, from }: WorkProblem, id: string): Stretch[] =>
  days.flatMap(({ counts }, day) => {
    if (!counts.includes(id)) return [];
    const base = day * 48;
    const worked = Array.from({ length: perDay }, (_, slot) => base + from + slot);
    return [
      { from: base, to: base + from, day },
      ...worked.map((half) => ({ from: half, to: half + 1, day })),
      { from: base + from + perDay, to: base + 48, day },
    ].filter((stretch) => stretch.from < stretch.to);
  });

/** In each stretch a function is dark as far as its ways do not hold; a way holds as far as all that gives it is done and nothing that ends it has begun. */
const darkRows = (
  problem: WorkProblem,
  choices: readonly (readonly Choice[])[],
  { id, hard, ways }: WatchedFunction,
  n: number,
): { rows: string[]; unknowns: { name: string; half: number }[]; lit: string[] } => {
  const numberOf = (job: string): number => problem.jobs.findIndex((one) => one.id === job);
  const found = stretchesOf(problem, id).map(({ from, to }, at) => {
    const name = `d${n}_${at}`;
    const lit = ways.map((_, way) => `w${n}_${at}_${way}`);
    const limit = (way: string, job: number, is: (one: Choice) => boolean): string => {
      const own = (choices[job] ?? []).flatMap((one, place) => (is(one) ? [x(job, place)] : []));
      return own.length === 0 ? `${way} <= 0` : `${way} - ${sum(own, ' - ')} <= 0`;
    };
    const rows = ways.flatMap((way, number) => [
      ...way.from.map((job) => limit(lit[number] ?? '', numberOf(job), ({ end }) => end <= from)),
      ...way.until.map((job) => limit(lit[number] ?? '', numberOf(job), ({ half }) => half >= to)),
    ]);
    const isDark = `${sum([name, ...lit])} >= 1`;
    return { rows: [...rows, isDark, ...(hard ? [`${name} <= 0`] : [])], unknown: { name, half: to - from }, lit };
  });
  return {
    rows: found.flatMap(({ rows }) => rows),
    unknowns: found.map(({ unknown }) => unknown),
    lit: found.flatMap(({ lit }) => lit),
  };
};
