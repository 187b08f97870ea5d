import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { shortName } from '../../core/boat/short-name.ts';
import type { TapeEntry } from '../../core/plan-shape.ts';
import type { Quote } from '../../core/quote/quote-shape.ts';
import { type OrderNames, printMoney, wayWords } from '../lists/order-words.ts';
import { printCount } from '../lists/print-figure.ts';
import type { QuoteRow } from './quote-rows.ts';

const whatOf = (names: OrderNames, { does, about }: TapeEntry): string => {
  const isWay = names.ways.has(about);
  if (does === 'prove') return `Whether a cable passes the ${wayWords(names, about)}`;
  const what = isWay
    ? `the ${wayWords(names, about)}`
    : `the cable behind ${shortName(names.kit.get(about)?.name ?? about)}`;
  return `The length of ${what}, not taped yet`;
};

const factOf = ({ shortest, longest, blocked }: TapeEntry): string => {
  if (blocked !== undefined) {
    const { cost, noOtherWay, breaks } = blocked;
    const parts = [
      ...(cost === 0 ? [] : [`cable round it costs ${printMoney(cost)}`]),
      ...(noOtherWay.length === 0 ? [] : [`another way has to be made for ${printCount(noOtherWay.length, 'cable')}`]),
      ...(breaks.length === 0 ? [] : ['the bus has to be laid out anew']),
    ];
    return parts.length === 0 ? 'if it does not, nothing changes' : `if it does not, ${parts.join(', and ')}`;
  }
  if (shortest === undefined || longest === undefined) return '';
  return `its cable costs ${printMoney(shortest.cost)} to ${printMoney(longest.cost)}`;
};

/** What may change a quote: lengths that are guessed, ways that nobody proved, prices to be asked; most money first, as the tape list has it. */
export const mayChangeRows = (boat: Boat, { mayChange, sums, currency }: Quote): QuoteRow[] => {
  const names = indexBoat(boat);
  const asked = {
    id: 'asked',
    what: `The price of ${printCount(sums.unpriced, 'item')}, to be asked`,
    fact: '',
    money: 'not in the sum',
  };
  return [
    ...(sums.unpriced === 0 ? [] : [asked]),
    ...mayChange.map((entry) => ({
      id: entry.id,
      what: whatOf(names, entry),
      fact: factOf(entry),
      money: `${printMoney(entry.atStake)} ${currency}`,
    })),
  ];
};
