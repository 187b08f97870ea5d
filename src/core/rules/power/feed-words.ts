import type { BoatIndex } from '../../boat/boat-index.ts';
import type { FeedEntry } from '../../plan-shape.ts';
import { within } from '../../power/within.ts';
import { busName, unitName } from '../rule-words.ts';

/** Figures as the findings of this area print them. */
export const amps = (value: number): string => `${Number(value.toFixed(value < 20 ? 1 : 0))} A`;
export const volts = (value: number): string => `${value.toFixed(2)} V`;
export const percent = (value: number): string => `${value.toFixed(1)} %`;
export const area = (areaMm2: number): string => `${Number(areaMm2.toFixed(2))} mm²`;

/** What hangs at the far end of a feed, by the name the owner gave it: a unit, a bus, or a converter by its id. */
export const fedName = (index: BoatIndex, to: string): string =>
  to.includes('.') ? unitName(index, to) : busName(index, to);

/** A circuit by its name, or by its id where it has none. */
export const circuitName = (index: BoatIndex, { panel, circuit }: Pick<FeedEntry, 'panel' | 'circuit'>): string =>
  index.panels.get(panel)?.circuits.find(({ id }) => id === circuit)?.name ?? `circuit ${circuit}`;

/** What a finding about a feed is about. */
export const aboutFeed = ({ to, circuit }: Pick<FeedEntry, 'to' | 'circuit'>): string[] => [to, circuit];

const wires = {
  picked: 'the wire picked',
  aboard: 'the wire aboard',
  settled: 'the wire settled',
  'bus-cable': 'the power lead of the bus',
} as const;

/** The wire of a feed with its area, as a sentence names it: `the wire aboard of 1.5 mm²`. */
export const wireWords = ({ wire, areaMm2 }: Pick<FeedEntry, 'wire' | 'areaMm2'>): string =>
  `${wires[wire ?? 'picked']}${areaMm2 === undefined ? '' : ` of ${area(areaMm2)}`}`;

/** Whether the wire of a feed stands whatever the plan would pick. */
export const stands = ({ wire }: Pick<FeedEntry, 'wire'>): boolean => wire !== undefined && wire !== 'picked';

/** How a feed lies where that lowers what its wire carries: ` in the engine space, 6 conductors together`. */
export const laidWords = ({ engineSpace, carrying }: Pick<FeedEntry, 'engineSpace' | 'carrying'>): string => {
  const parts = [
    ...(engineSpace ? ['through the engine space'] : []),
    ...(carrying > 2 ? [`with ${carrying} conductors in one bundle`] : []),
  ];
  return parts.length === 0 ? '' : ` ${parts.join(', ')}`;
};

/** Whether the wire of a feed already is said to lose too much, or none was found that does not. */
export const losesTooMuch = (feed: Pick<FeedEntry, 'wire' | 'dropV' | 'allowedV' | 'whyNot'>): boolean =>
  feed.whyNot === 'drop' ||
  (stands(feed) && feed.dropV !== undefined && !within({ value: feed.dropV, limit: feed.allowedV }));
