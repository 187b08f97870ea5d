import { canLevels } from '../../facts/can-levels.ts';
import { faultRanges } from '../../facts/fault-ranges.ts';
import type { BusModel } from './bus-model.ts';
import { type FaultCase, some, stretches, upTo } from './fault-case.ts';
import type { ReadingRange } from './reading-range.ts';
import { deviceCount, errorsMany, errorsPerhaps, ohms, underFeed, volts } from './sound-ranges.ts';

/** It holds the bus dominant as it joins, or only spoils what the others say. */
export const swappedData = (model: BusModel): FaultCase[] => {
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
export const dataToSupply = (model: BusModel): FaultCase[] =>
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

export const swappedPower = (): FaultCase[] => [
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
export const badNegative = (model: BusModel): FaultCase[] =>
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

export const twoFeeds = (model: BusModel): FaultCase[] => {
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
