import { aDevice, aGrade, aPlace, aProblem, aWay } from '../a-problem.test-helper.ts';
import type { Problem } from '../problem.ts';
import { type Ground, layGround } from './ground.ts';
import { noLegsKeepVolts } from './leg-search.ts';

export const firstGround = (problem: Problem): Ground => {
  const grade = problem.grades[0];
  if (grade === undefined) throw new Error('The boat has no grade of cable.');
  return layGround({ problem, grade, stretched: false });
};

/** Whether no legs from any place of the feed keep the volts, as far as so much work tells. */
export const isHopeless = (
  problem: Problem,
  { under = Number.POSITIVE_INFINITY, work = 100_000 }: { under?: number; work?: number } = {},
): boolean => {
  const ground = firstGround(problem);
  return noLegsKeepVolts({ ground, leads: ground.leads, under, purse: { left: work } });
};

/** Bow, helm and stern 4 m and 5 m apart, fed at the helm, with devices of 50 mA on tails of 0.3 m, unless told otherwise. */
export const inARow = ({
  lostMv,
  devices = ['bow', 'helm', 'stern'],
  tailMm = 300,
  fedAt = ['helm'],
  leadMicroOhmPerM = 0,
  mostMm = 100_000,
  ...limits
}: {
  readonly lostMv: number;
  readonly devices?: readonly string[];
  readonly tailMm?: number;
  readonly fedAt?: readonly string[];
  readonly leadMicroOhmPerM?: number;
  /** how far apart the farthest two may be */
  readonly mostMm?: number;
  readonly dropMm?: number;
  readonly dropsMm?: number;
}): Problem =>
  aProblem({
    places: ['bow', 'helm', 'stern'].map((id) => aPlace(id)),
    ways: [aWay({ id: 'fore', a: 'bow', b: 'helm', mm: 4000 }), aWay({ id: 'rear', a: 'helm', b: 'stern', mm: 5000 })],
    devices: devices.map((place, n) => aDevice(`d${n}.n2k`, place, { tailMm })),
    grades: [aGrade({ microOhmPerM: 100_000, warnMm: mostMm, failMm: mostMm })],
    limits: { dropMm: 300, dropsMm: 78_000, devices: 50, ...limits },
    feed: {
      mv: 12_000,
      lostMv: { warn: lostMv, fail: lostMv },
      leadPerM: 0,
      leadMicroOhmPerM,
      reach: fedAt.map((place) => ({ place, mm: 1000, maxMm: 1000 })),
    },
  });
