import { type Order, orderStates } from '../../core/boat/boat-schema.ts';
import type { EditCall } from '../../core/boat/history.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { loadBoat } from '../../node/files/load-boat.ts';
import { picturesBeside } from '../../node/pictures-beside.ts';
import { orderText } from '../../papers/lists/order-text.ts';
import { printCount } from '../../papers/lists/print-figure.ts';
import { changeBoatFile } from '../change-boat-file.ts';
import { fileAsTyped } from '../file-as-typed.ts';
import { namedOrNumbered } from '../named-or-numbered.ts';
import { solveAtTerminal } from '../solve-at-terminal.ts';
import { typedDay } from '../typed-day.ts';

interface OrderOptions {
  readonly from?: string;
  readonly due?: string;
  readonly leadDays?: number;
}

const stateFrom = (text: string | undefined): Order['state'] => {
  const state = orderStates.find((one) => one === text);
  if (state !== undefined) return state;
  throw new UserError({
    says: text === undefined ? 'Where it stands is missing.' : `“${text}” says nothing of an order.`,
    whatToDo: `Write one of ${orderStates.join(', ')} behind the item.`,
  });
};

/**
 * `fairlead order FILE`: everything to buy with its id; with an item, or `all` that is still to be ordered, and a state
 * it is noted in the boat file where that stands.
 */
export const order = async (
  file: string,
  item: string | undefined,
  stateTyped: string | undefined,
  { from, due, leadDays }: OrderOptions,
): Promise<void> => {
  const read = await loadBoat(file);
  const plan = await solveAtTerminal(read.boat, await picturesBeside(file));
  if (item === undefined) {
    process.stdout.write(orderText(read.boat, plan));
    return;
  }
  const state = stateFrom(stateTyped);
  const ids = plan.shopping.map(({ id }) => id);
  const open = plan.shopping.filter(({ order: told }) => (told?.state ?? 'order') === 'order').map(({ id }) => id);
  const noted =
    item === 'all' ? open : [namedOrNumbered(item, { ids, what: 'item', list: `fairlead order ${fileAsTyped(file)}` })];
  const calls = noted.map(
    (id): EditCall => ({
      edit: 'note-order',
      params: {
        item: id,
        state,
        ...(from === undefined ? {} : { supplier: from }),
        ...(due === undefined ? {} : { due: typedDay(due, '--due') }),
        ...(leadDays === undefined ? {} : { leadDays }),
      },
    }),
  );
  if (calls.length > 0) await changeBoatFile(file, read, calls);
  process.stdout.write(`${printCount(noted.length, 'item')} noted as ${state}, kept in ${file}.\n`);
};
