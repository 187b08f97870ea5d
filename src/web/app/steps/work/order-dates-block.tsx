import { type ReactNode, useMemo } from 'react';
import { orderDateList } from '../../../../papers/work/order-date-list.ts';
import { useEdit } from '../../edit-context.ts';
import { useWords } from '../../words/units.ts';
import type { StepMarginProps } from '../step.ts';
import { DateField } from './date-field.tsx';
import { useWork } from './use-work.ts';
import { words } from './words.ts';

/** By when each thing is to be ordered; a part that comes late gets the day it is due, and the rest is planned anew. */
export const OrderDatesBlock = ({ boat, plan }: StepMarginProps): ReactNode => {
  const edit = useEdit();
  const say = useWords();
  const { work } = useWork(boat, plan);
  const { rows, columns } = useMemo(
    () => orderDateList(boat, work === undefined ? plan : { ...plan, work }),
    [boat, plan, work],
  );
  const [first] = rows;
  if (first === undefined) return null;
  const at = (id: string): number => columns.findIndex((column) => column.id === id);
  return (
    <section className="block work-block">
      <h2>{words.orderDates}</h2>
      <p className="quiet">{words.orderDatesAbout}</p>
      <details className="work-fold">
        <summary>{words.orderDatesHead(rows.length, String(first[at('order')]))}</summary>
        <ul>
          {rows.map((row) => {
            const item = String(row[at('id')]);
            const name = String(row[at('item')]);
            return (
              <li key={`${item} ${row[at('job')]}`} className="work-order-date">
                <p>
                  {say(words.orderBy(String(row[at('order')]), name))}
                  <span className="row-fact">
                    {' '}
                    {words.wantedFor(String(row[at('wanted')]), String(row[at('job')] ?? ''))}
                  </span>
                </p>
                <DateField
                  label={words.due}
                  value={boat.orders?.find((order) => order.item === item)?.due}
                  onPut={(due) =>
                    edit([
                      {
                        edit: 'note-order',
                        params: due === undefined ? { item, forget: ['due'] } : { item, state: 'ordered', due },
                      },
                    ])
                  }
                />
              </li>
            );
          })}
        </ul>
      </details>
    </section>
  );
};
