import { canLevels } from '../../facts/can-levels.ts';
import { dockFigures } from '../../facts/dock-figures.ts';
import { faultRanges } from '../../facts/fault-ranges.ts';
import type { BusModel } from './bus-model.ts';
import type { ReadingRange } from './reading-range.ts';
import {
  bothEnds,
  counted,
  deviceCount,
  errorsMany,
  errorsPerhaps,
  ohms,
  type PairState,
  pairRanges,
  type ReadingKey,
  underFeed,
  volts,
} from './sound-ranges.ts';

/** One way a fault can be, and what it makes of the readings that it changes. `step`: where on the trunk. */
export interface FaultCase {
  readonly step?: number;
  readonly changes: readonly (readonly [ReadingKey, ReadingRange])[];
}

const steps = ({ atM }: BusModel): number[] => atM.map((_, step) => step);
/** Stretches of the trunk, each by the step it begins at, shorter than nothing left out. */
const stretches = (model: BusModel): number[] =>
  steps(model).filter((step) => (model.atM[step + 1] ?? -1) > (model.atM[step] ?? 0));
const allBut = (model: BusModel, step: number): number[] => bothEnds(model).filter((end) => end !== step);
const ends = (model: BusModel): number[] => [...new Set(bothEnds(model))];
const some = (model: BusModel): ReadingRange =>
  counted('devices', Math.ceil(deviceCount(model) / 2), deviceCount(model));
const upTo = (most: number): ReadingRange => counted('devices', 0, Math.max(0, most));

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

/** It holds the bus dominant as it joins, or only spoils what the others say. */
const swappedData = (model: BusModel): FaultCase[] => {
  const { dominantHigh, dominantLow } = canLevels;
  const stuck = (['end-1', 'end-2'] as const).flatMap((end) => [
    [`high-idle:${end}`, volts(dominantHigh.leastV, dominantHigh.mostV)] as const,
    [`low-idle:${end}`, volts(dominantLow.leastV, dominantLow.mostV)] as const,
  ]);
  return [
    { changes: [['devices', upTo(deviceCount(model) - 1)], ['errors', errorsMany], ...stuck] },
    {
      changes: [
        ['devices', upTo(deviceCount(model) - 1)],
        ['errors', errorsMany],
      ],
    },
  ];
};

const touching = ohms(...faultRanges.touchingOhm);

/** The other wire reads as much and the terminators between the two on top. */
const dataToSupply = (model: BusModel): FaultCase[] =>
  (['high', 'low'] as const).flatMap((wire) =>
    (['minus', 'plus', 'shield'] as const).map((to): FaultCase => {
      const other = wire === 'high' ? 'low' : 'high';
      const level = to === 'plus' ? volts(canLevels.idle.mostV, 16) : volts(-0.2, canLevels.idle.leastV);
      const through = ohms(...faultRanges.throughOhm);
      return {
        changes: [
          [`${wire}-to-${to}`, touching],
          [`${other}-to-${to}`, through],
          ...(to === 'shield'
            ? ([
                [`${wire}-to-minus`, touching],
                [`${other}-to-minus`, through],
              ] as const)
            : []),
          ...(['end-1', 'end-2'] as const).flatMap((end) => [
            [`high-idle:${end}`, level] as const,
            [`low-idle:${end}`, level] as const,
          ]),
          ['devices', upTo(deviceCount(model))],
          ['errors', errorsPerhaps],
        ],
      };
    }),
  );

const swappedPower = (): FaultCase[] => [
  {
    changes: [
      ['feed-polarity', volts(...faultRanges.swappedV)],
      ['bus-volts:feed', volts(...faultRanges.swappedBusV)],
      ...(['end-1', 'end-2', 'far'] as const).map(
        (spot) => [`bus-volts:${spot}`, volts(...faultRanges.swappedBusV)] as const,
      ),
      ...(['end-1', 'end-2'] as const).flatMap((end) => [
        [`high-idle:${end}`, volts(...faultRanges.swappedLevelV)] as const,
        [`low-idle:${end}`, volts(...faultRanges.swappedLevelV)] as const,
      ]),
      ['devices', upTo(0)],
    ],
  },
];

const { recessive, busyHigh, busyLow } = canLevels;
/** Between a quiet wire and what a meter averages on a busy one. */
const usualHighV = (recessive.usualV + (busyHigh.leastV + busyHigh.mostV) / 2) / 2;
const usualLowV = (recessive.usualV + (busyLow.leastV + busyLow.mostV) / 2) / 2;

/**
 * Beyond a bad joint the negative stands higher by what is lost, so the wires read lower there; all devices together hold the
 * wires, so that on the near side they read higher: by the share of the devices that hang beyond it.
 */
const badNegative = (model: BusModel): FaultCase[] =>
  stretches(model).flatMap((step) => {
    const isAfterFeed = step >= model.feedStep;
    const isBeyond = (at: number): boolean => (isAfterFeed ? at > step : at <= step);
    const beyond = model.devices.reduce((sum, count, at) => sum + (isBeyond(at) ? count : 0), 0);
    if (beyond === 0) return [];
    const share = beyond / deviceCount(model);
    const last = model.atM.length - 1;
    return faultRanges.lostV.map(([leastV, mostV]): FaultCase => {
      const at = (spot: number): ReadingRange =>
        isBeyond(spot) ? underFeed(leastV, mostV + model.lossV) : underFeed(0, model.lossV);
      const level = (spot: number, usualV: number): ReadingRange => {
        const shifts = [leastV, mostV].map((lost) => (isBeyond(spot) ? -lost * (1 - share) : lost * share));
        return volts(
          usualV + Math.min(...shifts) - faultRanges.levelV,
          usualV + Math.max(...shifts) + faultRanges.levelV,
        );
      };
      const levels = ([0, last] as const).flatMap((spot, end) => [
        [`high-idle:end-${end + 1}`, level(spot, usualHighV)] as const,
        [`low-idle:end-${end + 1}`, level(spot, usualLowV)] as const,
      ]);
      return {
        step,
        changes: [
          ['bus-volts:end-1', at(0)],
          ['bus-volts:end-2', at(last)],
          ['bus-volts:far', at(model.farStep)],
          ...levels,
          ['devices', some(model)],
          ['errors', errorsPerhaps],
        ],
      };
    });
  });

const twoFeeds = (model: BusModel): FaultCase[] => {
  const near = underFeed(-1, model.lossV);
  return [
    {
      changes: [
        ['bus-dead', volts(...faultRanges.fedTwiceV)],
        ...(['end-1', 'end-2', 'far'] as const).map((spot) => [`bus-volts:${spot}`, near] as const),
      ],
    },
  ];
};

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
