import { cableGrades } from '../../facts/cable-grades.ts';
import { dockFigures } from '../../facts/dock-figures.ts';
import { busOhm } from '../../facts/dock-tests.ts';
import type { BusEntry } from '../../plan-shape.ts';
import type { Ladder } from './ladder-ohm.ts';

/** How the parts of a bus turn out: each as low as it may be, as usual, or as high. */
export type LadderCase = 'least' | 'usual' | 'most';

/** Which of the two terminators is lifted. */
export type Lifted = 'end-1' | 'end-2';

const nodeOhm = { least: busOhm.nodeLeast, usual: busOhm.nodeUsual, most: busOhm.nodeMost };
const sign = { least: -1, usual: 0, most: 1 };

/** A terminator of the case, ohm. */
export const terminatorOhm = (how: LadderCase): number =>
  busOhm.terminator.value * (1 + (sign[how] * dockFigures.terminatorPct.value) / 100);

/** How many devices hang at each step of the walk. */
export const devicesAlong = (bus: BusEntry): number[] =>
  bus.walk.map(({ tees }) => tees.filter((tee) => tee !== 'feed' && !tee.startsWith('spare@')).length);

/** Distance of each step of the walk from the first, m; the doubt of the length spread over all of it. */
const stepsM = (bus: BusEntry, how: LadderCase): number[] => {
  const doubtM = bus.longestM - bus.lengthM;
  const factor = bus.lengthM === 0 ? 1 : Math.max(0, bus.lengthM + sign[how] * doubtM) / bus.lengthM;
  return bus.walk.map((_, step) => (bus.along?.[step]?.alongM ?? 0) * factor);
};

/**
 * The data pair of a bus as a ladder: a terminator at each end of the trunk, unless it is lifted, and every device at its step.
 * The wire of a drop is left out, an ohm beside the kilohms of what hangs on it.
 */
export const busLadder = (bus: BusEntry, how: LadderCase, lifted?: Lifted): Ladder => {
  const devices = devicesAlong(bus);
  const last = devices.length - 1;
  const siemens = devices.map((count) => count / nodeOhm[how].value);
  const add = (step: number): void => {
    siemens[step] = (siemens[step] ?? 0) + 1 / terminatorOhm(how);
  };
  if (lifted !== 'end-1') add(0);
  if (lifted !== 'end-2') add(last);
  return {
    atM: stepsM(bus, how),
    shuntOhm: siemens.map((one) => 1 / one),
    ohmPerM: cableGrades[bus.grade].dataOhmPerM.value,
  };
};

/** The step of the walk nearest to the middle of the trunk. */
export const middleStep = (bus: BusEntry): number => {
  const atM = stepsM(bus, 'usual');
  const awayM = atM.map((one) => Math.abs(one - bus.lengthM / 2));
  return awayM.indexOf(Math.min(...awayM));
};
