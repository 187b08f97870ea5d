import type { ReactNode } from 'react';
import type { Order } from '../../../../core/boat/boat-schema.ts';
import { useEdit } from '../../edit-context.ts';

const states = [
  ['have', 'at hand'],
  ['ordered', 'ordered'],
  ['arrived', 'arrived'],
  ['returned', 'sent back'],
] as const;

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
      <legend className="unseen">Where it stands with {name}</legend>
      {states.map(([state, words]) => (
        <button
          key={state}
          type="button"
          className="order-button"
          aria-pressed={order?.state === state}
          onClick={() => {
            const next = order?.state === state ? 'order' : state;
            const says = `${name}: ${next === 'order' ? 'to be ordered' : words}.`;
            edit([{ edit: 'set-order', params: { ...order, item, state: next } }], says);
          }}
        >
          {words}
        </button>
      ))}
    </fieldset>
  );
};
