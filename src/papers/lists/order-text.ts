import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { currencyOf } from './cure-words.ts';
import { printMoney } from './order-words.ts';
import { keepUnits } from './print-figure.ts';
import { type ShoppingRow, shoppingGroups } from './shopping-groups.ts';
import { orderSum } from './shopping-list.ts';

const width = 80;

/** What is at hand needs nobody any more. */
const isThere = (plan: Pick<Plan, 'shopping'>, id: string): boolean =>
  ['have', 'arrived'].includes(plan.shopping.find((entry) => entry.id === id)?.order?.state ?? 'order');

const linesOf = ({ id, item, count, sum, stands }: ShoppingRow, box: string): string[] => [
  ...textLines(
    keepUnits(
      `${count} x ${item}, ${sum === undefined ? 'price to be asked' : printMoney(sum)}${stands === undefined ? '' : `; ${stands}`}`,
    ),
    { width, lead: `${box} ` },
  ),
  `    [${id}]`,
];

/** Everything to buy in short, each with where it stands and the id by which it is noted. */
export const orderText = (boat: Boat, plan: Plan): string => {
  if (plan.shopping.length === 0) return 'Nothing is to be bought.\n';
  const groups = shoppingGroups(indexBoat(boat), plan, 'both').flatMap(({ title, rows, sum }) => [
    '',
    `${title.toUpperCase()}, ${printMoney(sum)} ${currencyOf(boat)}`,
    ...rows.flatMap((row) => linesOf(row, isThere(plan, row.id) ? '[x]' : '[ ]')),
  ]);
  return `${[...textLines(keepUnits(orderSum(boat, plan)), { width, lead: '' }), ...groups].join('\n')}\n`;
};
