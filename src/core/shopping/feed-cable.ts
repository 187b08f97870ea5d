import { usualFeedLead } from '../facts/buying.ts';
import { awgConductors } from '../facts/conductors.ts';
import type { LineEntry } from '../plan-shape.ts';
import { metreItem } from '../prices/price-list.ts';
import type { OrderInput } from './line-cutter.ts';

/** Two-core cable of one size: the item it is in the shopping list, what it is called, and what it costs by the metre. */
export interface FeedCable {
  readonly id: string;
  readonly words: string;
  /** of one core, mm², as a number and as it stands in ids; the thinnest gauge that is not less */
  readonly size: number;
  readonly sizeId: string;
  readonly gauge: string | undefined;
  /** hundredths a metre, to weigh; the owner’s price of the item, else that of a thin lead grown with its copper */
  readonly perM: number;
}

/** The cable a new feed, or the lead of a steering drive, is cut from where its wire was sized; absent where it was not, and for the lead of a bus. */
export const feedCable = (
  input: Pick<OrderInput, 'prices' | 'feeds'>,
  line: Pick<LineEntry, 'id'>,
): FeedCable | undefined => {
  const feed = input.feeds?.get(line.id);
  if (feed?.areaMm2 === undefined || feed.wire === 'bus-cable') return undefined;
  const size = Number(feed.areaMm2.toFixed(2));
  const sizeId = String(size).replace('.', '-');
  const id = `${metreItem({ kind: 'feed' })}-2x${sizeId}`;
  const gauge = awgConductors.find(({ areaMm2 }) => areaMm2 >= size)?.size;
  const usual = Math.round((input.prices.perM('feed') ?? 0) * Math.max(1, size / usualFeedLead.value));
  return {
    id,
    size,
    sizeId,
    gauge,
    words: `two-core power cable, 2 × ${size} mm²${gauge === undefined ? '' : ` or ${gauge} AWG`}`,
    perM: input.prices.own(id, usual),
  };
};
