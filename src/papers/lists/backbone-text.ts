import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { BusEntry, Plan } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { type PriceRow, priceRows } from './bus-price.ts';
import { currencyOf } from './cure-words.ts';
import { type EndNames, endWords } from './end-words.ts';
import { inUnits } from './in-units.ts';
import { nextBestWords } from './next-best-words.ts';
import { keepUnits } from './print-figure.ts';
import { teeWords } from './tee-words.ts';

const width = 80;

const priceLines = (rows: readonly PriceRow[], currency: string): string[] => {
  if (rows.length === 0) return [];
  const row = ({ name, amount, own, next = '' }: PriceRow): string =>
    `${name.padEnd(32)}${amount.padStart(12)}${own.padStart(12)}${next.padStart(14)}`.trimEnd();
  const hasNext = rows.some(({ next }) => next !== undefined);
  const head = {
    name: `Price, ${currency}`,
    amount: '',
    own: 'as laid out',
    ...(hasNext ? { next: 'next best' } : {}),
  };
  return [row(head), ...rows.map(row)];
};

const busLines = (names: EndNames, boat: Boat, bus: BusEntry): string[] => {
  const currency = currencyOf(boat);
  const words = (text: string, lead = ''): string[] => textLines(keepUnits(inUnits(text, 'both')), { width, lead });
  return [
    `BUS ${boat.buses.find(({ id }) => id === bus.id)?.name ?? bus.id}`,
    ...nextBestWords(names, bus, currency).flatMap((says) => words(says)),
    '',
    ...priceLines(priceRows(bus), currency),
    ...(bus.tees === undefined ? [] : ['', 'Why each tee is where it is']),
    ...(bus.tees ?? []).flatMap((tee) =>
      words(`${endWords(names, tee.port)}: ${teeWords(names, tee, currency).join(' ')}`, '- '),
    ),
  ];
};

/** Each bus as text of 80 columns: how sure its layout is, its price in parts beside the next best, and why each tee is where it is. */
export const backboneText = (boat: Boat, plan: Plan): string => {
  const names = indexBoat(boat);
  const buses = plan.buses.map((bus) => busLines(names, boat, bus).join('\n'));
  return `${[`BACKBONE, ${boat.name}`, ...(buses.length === 0 ? ['No bus has a layout.'] : buses)].join('\n\n').trimEnd()}\n`;
};
