import type { Dark, JobStart, WorkOrder } from '../../work-shape.ts';
import { plainOrder } from './plain-order.ts';
import type { WorkAnswer, WorkCost, WorkProblem } from './problem.ts';
import { counted, darkSpans } from './solver/darkness.ts';
import { daySlots, type Ground, workGround } from './solver/ground.ts';
import { lastDayOf, type Spot } from './solver/spot.ts';
import { Timeline } from './solver/timeline.ts';

/** An answer as the plan shows it: with the end of each job, what is dark when, and what the plain order would cost. */
export const writtenOrder = (problem: WorkProblem, answer: WorkAnswer): WorkOrder => {
  const ground = workGround(problem);
  const spots = spotsOf(ground, answer);
  const plain = plainOrder(problem);
  return {
    hash: problem.hash,
    starts: answer.starts.map((start) => startOf(ground, start, spots)),
    dark: darkOf(ground, spots),
    cost: inHours(answer.cost),
    bound: inHours(answer.bound),
    ...(plain === undefined ? {} : { plain: inHours(plain) }),
    status: answer.status,
    work: answer.work,
  };
};

const inHours = ({ dark, lastDay, ascents }: WorkCost): WorkOrder['cost'] => ({ darkH: dark / 2, lastDay, ascents });

/** Where each job lies, found anew from its beginning and its hands. */
const spotsOf = (ground: Ground, { starts }: WorkAnswer): (Spot | undefined)[] => {
  const timeline = new Timeline(ground);
  const hands = new Map(ground.problem.hands.map(({ id }, n) => [id, n]));
  const at = new Map(ground.problem.jobs.map(({ id }, n) => [id, n]));
  for (const { job, day, slot, hands: own } of starts) {
    const number = at.get(job);
    const ofJob = number === undefined ? undefined : ground.jobs[number];
    if (number === undefined || ofJob === undefined) continue;
    const begin = day * daySlots + ground.from + slot;
    const spot = timeline.findFor(
      ofJob,
      own.flatMap((hand) => hands.get(hand) ?? []),
      begin,
      begin,
    );
    if (spot !== undefined) timeline.put(number, spot);
  }
  return timeline.spots;
};

const startOf = (
  ground: Ground,
  start: WorkAnswer['starts'][number],
  spots: readonly (Spot | undefined)[],
): JobStart => {
  const spot = spots[ground.problem.jobs.findIndex(({ id }) => id === start.job)];
  const lastDay = spot === undefined ? start.day : lastDayOf(spot);
  const lastSlot = spot === undefined ? start.slot : spot.end - lastDay * daySlots - ground.from;
  return { ...start, hands: [...start.hands], lastDay, lastSlot };
};

/** Times in which a function is dark and that count at all; slots are counted from the beginning of the day’s work, so that one in the night may be negative. */
const darkOf = (ground: Ground, spots: readonly (Spot | undefined)[]): Dark[] => {
  const at = (clock: number): Dark['from'] => {
    const day = Math.floor(clock / daySlots);
    return { day, slot: clock - day * daySlots - ground.from };
  };
  return ground.functions.flatMap((one, n) =>
    darkSpans(one, spots, ground.days * daySlots).flatMap(({ from, to }) => {
      const half = counted(one, from, to);
      const id = ground.problem.functions[n]?.id as Dark['function'] | undefined;
      return half === 0 || id === undefined ? [] : [{ function: id, from: at(from), to: at(to), hoursH: half / 2 }];
    }),
  );
};
