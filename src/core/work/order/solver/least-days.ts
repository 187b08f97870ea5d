import { daySlots, type Ground } from './ground.ts';
import type { Heads } from './heads.ts';
import { earliestEnds } from './heads.ts';

/** Work of one hand on one job, in one day at most. */
interface Piece {
  readonly slots: number;
  /** the day before which it cannot begin */
  readonly head: number;
}

/**
 * A day before which no order can end: by what must follow one another, and by how many days of hands all the work takes,
 * counted for all of it and for each part that only certain hands or days are fit for. Pieces of more than half a day do not
 * go into one day of a hand together, which counts as for boxes of one size.
 */
export const leastLastDay = (ground: Ground, heads: Heads, order: readonly number[]): number => {
  const ends = earliestEnds(ground, heads, order);
  let least = 0;
  for (const end of ends) least = Math.max(least, Math.floor((end - 1) / daySlots));
  const begins = ground.jobs.map((_, job) => {
    let ready = 0;
    for (const { job: before, wait } of ground.jobs[job]?.preds ?? [])
      ready = Math.max(ready, (ends[before] ?? 0) + wait);
    return Math.floor(heads.beginFrom(job, ready) / daySlots);
  });
  for (const part of partsOf(ground)) {
    const pieces = part.jobs.flatMap((job) => piecesOf(ground, job, part.times(job), begins[job] ?? 0));
    least = Math.max(least, lastDayOf(ground, part, pieces));
  }
  return Math.min(least, ground.days - 1);
};

interface Part {
  readonly jobs: readonly number[];
  readonly hands: readonly number[];
  /** hands of the part that a job takes at least */
  readonly times: (job: number) => number;
  readonly isFit: (day: number) => boolean;
}

const piecesOf = ({ jobs, perDay }: Ground, number: number, times: number, head: number): Piece[] => {
  const job = jobs[number];
  if (job === undefined || job.slots === 0) return [];
  const sizes = job.days > 0 ? Array.from({ length: job.days }, () => perDay) : [job.slots];
  return Array.from({ length: times }, () => sizes.map((slots) => ({ slots, head }))).flat();
};

/** All the work; that of each skill and each hand; that of each kind of day. */
const partsOf = (ground: Ground): Part[] => {
  const { jobs, problem } = ground;
  const numbers = jobs.map((_, n) => n);
  const hands = problem.hands.map((_, n) => n);
  const people = (job: number): number => jobs[job]?.handSets[0]?.length ?? 0;
  const always = (): boolean => true;
  const parts: Part[] = [{ jobs: numbers, hands, times: people, isFit: always }];
  for (const some of subsetsOf(ground)) {
    const least = (job: number): number =>
      Math.min(...(jobs[job]?.handSets ?? []).map((set) => set.filter((hand) => some.includes(hand)).length));
    const own = numbers.filter((job) => jobs[job]?.handSets.length !== 0 && least(job) > 0);
    if (own.length > 0) parts.push({ jobs: own, hands: some, times: least, isFit: always });
  }
  const windows = new Map<string, number[]>();
  for (const job of numbers) {
    const key = jobs[job]?.window.to.join() ?? '';
    windows.set(key, [...(windows.get(key) ?? []), job]);
  }
  for (const own of windows.values()) {
    const to = jobs[own[0] ?? 0]?.window.to;
    parts.push({ jobs: own, hands, times: people, isFit: (day) => (to?.[day] ?? -1) > 0 });
  }
  return parts;
};

/** The hands that can something, and each hand that jobs are given to. */
const subsetsOf = ({ problem }: Ground): number[][] => {
  const skills = [...new Set(problem.jobs.flatMap(({ needs }) => needs))];
  const named = [...new Set(problem.jobs.flatMap(({ hand }) => hand ?? []))];
  return [
    ...skills.map((skill) => problem.hands.flatMap(({ can }, n) => (can.includes(skill) ? [n] : []))),
    ...named.map((id) => problem.hands.flatMap((hand, n) => (hand.id === id ? [n] : []))),
  ].filter((hands) => hands.length > 0);
};

/** The day on which there were as many days of hands, from the head of the pieces on, as the pieces take. */
const lastDayOf = (ground: Ground, { hands, isFit }: Part, pieces: readonly Piece[]): number => {
  let least = 0;
  for (const head of new Set(pieces.map((piece) => piece.head))) {
    const sizes = pieces.filter((piece) => piece.head >= head).map(({ slots }) => slots);
    let left = boxesFor(sizes, ground.perDay);
    let day = head - 1;
    while (left > 0 && day < ground.days - 1) {
      day += 1;
      if (isFit(day)) left -= hands.filter((hand) => ground.present[hand]?.[day] === 1).length;
    }
    least = Math.max(least, day);
  }
  return least;
};

/** Boxes of one size that pieces take at least: those over half the size take one each, and what is left in them is room for others. */
export const boxesFor = (sizes: readonly number[], room: number): number => {
  let most = 0;
  for (let small = 0; small <= room / 2; small += 1) {
    let [alone, big, bigSum, midSum] = [0, 0, 0, 0];
    for (const size of sizes) {
      if (size > room - small) alone += 1;
      else if (2 * size > room) [big, bigSum] = [big + 1, bigSum + size];
      else if (size >= small) midSum += size;
    }
    most = Math.max(most, alone + big + Math.max(0, Math.ceil((midSum - (big * room - bigSum)) / room)));
  }
  return most;
};
