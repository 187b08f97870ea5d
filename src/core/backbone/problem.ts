import type { GradeId } from '../boat/boat-schema.ts';
import type { LayoutStatus } from '../plan-shape.ts';

/**
 * The layout problem of one bus: integers only (millimetres, milliampere-free LEN, millivolts, microohms, hundredths),
 * every list sorted by id, absent fields left out. `hash` is the SHA-256 of its RFC 8785 text without `hash`.
 */
export interface Problem {
  readonly format: 1;
  readonly hash: string;
  readonly bus: string;
  readonly places: readonly ProblemPlace[];
  readonly ways: readonly ProblemWay[];
  readonly devices: readonly ProblemDevice[];
  readonly grades: readonly ProblemGrade[];
  readonly limits: { readonly dropMm: number; readonly dropsMm: number; readonly devices: number };
  /** ready-made drop lengths; a drop counts as the shortest piece that covers its longest length, else its longest length */
  readonly pieces: readonly number[];
  readonly prices: { readonly tee: number; readonly terminator: number; readonly feed: number };
  readonly feed: ProblemFeed;
  /** the walk of kept trunk: the answer runs through each of its ways at least as often, and these metres cost nothing */
  readonly held?: readonly LayoutStep[];
}

/** `end`: the trunk may end here (reach open or panel, or aloft). `spares`: spare tees wanted here. */
export interface ProblemPlace {
  readonly id: string;
  readonly tees: boolean;
  readonly end: boolean;
  readonly spares: number;
}

/** `trunk`: how often the trunk may run through; `extra`: cost of each time the trunk runs through, in hundredths. */
export interface ProblemWay {
  readonly id: string;
  readonly a: string;
  readonly b: string;
  readonly mm: number;
  readonly maxMm: number;
  readonly trunk: 0 | 1 | 2;
  readonly drop: boolean;
  readonly extra: number;
}

/** `id` is `kit.port`; `minMv` the least working voltage. */
export interface ProblemDevice {
  readonly id: string;
  readonly place: string;
  readonly tailMm: number;
  readonly maxTailMm: number;
  readonly len: number;
  readonly minMv: number;
}

/** Resistance is of one power conductor, microohm per metre; prices in hundredths per metre. */
export interface ProblemGrade {
  readonly id: GradeId;
  readonly warnMm: number;
  readonly failMm: number;
  readonly microOhmPerM: number;
  readonly maxMa: number;
  readonly trunkPerM: number;
  readonly dropPerM: number;
}

/**
 * `mv`: volts at the panel with the bank at its lowest; `reach`: route of the feed lead from the panel to each place with tees.
 * `lostMv`: the most that may be lost between panel and any device, within `warn` while any layout fits, else within `fail`.
 */
export interface ProblemFeed {
  readonly mv: number;
  readonly lostMv?: { readonly warn: number; readonly fail: number };
  readonly leadPerM: number;
  readonly leadMicroOhmPerM: number;
  readonly reach: readonly { readonly place: string; readonly mm: number; readonly maxMm: number }[];
}

/** One stop of the trunk walk; `via` is the way from the step before, absent on the first. Tees: `kit.port`, `spare@place#n`, `feed`. */
export interface LayoutStep {
  readonly place: string;
  readonly via?: string;
  readonly tees: readonly string[];
}

/**
 * One way to lay out a bus. `cost` and `bound` are exact integers in thousandths of a hundredth of the currency, since
 * prices are in hundredths a metre and lengths in millimetres: divide by 100 000 for the currency. No layout that keeps
 * every limit costs less than `bound`; where it keeps the warn limits, none that keeps these. Status `infeasible` means that no layout keeping every limit was found, and this is
 * the one that breaks them least; it does not say that none exists. The walk is written in the direction that comes first.
 */
export interface Layout {
  readonly problem: string;
  readonly grade: GradeId;
  readonly walk: readonly LayoutStep[];
  readonly cost: number;
  readonly bound: number;
  readonly status: LayoutStatus;
  readonly work: number;
}

/** How much a solver may do, counted in states, trunks begun and tees hung; never in seconds. */
export interface Budget {
  readonly work: number;
}

export type LayoutMap = ReadonlyMap<string, Layout>;
