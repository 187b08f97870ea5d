import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { currencyOf } from './cure-words.ts';
import { printMoney, someWords } from './order-words.ts';
import { keepUnits, printCount } from './print-figure.ts';
import { type ShoppingGroup, type ShoppingRow, shoppingGroups } from './shopping-groups.ts';

const width = 80;
/** How many things an item is for are named in the text; the CSV names all. */
const namedFor = 3;

const rowLines = ({ count, item, each, sum, for: forWords, why, sure, stands }: ShoppingRow): string[] => {
  const price =
    sum === undefined ? 'price to be asked' : each === printMoney(sum) ? each : `${each} each, ${printMoney(sum)}`;
  return [
    ...textLines(keepUnits(`${count} x ${item}: ${price}.${stands === undefined ? '' : ` It is ${stands}.`}`), {
      width,
      lead: '[ ] ',
    }),
    ...textLines(keepUnits(`For ${someWords(forWords, namedFor)}.`), { width, lead: '    ' }),
    ...textLines(keepUnits(`${why} ${sure === 'sure' ? 'Sure.' : `It ${sure}.`}`), { width, lead: '    ' }),
  ];
};

const groupLines = ({ title, rows, sum }: ShoppingGroup, currency: string): string[] => [
  `${title.toUpperCase()}, ${printMoney(sum)} ${currency}`,
  ...rows.flatMap(rowLines),
  '',
];

/** What the whole order costs where prices are known, and how much of it is sure, in a sentence or two. */
export const orderSum = (boat: Boat, { shopping }: Pick<Plan, 'shopping'>): string => {
  const sum = shopping.reduce((all, { each = 0, count }) => all + Math.round(each * count), 0);
  const unpriced = shopping.filter(({ each }) => each === undefined).length;
  const open = shopping.filter(({ sure }) => !sure).length;
  const asked = unpriced === 0 ? '' : ` and ${unpriced} whose price is to be asked`;
  const sure = open === 0 ? 'All of it is sure.' : `${open} could still change with what is taped or looked at.`;
  return `${printCount(shopping.length, 'item')}, ${printMoney(sum)} ${currencyOf(boat)}${asked}. ${sure}`;
};

/**
 * The shopping list as text of 80 columns with a box to tick, grouped by kind: count, price, where it stands, what it is for,
 * why, and whether it is sure. Lengths in metres and in feet. Prices are the owner's own, else round usual ones.
 */
export const shoppingText = (boat: Boat, plan: Plan): string => {
  if (plan.shopping.length === 0) return 'Nothing is to be bought.\n';
  const ownPrices =
    boat.prices === undefined
      ? 'Prices are round usual ones: put your own in their place.'
      : 'Prices are your own where you have entered them.';
  return `${[
    `SHOPPING LIST, ${boat.name}`,
    ...textLines(`${orderSum(boat, plan)} ${ownPrices}`, { width, lead: '' }),
    'Cable covers the longest each line could be.',
    '',
    ...shoppingGroups(indexBoat(boat), plan, 'both').flatMap((group) => groupLines(group, currencyOf(boat))),
  ]
    .join('\n')
    .trimEnd()}\n`;
};
