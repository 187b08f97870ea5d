import type { Ground, LeadOption, TeeChoice } from './ground.ts';

/** microohm per metre x millimetre x milliampere, in one millivolt */
const fineInMv = 1_000_000_000;

/**
 * Currents and volts for one position of the feed, by a ladder of constant currents: each stretch of trunk carries what
 * hangs beyond it, dV = 2 R L I. A device at the feed's own step counts in both legs. Gives how far the limits are broken,
 * mA and mV added, and the worst loss of volts in 1e-9 mV.
 */
export const feedVolts = ({
  ground,
  atMm,
  tees,
  step,
  lead,
}: {
  readonly ground: Ground;
  readonly atMm: readonly number[];
  readonly tees: readonly (TeeChoice | undefined)[];
  readonly step: number;
  readonly lead: LeadOption;
}): { violation: number; worst: number } => {
  const { grade, problem } = ground;
  const loadMa = new Array<number>(atMm.length).fill(0);
  let allMa = 0;
  for (const [device, tee] of tees.entries()) {
    const ma = ground.devices[device]?.ma ?? 0;
    if (tee === undefined) continue;
    loadMa[tee.step] = (loadMa[tee.step] ?? 0) + ma;
    allMa += ma;
  }
  const { lost, worstLegMa } = trunkLosses({ atMm, loadMa, step, microOhmPerM: grade.microOhmPerM });
  const leadLost = 2 * problem.feed.leadMicroOhmPerM * lead.maxMm * allMa;
  let violation = Math.max(0, worstLegMa - grade.maxMa);
  let worst = leadLost;
  for (const [device, tee] of tees.entries()) {
    const own = ground.devices[device];
    if (tee === undefined || own === undefined) continue;
    const dropLost = 2 * grade.microOhmPerM * tee.option.boughtMm * own.ma;
    const whole = leadLost + dropLost + (lost[tee.step] ?? 0);
    worst = Math.max(worst, whole);
    violation += Math.max(0, Math.ceil((whole - (problem.feed.mv - own.minMv) * fineInMv) / fineInMv));
  }
  return { violation, worst };
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
