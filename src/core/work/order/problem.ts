/**
 * The order of the work of one phase as a question in whole numbers, with nothing of words in it: equal work gives an equal
 * problem and so an equal answer. Times are half hours; a day has 48, of which `perDay` from `from` on are worked.
 */
export interface WorkProblem {
  readonly format: 1;
  /** SHA-256, hexadecimal, of the canonical text without this field */
  readonly hash: string;
  readonly phase: number;
  /** half hours worked on a day, and the half hour after midnight at which work begins */
  readonly perDay: number;
  readonly from: number;
  readonly days: readonly WorkDay[];
  /** sorted by id */
  readonly hands: readonly { readonly id: string; readonly can: readonly Skill[] }[];
  /** sorted by id */
  readonly jobs: readonly WorkItem[];
  /** sorted by id */
  readonly functions: readonly WatchedFunction[];
}

/** What not everybody may or can do. */
export const skills = ['aloft', 'electrics', 'radio', 'yard'] as const;
export type Skill = (typeof skills)[number];

/** One day of the calendar; the first is day 0. */
export interface WorkDay {
  /** ids of the hands that work on it, none on a day of rest */
  readonly hands: readonly string[];
  readonly afloat: boolean;
  readonly mast: 'up' | 'down';
  /** nobody works outside or aloft */
  readonly foul: boolean;
  /** half hours after midnight between which there is light outside */
  readonly light: readonly [number, number];
  /** ids of the functions that count from the first half hour of the day to its last */
  readonly counts: readonly string[];
}

/**
 * A piece of work. One that takes longer than a day begins with a day and takes whole days of its hands: the first of them
 * and as many more fit days, on which all its hands are there, as it takes; between them its hands do nothing else. What is
 * done in the open has only the half hours of light of a day.
 */
export interface WorkItem {
  readonly id: string;
  /** half hours, at least one; none for what is only waited for or is done already */
  readonly slots: number;
  readonly people: 1 | 2;
  /** its hands together have all of these */
  readonly needs: readonly Skill[];
  /** it begins no earlier than `wait` half hours of the clock after the end of each of these */
  readonly after: readonly { readonly job: string; readonly wait: number }[];
  /** first and last day on which it may be begun and ended, where it hangs on a delivery, a paper, a pin */
  readonly notBefore: number;
  readonly notAfter?: number;
  /** the very day on which it begins */
  readonly on?: number;
  /** the hand it is given to */
  readonly hand?: string;
  readonly state?: 'afloat' | 'ashore';
  readonly mast?: 'up' | 'down';
  /** done in the open, so by daylight and not in foul weather */
  readonly outside: boolean;
  /** up the mast, so in the open too: days with such work under a standing mast are ascents */
  readonly aloft: boolean;
  /** jobs that must not fall on the same day */
  readonly apart: readonly string[];
}

/**
 * An essential function and the ways it can be had. A way holds from the end of all jobs in `from` until the first of those in
 * `until` begins; a function is lit while any way holds. `hard`: it may never be dark while it counts.
 */
export interface WatchedFunction {
  readonly id: string;
  readonly hard: boolean;
  readonly ways: readonly { readonly from: readonly string[]; readonly until: readonly string[] }[];
}

/** When one job is done: the half hour of its day counted from the beginning of work, and who does it. */
export interface WorkStart {
  readonly job: string;
  readonly day: number;
  readonly slot: number;
  readonly hands: readonly string[];
}

/** How much work a search may do. */
export interface WorkBudget {
  readonly work: number;
}

/** What an order costs, in the order in which it counts: half hours dark of all functions together, the last day, ascents. */
export interface WorkCost {
  readonly dark: number;
  readonly lastDay: number;
  readonly ascents: number;
}

/** An order of the work. `bound`: what no order can be better than, compared as costs are. */
export interface WorkAnswer {
  readonly problem: string;
  /** sorted by day, slot, job */
  readonly starts: readonly WorkStart[];
  readonly cost: WorkCost;
  readonly bound: WorkCost;
  readonly status: 'proven' | 'gap' | 'stopped' | 'quick';
  /** places tried */
  readonly work: number;
}
