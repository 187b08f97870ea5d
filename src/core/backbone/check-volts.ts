import type { MeasuredDrop, PlacedTee } from './check-drops.ts';
import type { Problem, ProblemGrade } from './problem.ts';

const maPerLen = 50;
/** microohm per metre x millimetre x milliampere, in one millivolt */
const fineInMv = 1_000_000_000;

/**
 * The limits of current and volts that a layout breaks, in words. Constant currents, I = 50 mA x LEN:
 * dV_k = 2 R sum_j(shared_kj I_j) + 2 R d_k I_k + 2 R_lead L_lead I_all, where shared_kj is the length of trunk between feed
 * and tee that devices k and j have in common. A device teed on the feed's own step loads both legs. Works in whole units
 * of 1e-9 mV, so nothing is rounded.
 */
export const lostVolts = ({
  problem,
  grade,
  atMm,
  tees,
  drops,
}: {
  readonly problem: Problem;
  readonly grade: ProblemGrade;
  /** longest distance of every step of the walk from its start */
  readonly atMm: readonly number[];
  readonly tees: readonly PlacedTee[];
  readonly drops: readonly MeasuredDrop[];
}): string[] => {
  const feed = tees.find(({ tee }) => tee === 'feed');
  const reach = problem.feed.reach.find(({ place }) => place === feed?.place);
  if (feed === undefined || reach === undefined) return [];
  const feedMm = atMm[feed.step] ?? 0;
  const loads = drops.map((drop) => ({ ...drop, ma: drop.len * maPerLen, awayMm: (atMm[drop.step] ?? 0) - feedMm }));
  const legMa = (side: 1 | -1): number =>
    loads.filter(({ step }) => (step - feed.step) * side >= 0).reduce((sum, { ma }) => sum + ma, 0);
  const broken: string[] = [];
  const worstMa = Math.max(legMa(1), legMa(-1));
  if (worstMa > grade.maxMa) {
    broken.push(`One leg from the feed carries ${worstMa} mA; the limit for ${grade.id} cable is ${grade.maxMa} mA.`);
  }
  const allMa = loads.reduce((sum, { ma }) => sum + ma, 0);
  const leadFine = problem.feed.leadMicroOhmPerM * reach.maxMm * allMa;
  for (const load of loads.filter(({ boughtMm }) => Number.isFinite(boughtMm))) {
    const sharedFine = loads.reduce((sum, other) => sum + sharedMm(load.awayMm, other.awayMm) * other.ma, 0);
    const fine = 2 * (grade.microOhmPerM * (sharedFine + load.boughtMm * load.ma) + leadFine);
    broken.push(...brokenVolts({ problem, load, fine }));
  }
  return broken;
};

const brokenVolts = ({
  problem: {
    feed: { mv, lostMv },
  },
  load,
  fine,
}: {
  readonly problem: Problem;
  readonly load: MeasuredDrop;
  /** what is lost on the way to it, 1e-9 mV */
  readonly fine: number;
}): string[] => {
  const broken: string[] = [];
  if (mv * fineInMv - fine < load.minMv * fineInMv) {
    const leftV = Math.floor(mv - fine / fineInMv) / 1000;
    broken.push(`${load.tee} is left with ${leftV} V; it needs ${load.minMv / 1000} V.`);
  }
  if (lostMv !== undefined && fine > lostMv.fail * fineInMv) {
    const lostV = Math.ceil(fine / fineInMv) / 1000;
    broken.push(`${lostV} V are lost on the way to ${load.tee}; the limit is ${lostMv.fail / 1000} V.`);
  }
  return broken;
};

const sharedMm = (oneMm: number, otherMm: number): number =>
  oneMm * otherMm <= 0 ? 0 : Math.min(Math.abs(oneMm), Math.abs(otherMm));
