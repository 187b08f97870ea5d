import type { BoatIndex } from '../../boat/boat-index.ts';
import { type LimitOnBoat, limitOf } from '../../boat/limit-of.ts';
import { limitValue } from '../../boat/limit-value.ts';
import type { BusEntry, Level } from '../../plan-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { limitPart, unitName, warnCures } from '../rule-words.ts';

type Volts = BusEntry['volts'][number];

const lowVolts = (index: BoatIndex, bus: BusEntry, device: Volts, least: LimitOnBoat): Observation => ({
  about: [bus.id, device.port],
  apart: ['least'],
  says: `${unitName(index, device.port)} gets ${device.lowestV.toFixed(2)} V when the battery is at its lowest; it needs ${least.value} V.`,
  measured: { value: device.lowestV, unit: 'V' },
  limit: limitPart(least),
  cure: 'Move the feed nearer, use heavier cable, or feed the bus in two parts with the positive cut between them.',
});

const lostVolts = (
  index: BoatIndex,
  { bus, worst, limit, level }: { bus: BusEntry; worst: Volts; limit: LimitOnBoat; level: Level },
): Observation => ({
  about: [bus.id, worst.port],
  apart: ['lost'],
  level,
  says: `${worst.dropV.toFixed(2)} V are lost on the way to ${unitName(index, worst.port)}; the limit is ${limit.value} V.`,
  measured: { value: worst.dropV, unit: 'V' },
  limit: limitPart(limit),
  cure: 'Move the feed nearer, use heavier cable, or take the heaviest loads off the bus.',
  ...warnCures(bus),
});

/** The limits on lost volts for one bus: a regulated supply may lose more than a battery. */
const lostLimits = (index: BoatIndex, bus: BusEntry): { limit: LimitOnBoat; level: Level }[] => {
  const regulated = (bus.supplyV ?? 0) >= limitValue(index.boat, 'nmea2000-regulated-volts');
  if (regulated) return [{ limit: limitOf(index.boat, 'nmea2000-lost-volts-regulated-fail'), level: 'fault' }];
  return [
    { limit: limitOf(index.boat, 'nmea2000-lost-volts-fail'), level: 'fault' },
    { limit: limitOf(index.boat, 'nmea2000-lost-volts-warn'), level: 'doubt' },
  ];
};

/** Too few volts at the far end, or too many lost on the way: units restart on the first low-battery night. */
export const voltsTooLow: Rule = {
  id: 'bus/volts-too-low',
  level: 'fault',
  title: 'A device on the bus gets too few volts.',
  sources: ['choice-lost-volts', 'practice-bus-limits'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) => {
    const least = limitOf(index.boat, 'nmea2000-device-volts-least');
    return plan.buses.flatMap((bus) => {
      const low = bus.volts.filter((device) => device.lowestV < least.value);
      const [worst] = [...bus.volts].sort((a, b) => b.dropV - a.dropV);
      if (worst === undefined) return [];
      const lost = lostLimits(index, bus).find(({ limit }) => worst.dropV > limit.value);
      return [
        ...low.map((device) => lowVolts(index, bus, device, least)),
        ...(lost === undefined ? [] : [lostVolts(index, { bus, worst, ...lost })]),
      ];
    });
  },
};
