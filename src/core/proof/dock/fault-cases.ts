import { canLevels } from '../../facts/can-levels.ts';
import { dockFigures } from '../../facts/dock-figures.ts';
import { faultRanges } from '../../facts/fault-ranges.ts';
import type { BusModel } from './bus-model.ts';
import { allBut, ends, type FaultCase, some, steps, stretches, upTo } from './fault-case.ts';
import {
  bothEnds,
  counted,
  deviceCount,
  errorsPerhaps,
  ohms,
  type PairState,
  pairRanges,
  volts,
} from './sound-ranges.ts';
import { badNegative, dataToSupply, swappedData, swappedPower, twoFeeds } from './supply-faults.ts';

const withPair = (model: BusModel, state: PairState, ...more: FaultCase['changes']): FaultCase['changes'] => [
  ...pairRanges(model, state),
  ...more,
];

const oneMissing = (model: BusModel): FaultCase[] =>
  ends(model).map((step) => ({
    step,
    changes: withPair(model, { terminators: allBut(model, step) }, ['errors', errorsPerhaps], ['devices', some(model)]),
  }));

const noneAtAll = (model: BusModel): FaultCase[] => [
  {
    changes: withPair(model, { terminators: [] }, ['errors', errorsPerhaps], ['devices', upTo(deviceCount(model))]),
  },
];

const oneTooMany = (model: BusModel): FaultCase[] =>
  steps(model).map((step) => ({
    step,
    changes: withPair(model, { terminators: [...bothEnds(model), step] }, ['errors', errorsPerhaps]),
  }));

const onADrop = (model: BusModel): FaultCase[] =>
  ends(model).flatMap((end) =>
    steps(model)
      .filter((step) => step !== end)
      .map((step) => ({
        step,
        changes: withPair(model, { terminators: [...allBut(model, end), step] }, ['errors', errorsPerhaps]),
      })),
  );

/** Units on either side hear only each other: which of the two groups is counted hangs on where one looks. */
const openTrunk = (model: BusModel): FaultCase[] =>
  stretches(model).flatMap((step) => {
    const near = model.devices.slice(0, step + 1).reduce((sum, count) => sum + count, 0);
    return [near, deviceCount(model) - near].map((group) => ({
      step,
      changes: withPair(
        model,
        { terminators: bothEnds(model), openAfter: step },
        ['devices', counted('devices', group, group)],
        ['errors', errorsPerhaps],
      ),
    }));
  });

const openDrop = (model: BusModel): FaultCase[] => [
  {
    changes: [
      ['devices', counted('devices', deviceCount(model) - 1, deviceCount(model) - 1)],
      ['plug-ohm', ohms(faultRanges.openDropOhm, dockFigures.openOhm.value)],
      ['errors', counted('errors', ...faultRanges.errors.few)],
    ],
  },
];

const shorted = (model: BusModel): FaultCase[] =>
  steps(model).map((step) => ({
    step,
    changes: withPair(
      model,
      { terminators: bothEnds(model), leak: { step, ohm: faultRanges.shortOhm } },
      ['devices', upTo(0)],
      ['errors', errorsPerhaps],
      ...(['end-1', 'end-2'] as const).flatMap((end) => [
        [`high-idle:${end}`, volts(canLevels.recessive.leastV, canLevels.recessive.mostV)] as const,
        [`low-idle:${end}`, volts(canLevels.recessive.leastV, canLevels.recessive.mostV)] as const,
      ]),
    ),
  }));

const shieldTwice = (): FaultCase[] => [{ changes: [['shield-to-ground', ohms(...faultRanges.secondEarthOhm)]] }];

const wetTee = (model: BusModel): FaultCase[] =>
  steps(model).map((step) => ({
    step,
    changes: withPair(
      model,
      { terminators: bothEnds(model), leak: { step, ohm: faultRanges.wetOhm } },
      ['high-to-plus', ohms(...faultRanges.wetToPlusOhm)],
      ['low-to-minus', ohms(faultRanges.wetToPlusOhm[0], dockFigures.openOhm.value)],
      ['steady', counted('yes-no', 0, 0)],
      ['errors', errorsPerhaps],
      ['devices', some(model)],
    ),
  }));

/** Every fault whose signature is published or practice, by its id there, with each way it can be on one bus. */
export const faultCases: Readonly<Record<string, (model: BusModel) => readonly FaultCase[]>> = {
  ok: () => [{ changes: [] }],
  'term-1': oneMissing,
  'term-0': noneAtAll,
  'term-3': oneTooMany,
  'term-drop': onADrop,
  'open-trunk': openTrunk,
  'open-drop': openDrop,
  short: shorted,
  'swap-data': swappedData,
  'data-to-supply': dataToSupply,
  'swap-power': swappedPower,
  'bad-negative': badNegative,
  'two-feeds': twoFeeds,
  'shield-twice': shieldTwice,
  water: wetTee,
};
