import type { BoatIndex } from '../../core/boat/boat-index.ts';
import type { Order } from '../../core/boat/boat-schema.ts';
import { byCodeUnit } from '../../core/boat/ids.ts';
import type { LineEntry, Plan } from '../../core/plan-shape.ts';
import { type EndNames, endWords } from './end-words.ts';
import { labelOf } from './label-of.ts';

/** What the order and the tape list look up to name things. */
export type OrderNames = EndNames & Pick<BoatIndex, 'ways'>;

const lineWords = (names: EndNames, line: LineEntry): string => {
  const ends = `${endWords(names, line.from)} to ${endWords(names, line.to)}`;
  const label = labelOf(line);
  return label === '' ? ends : `${label}, ${ends}`;
};

/** A way by its ends: "way from locker to helm". */
export const wayWords = (names: OrderNames, id: string): string => {
  const way = names.ways.get(id);
  if (way === undefined) return id;
  const [one, other] = way.ends.map((place) => names.places.get(place)?.name ?? place);
  return `way from ${one ?? ''} to ${other ?? ''}`;
};

/** Names what an item of the order is for, by id: a line by its label and ends, a way by its ends, else by its own name. */
export const whatFor = (names: OrderNames, plan: Pick<Plan, 'lines'>): ((id: string) => string) => {
  const lines = new Map(plan.lines.map((line) => [line.id, line]));
  return (id) => {
    const line = lines.get(id);
    if (line !== undefined) return lineWords(names, line);
    if (names.ways.has(id)) return wayWords(names, id);
    return names.places.get(id)?.name ?? endWords(names, id);
  };
};

/** A list in order without repeats, cut after a few: "A; B; C; and 4 more". */
export const someWords = (words: readonly string[], most: number): string => {
  const once = [...new Set(words)].sort(byCodeUnit);
  if (once.length <= most + 1) return once.join('; ');
  return `${once.slice(0, most).join('; ')}; and ${once.length - most} more`;
};

/** Money of whole hundredths without its currency: "36.00". */
export const printMoney = (hundredths: number): string => (hundredths / 100).toFixed(2);

const stateWords = {
  have: 'at hand',
  order: 'to be ordered',
  ordered: 'ordered',
  arrived: 'arrived',
  returned: 'returned',
} as const;

/** Where an item stands: "ordered from Harbour Supplies, 14 days to come, order by 2027-03-31". */
export const orderWords = ({ state, count, supplier, leadDays, orderBy }: Order): string =>
  [
    `${count === undefined ? '' : `${count} `}${stateWords[state]}${supplier === undefined ? '' : ` from ${supplier}`}`,
    ...(leadDays === undefined ? [] : [`${leadDays} ${leadDays === 1 ? 'day' : 'days'} to come`]),
    ...(orderBy === undefined ? [] : [`order by ${orderBy}`]),
  ].join(', ');
