import type { ReactNode } from 'react';
import type { Order } from '../../../../core/boat/boat-schema.ts';
import { useEdit } from '../../edit-context.ts';
import { words } from './words.ts';

const states = ['have', 'ordered', 'arrived', 'returned'] as const;

/** Where an item of the order stands; choosing another is an edit, with supplier and days kept. */
export const OrderChoice = ({
  item,
  name,
  order,
}: {
  item: string;
  name: string;
  order: Order | undefined;
}): ReactNode => {
  const edit = useEdit();
  return (
    <fieldset className="order-choice">
      <legend className="unseen">{words.whereItStands(name)}</legend>
      {states.map((state) => (
        <button
          key={state}
          type="button"
          className="order-button"
          aria-pressed={order?.state === state}
          onClick={() => {
            const next = order?.state === state ? 'order' : state;
            const says = words.stands(name, words.state[next]);
            edit([{ edit: 'set-order', params: { ...order, item, state: next } }], says);
          }}
        >
          {words.state[state]}
        </button>
      ))}
    </fieldset>
  );
};
