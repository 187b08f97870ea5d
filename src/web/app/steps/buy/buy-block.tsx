import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import { cardBoat } from '../../../../papers/cards/card-boat.ts';
import { currencyOf } from '../../../../papers/lists/cure-words.ts';
import { printMoney } from '../../../../papers/lists/order-words.ts';
import { type ShoppingRow, shoppingGroups } from '../../../../papers/lists/shopping-groups.ts';
import { tapeRows } from '../../../../papers/lists/tape-rows.ts';
import { LitRows, type Row, type RowHand } from '../../margin/lit-rows.tsx';
import { StepPart } from '../step-parts.tsx';
import { OrderChoice } from './order-choice.tsx';
import { words } from './words.ts';

const factOf = ({ sum, sure, stands }: ShoppingRow): string =>
  [sum === undefined ? words.priceToAsk : printMoney(sum), sure, ...(stands === undefined ? [] : [stands])].join(', ');

/** How much there is to order, and what it comes to. */
export const OrderSum = ({ boat, plan }: { boat: Boat; plan: Plan }): ReactNode => {
  const names = useMemo(() => cardBoat(boat), [boat]);
  const sum = useMemo(() => shoppingGroups(names, plan).reduce((all, group) => all + group.sum, 0), [names, plan]);
  return (
    <section className="block">
      <h2>{words.order}</h2>
      <p className="quiet">{words.orderSays(plan.shopping.length, `${printMoney(sum)} ${currencyOf(boat)}`)}</p>
    </section>
  );
};

/** The order: what to tape or to prove before it, then everything to buy by kind, each with where it stands. */
export const BuyBlock = ({ boat, plan, hand }: { boat: Boat; plan: Plan; hand: RowHand }): ReactNode => {
  const currency = currencyOf(boat);
  const names = useMemo(() => cardBoat(boat), [boat]);
  const groups = useMemo(() => shoppingGroups(names, plan), [names, plan]);
  const tape = useMemo(() => tapeRows(names, plan, { currency }), [names, plan, currency]);
  const orders = new Map((boat.orders ?? []).map((order) => [order.item, order]));
  const rowOf = (row: ShoppingRow): Row => ({
    key: row.id,
    what: `${row.count} × ${row.item}`,
    fact: factOf(row),
    lights: row.lights,
    control: <OrderChoice item={row.id} name={row.item} order={orders.get(row.id)} />,
  });
  return (
    <>
      <StepPart id="buy-tape">
        <LitRows
          heading={words.tapeFirst}
          rows={tape.map(({ id, todo, answer, lights, atStake }) => ({
            key: id,
            what: words.atStake(todo, `${printMoney(atStake)} ${currency}`),
            fact: answer,
            lights,
          }))}
          empty={words.nothingToTape}
          hand={hand}
        />
      </StepPart>
      <StepPart id="buy-order">
        {groups.map((group) => (
          <LitRows
            key={group.title}
            heading={words.group(group.title, `${printMoney(group.sum)} ${currency}`)}
            rows={group.rows.map(rowOf)}
            empty=""
            hand={hand}
          />
        ))}
      </StepPart>
    </>
  );
};
