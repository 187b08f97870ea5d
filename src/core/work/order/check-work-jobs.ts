import type { WorkDay, WorkItem, WorkProblem, WorkStart } from './problem.ts';

/** When one job is done: first and last day, and its half hours counted from the first midnight. */
export interface Lying {
  readonly day: number;
  readonly lastDay: number;
  readonly half: number;
  readonly end: number;
  readonly hands: readonly string[];
}

/** Tests each job by itself, each pair that waits for each other or must lie apart, and each hand; tells where all lie. */
export const brokenJobs = (
  problem: WorkProblem,
  starts: readonly WorkStart[],
): { readonly broken: readonly string[]; readonly lies: ReadonlyMap<string, Lying> } => {
  const broken: string[] = [];
  const lies = new Map<string, Lying>();
  for (const start of starts) {
    const job = problem.jobs.find(({ id }) => id === start.job);
    if (job === undefined) continue;
    const lying = lyingOf(problem, job, start);
    if (typeof lying === 'string') broken.push(lying);
    else {
      lies.set(job.id, lying);
      broken.push(...brokenOne(problem, job, lying), ...brokenHands(problem, job, lying));
    }
  }
  for (const job of problem.jobs) broken.push(...brokenPairs(job, lies));
  for (const { id } of problem.hands) broken.push(...brokenHand(id, lies));
  return { broken, lies };
};

const isOpenAir = ({ outside, aloft }: WorkItem): boolean => outside || aloft;

const isFitDay = (job: WorkItem, day: WorkDay): boolean => {
  if (job.state === 'afloat' && !day.afloat) return false;
  if (job.state === 'ashore' && day.afloat) return false;
  if (job.mast !== undefined && job.mast !== day.mast) return false;
  return !(isOpenAir(job) && day.foul);
};

/** The half hours of a day’s work in which a job may lie. */
const roomOn = ({ perDay, from }: WorkProblem, job: WorkItem, day: WorkDay): readonly [number, number] =>
  isOpenAir(job) ? [Math.max(0, day.light[0] - from), Math.min(perDay, day.light[1] - from)] : [0, perDay];

const lengthOn = (problem: WorkProblem, job: WorkItem, day: WorkDay): number => {
  const [first, end] = roomOn(problem, job, day);
  return isFitDay(job, day) ? Math.max(0, end - first) : 0;
};

const lyingOf = (problem: WorkProblem, job: WorkItem, { day, slot, hands }: WorkStart): Lying | string => {
  const { days, perDay, from } = problem;
  if (days[day] === undefined) return `${job.id} begins on day ${day}, which the calendar has not.`;
  const half = day * 48 + from + slot;
  const most = Math.max(...days.map((one) => lengthOn(problem, job, one)));
  if (job.slots <= most) return { day, lastDay: day, half, end: half + job.slots, hands };
  if (slot !== 0) return `${job.id} takes more than a day and does not begin with one.`;
  let [left, at] = [job.slots, day];
  for (; at < days.length; at += 1) {
    const one = days[at];
    if (one !== undefined && lengthOn(problem, job, one) > 0 && hands.every((hand) => one.hands.includes(hand)))
      left -= most;
    if (left <= 0) break;
  }
  if (left > 0) return `${job.id} does not come to its end within the calendar.`;
  return { day, lastDay: at, half, end: at * 48 + from + perDay, hands };
};

const brokenOne = (problem: WorkProblem, job: WorkItem, { day, lastDay, half, end }: Lying): string[] => {
  const one = problem.days[day];
  if (one === undefined) return [];
  const broken: string[] = [];
  if (!isFitDay(job, one)) broken.push(`${job.id} begins on day ${day}, which is not fit for it.`);
  if (job.on !== undefined && day !== job.on)
    broken.push(`${job.id} begins on day ${day}; it is to begin on day ${job.on}.`);
  if (day < job.notBefore) broken.push(`${job.id} begins on day ${day}, before day ${job.notBefore}.`);
  if (job.notAfter !== undefined && lastDay > job.notAfter)
    broken.push(`${job.id} ends on day ${lastDay}, after day ${job.notAfter}.`);
  const [first, last] = roomOn(problem, job, one);
  const base = day * 48 + problem.from;
  const isLong = lastDay > day;
  if (!isLong && (half < base + first || end > base + last))
    broken.push(`${job.id} lies outside the hours there are for it on day ${day}.`);
  if (isLong && lengthOn(problem, job, one) === 0)
    broken.push(`${job.id} begins on day ${day}, which has no hours for it.`);
  return broken;
};

const brokenHands = ({ days, hands: all }: WorkProblem, job: WorkItem, { day, hands }: Lying): string[] => {
  const broken: string[] = [];
  const wanted = job.slots === 0 ? 0 : job.people;
  if (hands.length !== wanted || new Set(hands).size !== wanted)
    broken.push(`${job.id} is done by ${hands.length} hands; it takes ${wanted}.`);
  if (wanted === 0) return broken;
  for (const hand of hands)
    if (days[day]?.hands.includes(hand) !== true) broken.push(`${hand} is not there on day ${day} for ${job.id}.`);
  if (job.hand !== undefined && !hands.includes(job.hand))
    broken.push(`${job.id} is given to ${job.hand}, who does not do it.`);
  for (const skill of job.needs)
    if (!all.some(({ id, can }) => hands.includes(id) && can.includes(skill)))
      broken.push(`Nobody who does ${job.id} can ${skill}.`);
  return broken;
};

const brokenPairs = (job: WorkItem, lies: ReadonlyMap<string, Lying>): string[] => {
  const own = lies.get(job.id);
  if (own === undefined) return [];
  const broken: string[] = [];
  for (const { job: before, wait } of job.after) {
    const other = lies.get(before);
    if (other !== undefined && own.half < other.end + wait)
      broken.push(`${job.id} begins before ${before} is done and ${wait} half hours are waited.`);
  }
  for (const id of job.apart) {
    const other = lies.get(id);
    if (id !== job.id && other !== undefined && own.day <= other.lastDay && other.day <= own.lastDay)
      broken.push(`${job.id} and ${id} fall on the same day.`);
  }
  return broken;
};

const brokenHand = (hand: string, lies: ReadonlyMap<string, Lying>): string[] => {
  const own = [...lies].filter(([, { hands, half, end }]) => hands.includes(hand) && end > half);
  own.sort(([, a], [, b]) => a.half - b.half);
  return own.flatMap(([job, { half }], n) => {
    const before = own[n - 1];
    return before !== undefined && before[1].end > half ? [`${hand} does ${before[0]} and ${job} at once.`] : [];
  });
};
