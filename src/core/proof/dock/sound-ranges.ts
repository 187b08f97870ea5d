import { canLevels } from '../../facts/can-levels.ts';
import { dockFigures } from '../../facts/dock-figures.ts';
import { busOhm } from '../../facts/dock-tests.ts';
import { faultRanges } from '../../facts/fault-ranges.ts';
import type { BusModel } from './bus-model.ts';
import { ladderOhm } from './ladder-ohm.ts';
import type { ReadingRange } from './reading-range.ts';

/** Readings of one bus by the test they are of and its spot, `data-ohm:end-1`; a yes is 1, a no 0. */
export type ReadingKey = string;

/** What is otherwise than planned between the data wires: terminators by step, what leaks at a step, a wire that is open. */
export interface PairState {
  /** steps at which a terminator is */
  readonly terminators: readonly number[];
  readonly leak?: { readonly step: number; readonly ohm: readonly [least: number, most: number] };
  readonly openAfter?: number;
}

const infinite = Number.POSITIVE_INFINITY;
const termShare = dockFigures.terminatorPct.value / 100;

const pairOhm = (model: BusModel, state: PairState, at: number, how: -1 | 1): number => {
  const nodeOhm = how < 0 ? busOhm.nodeLeast.value : busOhm.nodeMost.value;
  const siemens = model.devices.map((count) => count / nodeOhm);
  const add = (step: number, ohm: number): void => {
    siemens[step] = (siemens[step] ?? 0) + 1 / ohm;
  };
  for (const step of state.terminators) add(step, busOhm.terminator.value * (1 + how * termShare));
  if (state.leak !== undefined) add(state.leak.step, state.leak.ohm[how < 0 ? 0 : 1]);
  return ladderOhm(
    {
      atM: model.atM.map((m) => m * (1 + how * model.lengthDoubt)),
      shuntOhm: siemens.map((one) => (one === 0 ? infinite : 1 / one)),
      ohmPerM: model.ohmPerM,
      ...(state.openAfter === undefined ? {} : { openAfter: state.openAfter }),
    },
    at,
  );
};

const openOhm = dockFigures.openOhm.value;

const { onlyNodesOhm, levelV, errors } = faultRanges;

export const ohms = (least: number, most: number): ReadingRange => ({
  scale: 'ohm',
  least: Math.min(least, openOhm),
  most: Math.min(most, openOhm),
});

/** The readings between the data wires in one state: as it stands at three spots, and with the terminator of either end lifted. */
export const pairRanges = (model: BusModel, state: PairState): [ReadingKey, ReadingRange][] => {
  const last = model.atM.length - 1;
  const range = (at: number, terminators: readonly number[]): ReadingRange => {
    const [least, most] = ([-1, 1] as const).map((how) => pairOhm(model, { ...state, terminators }, at, how));
    return ohms(least ?? 0, (least ?? 0) > onlyNodesOhm ? openOhm : (most ?? openOhm));
  };
  const without = (step: number): number[] => {
    const at = state.terminators.indexOf(step);
    return state.terminators.filter((_, turn) => turn !== at);
  };
  return [
    ['data-ohm:end-1', range(0, state.terminators)],
    ...(model.middleStep === 0 || model.middleStep === last
      ? []
      : [['data-ohm:middle', range(model.middleStep, state.terminators)] as [ReadingKey, ReadingRange]]),
    ['data-ohm:end-2', range(last, state.terminators)],
    ['lifted-ohm:end-1', range(0, without(0))],
    ['lifted-ohm:end-2', range(last, without(last))],
    ['plug-ohm', range(model.middleStep, state.terminators)],
  ];
};

export const volts = (least: number, most: number): ReadingRange => ({ scale: 'volts', least, most });
export const underFeed = (leastV: number, mostV: number): ReadingRange => ({
  scale: 'volts',
  least: -mostV,
  most: -leastV,
  fromFeed: true,
});
export const counted = (scale: 'devices' | 'errors' | 'yes-no', least: number, most: number): ReadingRange => ({
  scale,
  least,
  most,
});

/** Both terminators, one at each end. */
export const bothEnds = (model: BusModel): number[] => [0, model.atM.length - 1];
export const deviceCount = ({ devices }: BusModel): number => devices.reduce((sum, count) => sum + count, 0);
export const apart = ohms(1_000_000, dockFigures.openOhm.value);
export const supplied = volts(...faultRanges.suppliedV);
/** what errors do that come and go: none at all, or very many */
export const errorsPerhaps = counted('errors', ...errors.perhaps);
export const errorsMany = counted('errors', ...errors.many);

/** Every reading of a sound bus of this plan. */
export const soundRanges = (model: BusModel): [ReadingKey, ReadingRange][] => {
  const wires = ['high', 'low'].flatMap((wire) => ['minus', 'plus', 'shield'].map((to) => `${wire}-to-${to}`));
  const under = underFeed(0, model.lossV);
  // half of what is lost is lost in the negative
  const shiftV = model.lossV / 2;
  const high = volts(canLevels.recessive.usualV - levelV - shiftV, canLevels.busyHigh.mostV + shiftV);
  const low = volts(canLevels.busyLow.leastV - shiftV, canLevels.recessive.usualV + levelV + shiftV);
  return [
    ...pairRanges(model, { terminators: bothEnds(model) }),
    ...wires.map((wire): [ReadingKey, ReadingRange] => [wire, apart]),
    ['shield-to-ground', apart],
    ['feed-polarity', supplied],
    ['bus-volts:feed', supplied],
    ['bus-volts:end-1', under],
    ['bus-volts:end-2', under],
    ['bus-volts:far', under],
    ['bus-dead', volts(0, dockFigures.deadMostV.value)],
    ['high-idle:end-1', high],
    ['low-idle:end-1', low],
    ['high-idle:end-2', high],
    ['low-idle:end-2', low],
    ['devices', counted('devices', deviceCount(model), deviceCount(model))],
    ['errors', counted('errors', ...errors.none)],
    ['steady', counted('yes-no', 1, 1)],
  ];
};
