import type { Ground, LeadOption, TeeChoice } from './ground.ts';

/** microohm per metre x millimetre x milliampere, in one millivolt */
const fineInMv = 1_000_000_000;

/** What hangs on a walk, wherever it is fed: the load at every step, and of each device its step, what its drop loses and what it may lose. */
export interface HungLoads {
  readonly loadMa: readonly number[];
  readonly allMa: number;
  /** losses in 1e-9 mV */
  readonly hung: readonly { readonly step: number; readonly dropLost: number; readonly mayLose: number }[];
}

/** The loads of tees on a walk of so many steps; a device without a tee loads nothing. */
export const hungLoads = (
  { devices, grade, problem: { feed } }: Ground,
  { steps, tees }: { readonly steps: number; readonly tees: readonly (TeeChoice | undefined)[] },
): HungLoads => {
  const loadMa = new Array<number>(steps).fill(0);
  const hung: HungLoads['hung'][number][] = [];
  let allMa = 0;
  for (let device = 0; device < tees.length; device += 1) {
    const [tee, own] = [tees[device], devices[device]];
    if (tee === undefined || own === undefined) continue;
    const { step, option } = tee;
    loadMa[step] = (loadMa[step] ?? 0) + own.ma;
    allMa += own.ma;
    const dropLost = 2 * grade.microOhmPerM * option.boughtMm * own.ma;
    hung.push({ step, dropLost, mayLose: (feed.mv - own.minMv) * fineInMv });
  }
  return { loadMa, allMa, hung };
};

/**
 * Currents and volts for one position of the feed, by a ladder of constant currents: each stretch of trunk carries what
 * hangs beyond it, dV = 2 R L I. A device at the feed's own step counts in both legs. Gives how far the limits are broken,
 * mA and mV added, and the worst loss of volts in 1e-9 mV; nothing where more is broken than `most`.
 */
export const feedVolts = ({
  ground: { grade, problem },
  atMm,
  loads: { loadMa, allMa, hung },
  step,
  lead,
  most = Number.POSITIVE_INFINITY,
}: {
  readonly ground: Pick<Ground, 'grade' | 'problem'>;
  readonly atMm: readonly number[];
  readonly loads: HungLoads;
  readonly step: number;
  readonly lead: LeadOption;
  readonly most?: number;
}): { violation: number; worst: number } | undefined => {
  const { lost, worstLegMa } = trunkLosses({ atMm, loadMa, step, microOhmPerM: grade.microOhmPerM });
  const leadLost = 2 * problem.feed.leadMicroOhmPerM * lead.maxMm * allMa;
  let violation = Math.max(0, worstLegMa - grade.maxMa);
  let worst = leadLost;
  for (const { step: at, dropLost, mayLose } of hung) {
    if (violation > most) return undefined;
    const whole = leadLost + dropLost + (lost[at] ?? 0);
    if (whole > worst) worst = whole;
    if (whole > mayLose) violation += Math.ceil((whole - mayLose) / fineInMv);
  }
  return violation > most ? undefined : { violation, worst };
};

/** What is lost in the trunk between the feed and every step, 1e-9 mV, and the current of the stronger leg. */
const trunkLosses = ({
  atMm,
  loadMa,
  step,
  microOhmPerM,
}: {
  readonly atMm: readonly number[];
  readonly loadMa: readonly number[];
  readonly step: number;
  readonly microOhmPerM: number;
}): { lost: readonly number[]; worstLegMa: number } => {
  const lost = new Array<number>(atMm.length).fill(0);
  let worstLegMa = 0;
  for (const side of [1, -1] as const) {
    const last = side === 1 ? atMm.length - 1 : 0;
    let legMa = 0;
    for (let at = step; at !== last + side; at += side) legMa += loadMa[at] ?? 0;
    worstLegMa = Math.max(worstLegMa, legMa);
    let beyondMa = legMa - (loadMa[step] ?? 0);
    for (let at = step + side; at !== last + side; at += side) {
      const lengthMm = Math.abs((atMm[at] ?? 0) - (atMm[at - side] ?? 0));
      lost[at] = (lost[at - side] ?? 0) + 2 * microOhmPerM * lengthMm * beyondMa;
      beyondMa -= loadMa[at] ?? 0;
    }
  }
  return { lost, worstLegMa };
};
