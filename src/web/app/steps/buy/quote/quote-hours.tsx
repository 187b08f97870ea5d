import type { ReactNode } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { HourRow } from '../../../../../papers/quote/quote-rows.ts';
import { useEdit } from '../../../edit-context.ts';
import type { RowHand } from '../../../margin/lit-rows.tsx';
import { NumberField } from './number-field.tsx';
import { withTerms } from './quote-terms.tsx';
import { words } from './words.ts';

/** The work by task: how often, how long, what it costs; the hours of one can be set. */
export const QuoteHours = ({
  boat,
  rows,
  hand,
}: {
  boat: Boat;
  rows: readonly HourRow[];
  hand: RowHand;
}): ReactNode => {
  const edit = useEdit();
  const own = boat.quote?.hours ?? [];
  const put = ({ task, what }: HourRow, eachH: number | undefined): void => {
    const others = own.filter((one) => one.task !== task);
    const reason = own.find((one) => one.task === task)?.reason ?? words.setHere;
    const hours = eachH === undefined ? others : [...others, { task, eachH, reason }];
    const says = eachH === undefined ? words.hoursUsual(what) : words.hoursSet(what, String(eachH));
    const params = withTerms(boat.quote, { hours: hours.length === 0 ? undefined : hours });
    edit([{ edit: 'set-quote', params }], says);
  };
  return (
    <ul className="quote-hours">
      {rows.map((row) => (
        <li
          key={row.id}
          onPointerEnter={() => hand.lights.rest(row.lights)}
          onPointerLeave={() => hand.lights.rest([])}
        >
          <p className="quote-line">
            <span>
              {row.count} × {row.what}
            </span>
            <span className="quote-money">{row.money}</span>
          </p>
          <div className="quote-fact">
            <span className="quiet">
              {row.hours}; {row.fact}
            </span>
            <NumberField
              label={words.hoursOf(row.what)}
              isUnseen={true}
              shown={String(own.find((one) => one.task === row.task)?.eachH ?? '')}
              usual={words.usual}
              unit={words.each}
              least={0}
              most={1000}
              onPut={(value) => put(row, value)}
            />
          </div>
        </li>
      ))}
    </ul>
  );
};
