import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat, Kit } from '../../core/boat/boat-schema.ts';
import { shortName } from '../../core/boat/short-name.ts';
import { readingName } from '../../core/facts/reading-words.ts';
import type { ReadingEntry } from '../../core/plan-shape.ts';
import type { ChangeOrder, LineChange } from '../../core/quote/change-order.ts';
import type { Range } from '../../core/quote/quote-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { endWords } from '../lists/end-words.ts';
import { printMoney } from '../lists/order-words.ts';
import { keepUnits } from '../lists/print-figure.ts';
import type { QuoteRow } from './quote-rows.ts';
import { taskNames } from './task-words.ts';

const width = 80;

/** "+12.00", "-12.00" or "0.00". */
const more = (hundredths: number): string => `${hundredths > 0 ? '+' : ''}${printMoney(hundredths)}`;

const moreRange = ({ least, most }: Range): string =>
  least === most ? more(least) : `${more(least)} to ${more(most)}`;

const signed = (value: number): string => `${value > 0 ? '+' : ''}${Math.round(value * 100) / 100}`;

const signedRange = ({ least, most }: Range): string =>
  least === most ? signed(least) : `${signed(least)} to ${signed(most)}`;

const lineWords = ({ beforeM, afterM }: LineChange): string => {
  const metres = (valueM: number): string => `${valueM.toFixed(2)} m`;
  if (beforeM === undefined) return `new, ${metres(afterM ?? 0)}`;
  return afterM === undefined
    ? `no longer led, ${metres(beforeM)} before`
    : `${metres(afterM)}, before ${metres(beforeM)}`;
};

const unitWords = ({ name, fate }: Kit, when: 'Now' | 'No longer'): string => {
  const does = fate === 'comes' ? 'fitted' : 'taken out';
  return `${when} ${does}: ${shortName(name)}.`;
};

/** A change order in words; empty lists where nothing of a kind changes. */
export interface ChangeRows {
  readonly total: string;
  readonly says: readonly string[];
  readonly items: readonly QuoteRow[];
  readonly hours: readonly QuoteRow[];
  readonly sums: readonly QuoteRow[];
}

const readingWords = ({ before, after }: { before: Boat; after: Boat }, entry: ReadingEntry): string => {
  const unit = [...after.kit, ...before.kit].find(({ id }) => id === entry.at);
  return `${readingName(entry)} at ${shortName(unit?.name ?? entry.at)}`;
};

const saysOf = (boats: { before: Boat; after: Boat }, order: ChangeOrder): string[] => {
  const names = [boats.after, boats.before].map((boat) =>
    indexBoat({ ...boat, kit: boat.kit.map((unit) => ({ ...unit, name: shortName(unit.name) })) }),
  );
  const endOf = (end: string): string => {
    const [now, old] = names.map((own) => endWords(own, end));
    return now === end ? (old ?? end) : (now ?? end);
  };
  return [
    ...order.units.now.map((unit) => unitWords(unit, 'Now')),
    ...order.units.nowNot.map((unit) => unitWords(unit, 'No longer')),
    ...order.gained.map((entry) => `You also get ${readingWords(boats, entry)}.`),
    ...order.lost.map((entry) => `You no longer get ${readingWords(boats, entry)}.`),
    ...order.lines.map((line) => `Cable ${endOf(line.from)} to ${endOf(line.to)}: ${lineWords(line)}.`),
  ];
};

/** What changes between two states of a boat, in words. */
export const changeRows = (boats: { before: Boat; after: Boat }, order: ChangeOrder): ChangeRows => {
  const { sums, currency } = order;
  return {
    total: `${moreRange(sums.total)} ${currency}`,
    says: saysOf(boats, order),
    items: order.items.map(({ id, item, by, more: count, cost }) => ({
      id,
      what: `${signed(count)}${by === 'metre' ? ' m' : ''} × ${item}`,
      fact: '',
      money: more(cost),
    })),
    hours: order.hours.map(({ task, more: count, hoursH, cost }) => ({
      id: task,
      what: `${signed(count)} × ${taskNames[task]}`,
      fact: `${signedRange(hoursH)} h`,
      money: moreRange(cost),
    })),
    sums: [
      { id: 'parts', what: 'Parts', fact: '', money: more(sums.parts) },
      { id: 'labour', what: 'Work', fact: `${signedRange(sums.hoursH)} h`, money: moreRange(sums.labour) },
      { id: 'contingency', what: 'For what turns up', fact: '', money: moreRange(sums.contingency) },
      { id: 'total', what: 'Together', fact: `in ${currency}`, money: moreRange(sums.total) },
    ],
  };
};

const moneyLine = ({ what, fact, money }: QuoteRow): string[] => {
  const said = fact === '' ? what : `${what}, ${fact}`;
  const [first = '', ...others] = textLines(keepUnits(said), { width: width - money.length - 1, lead: '' });
  return [`${first}${' '.repeat(Math.max(1, width - first.length - money.length))}${money}`, ...others];
};

const block = (title: string, lines: readonly string[]): string[] => (lines.length === 0 ? [] : ['', title, ...lines]);

/** A change order as text of 80 columns: what changes, item by item and task by task, and what it costs more or less. */
export const changeOrderText = (boats: { before: Boat; after: Boat }, order: ChangeOrder): string => {
  const rows = changeRows(boats, order);
  const isEmpty = [rows.says, rows.items, rows.hours].every((list) => list.length === 0);
  return `${[
    `CHANGE ORDER, ${boats.after.name}`,
    ...textLines(isEmpty ? 'Nothing changes.' : `It comes to ${rows.total} against before.`, { width, lead: '' }),
    ...block(
      'WHAT CHANGES',
      rows.says.flatMap((one) => textLines(keepUnits(one), { width, lead: '- ' })),
    ),
    ...block('PARTS', rows.items.flatMap(moneyLine)),
    ...block('WORK', rows.hours.flatMap(moneyLine)),
    ...(isEmpty ? [] : block('TOGETHER', rows.sums.flatMap(moneyLine))),
  ].join('\n')}\n`;
};
